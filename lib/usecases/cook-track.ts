/**
 * The boil of one pan as far as it was weighed and read: the expected line, the weighings on it, and what they say of the rest.
 * A temperature gives the weight at which a syrup of this batch's solids boils there (solution-boiling-point), a guide only.
 */
import type { ReadingRecord } from '#lib/ledger/batch-record.ts';
import { saturationPressure } from '#lib/science/saturation.ts';
import { brixAtBoilingTemperature } from '#lib/science/solution-boiling-point.ts';
import { celsius } from '#lib/units/quantity.ts';
import type { FrozenSheet } from './frozen-sheet.ts';

type Seen = { minute: number; kg: number };

export interface CookTrack {
  curve: Seen[];
  /** Minutes of boil; counted from "it boils", else from where the expected line has the first weight. */
  weighings: Seen[];
  /** Weights reckoned from temperatures. */
  byTemperature: Seen[];
  stopKg: number;
  /** By the first and the last weighing, or temperature where the pan was not weighed twice; null until there are two a minute apart. */
  ahead: { gPerMin: number; minutesLeft: number; by: 'weight' | 'temperature' } | null;
  /** From the last weight seen to the stop, at the rate seen. */
  rest: Seen[];
}

const GRAMS_PER_UNIT = 10;
const MINUTE_MS = 60_000;

/** Null for a batch that is not boiled down to a weight. Readings of a pan's weight are kept in hundredths of a kilogram. */
export function cookTrack(sheet: FrozenSheet, readings: readonly ReadingRecord[]): CookTrack | null {
  const { mixG, finalG, boilMin } = sheet;
  if (finalG === null || !boilMin || !(mixG > finalG)) return null;
  const weights = readings
    .filter((r) => r.kind === 'weight')
    .map((r) => ({ at: Date.parse(r.at), grams: r.value * GRAMS_PER_UNIT }));
  const first = weights[0];
  const onLine = first ? Math.max(0, ((mixG - first.grams) * boilMin) / (mixG - finalG)) : 0;
  const zero = sheet.boilStartedAt ? Date.parse(sheet.boilStartedAt) : (first?.at ?? 0) - onLine * MINUTE_MS;
  const seen = (w: Logged): Seen => ({ minute: (w.at - zero) / MINUTE_MS, kg: w.grams / 1000 });
  const warm = first || sheet.boilStartedAt ? byTemperature(sheet, readings) : [];
  const weighed = rateOf(weights);
  const read = weighed ? null : rateOf(warm);
  const by = weighed ? weights : warm;
  const last = by.at(-1);
  const gPerMin = weighed ?? read;
  const minutesLeft = last && gPerMin ? Math.max(0, (last.grams - finalG) / gPerMin) : 0;
  return {
    curve: [
      { minute: 0, kg: mixG / 1000 },
      { minute: boilMin, kg: finalG / 1000 },
    ],
    weighings: weights.map(seen),
    byTemperature: warm.map(seen),
    stopKg: finalG / 1000,
    ahead: gPerMin ? { gPerMin, minutesLeft, by: weighed ? 'weight' : 'temperature' } : null,
    rest:
      last && gPerMin && minutesLeft > 0
        ? [seen(last), { minute: seen(last).minute + minutesLeft, kg: finalG / 1000 }]
        : [],
  };
}

type Logged = { at: number; grams: number };

/** Grams a minute from the first to the last; null until they are a minute apart and the pan lost. */
function rateOf(logged: readonly Logged[]): number | null {
  const [first, last] = [logged[0], logged.at(-1)];
  const elapsed = first && last ? (last.at - first.at) / MINUTE_MS : 0;
  const rate = first && last && elapsed >= 1 ? (first.grams - last.grams) / elapsed : 0;
  return rate > 0 ? rate : null;
}

/** Weight of a syrup of this batch's solids that boils at each temperature read; nothing below today's boiling water. */
function byTemperature({ finalG, brix, waterC, mixG }: FrozenSheet, readings: readonly ReadingRecord[]): Logged[] {
  if (finalG === null || brix === null || waterC === null) return [];
  const solidsG = (finalG * brix) / 100;
  const p = saturationPressure(celsius(waterC));
  return readings
    .filter((r) => r.kind === 'temperature' && r.value / 100 > waterC + 0.2 && r.value / 100 < waterC + 15)
    .map((r) => ({
      at: Date.parse(r.at),
      grams: (solidsG * 100) / brixAtBoilingTemperature({ t: celsius(r.value / 100), p, inverted: 0 }),
    }))
    .filter((w) => w.grams <= mixG);
}
