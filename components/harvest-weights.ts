/**
 * Weights as the scale says them. net = gross - tare x containers (grams; 1 lb = 453.59237 g exactly).
 */
import { GRAMS_PER_POUND } from '#lib/units/convert.ts';
import { parseNumber } from '#lib/units/parse-number.ts';

export type MassUnit = 'kg' | 'lb';
export type PadContainer = { readonly id: string; readonly label: string; readonly tareG: number };
/** One look at the scale: what was typed, and which containers stood on it. */
export type Reading = {
  readonly text: string;
  readonly unit: MassUnit;
  readonly containerId: string;
  readonly containerCount: number;
};

/** Grams of a typed weight, null when it cannot be read. */
export function typedGrams(text: string, unit: MassUnit): number | null {
  const parsed = parseNumber(text);
  return parsed.ok ? Math.round(parsed.value * (unit === 'kg' ? 1000 : GRAMS_PER_POUND)) : null;
}

/** Fruit of one reading in grams; below zero when the containers are heavier than the scale said. */
export function netOfReading(reading: Reading, containers: readonly PadContainer[]): number {
  const tare = containers.find((c) => c.id === reading.containerId)?.tareG ?? 0;
  return (typedGrams(reading.text, reading.unit) ?? 0) - tare * reading.containerCount;
}
