/** The boil of one pan as far as it was weighed: the expected line, the weighings on it, and what they say of the rest. */
import type { ReadingRecord } from '#lib/ledger/batch-record.ts';
import type { FrozenSheet } from './frozen-sheet.ts';

export interface CookTrack {
  curve: { minute: number; kg: number }[];
  /** Minutes of boil are counted from where the expected line has the first weight. */
  weighings: { minute: number; kg: number }[];
  stopKg: number;
  /** By the first and the last weighing; null until there are two a minute apart. */
  ahead: { gPerMin: number; minutesLeft: number } | null;
}

const GRAMS_PER_UNIT = 10;
const MINUTE_MS = 60_000;

/** Null for a batch that is not boiled down to a weight. Readings of a pan's weight are kept in hundredths of a kilogram. */
export function cookTrack(sheet: FrozenSheet, readings: readonly ReadingRecord[]): CookTrack | null {
  const { mixG, finalG, boilMin } = sheet;
  if (finalG === null || !boilMin || !(mixG > finalG)) return null;
  const logged = readings
    .filter((r) => r.kind === 'weight')
    .map((r) => ({ at: Date.parse(r.at), grams: r.value * GRAMS_PER_UNIT }));
  const first = logged[0];
  const last = logged.at(-1);
  const expected = (mixG - finalG) / boilMin;
  const start = first ? Math.max(0, (mixG - first.grams) / expected) : 0;
  const elapsed = first && last ? (last.at - first.at) / MINUTE_MS : 0;
  const gPerMin = first && last && elapsed >= 1 ? (first.grams - last.grams) / elapsed : 0;
  return {
    curve: [
      { minute: 0, kg: mixG / 1000 },
      { minute: boilMin, kg: finalG / 1000 },
    ],
    weighings: logged.map((w) => ({ minute: start + (w.at - (first?.at ?? 0)) / MINUTE_MS, kg: w.grams / 1000 })),
    stopKg: finalG / 1000,
    ahead: last && gPerMin > 0 ? { gPerMin, minutesLeft: Math.max(0, (last.grams - finalG) / gPerMin) } : null,
  };
}
