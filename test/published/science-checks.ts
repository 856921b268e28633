/** The published figures of test/golden/science-checks.json, and where each came from. */
import { readFileSync } from 'node:fs';
import type { AcidName } from '#lib/science/acid-constants.ts';
import type { Minerals } from '#lib/science/predicted-ph.ts';

export interface CheckRow {
  readonly id: string;
  readonly quantity: string;
  readonly what: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Both ends equal where one value is printed. */
  readonly expected: { readonly low: number; readonly high: number };
  readonly unit: string;
  readonly source: string;
  readonly status: 'verified' | 'memory';
  readonly note?: string;
}

export interface FruitPhRow {
  readonly fruitId: string;
  readonly taPct: number;
  readonly acidMassShares: Readonly<Partial<Record<'citric' | 'malic' | 'tartaric' | 'quinic' | 'oxalic', number>>>;
  readonly waterPct: number;
  readonly minerals: Minerals;
  readonly pH: number;
}

interface Samples {
  readonly waterPct: number;
  readonly as: 'citric' | 'malic';
  /** Acidity in per cent, measured pH. */
  readonly samples: readonly (readonly [taPct: number, pH: number])[];
}

interface Checks {
  readonly dated: string;
  readonly rows: readonly CheckRow[];
  readonly pH24: { readonly rows: readonly FruitPhRow[] };
  readonly blueberries: Samples;
  readonly appleJuices: Samples;
}

export const SCIENCE_CHECKS: Checks = JSON.parse(
  readFileSync(new URL('../golden/science-checks.json', import.meta.url), 'utf8'),
);

/** Inputs as numbers; fails loudly on a row that lacks one. */
export function numberIn(row: CheckRow, key: string): number {
  const value = row.inputs[key];
  if (typeof value !== 'number') throw new Error(`${row.id} has no number "${key}"`);
  return value;
}

export const numberOr = (row: CheckRow, key: string, fallback: number): number =>
  row.inputs[key] === undefined ? fallback : numberIn(row, key);

export const acidsIn = (row: CheckRow, key: string): Partial<Record<AcidName, number>> =>
  row.inputs[key] as Partial<Record<AcidName, number>>;
