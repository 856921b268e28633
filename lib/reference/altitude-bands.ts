/**
 * The altitude bands the process tables are printed in, in feet. Upper limits are inclusive: 1,000 ft is in the first
 * band and anything above it in the next. `three`: jam, jelly, butter, juice, puree; `four`: whole fruit, sauce, tomatoes,
 * pie fillings. Source: headings of the process tables, USDA Complete Guide to Home Canning (AIB 539).
 */
import type { Cited } from './source.ts';

export type BandSystem = 'three' | 'four';

export interface AltitudeBand extends Cited {
  readonly label: string;
  /** Highest altitude of the band in feet; null for the open band at the top. */
  readonly upToFt: number | null;
}

const printed = { source: 'AIB539', status: 'verified' } as const;

export const ALTITUDE_BANDS = {
  three: [
    { label: '0-1,000 ft', upToFt: 1000, ...printed },
    { label: '1,001-6,000 ft', upToFt: 6000, ...printed },
    { label: 'above 6,000 ft', upToFt: null, ...printed },
  ],
  four: [
    { label: '0-1,000 ft', upToFt: 1000, ...printed },
    { label: '1,001-3,000 ft', upToFt: 3000, ...printed },
    { label: '3,001-6,000 ft', upToFt: 6000, ...printed },
    { label: 'above 6,000 ft', upToFt: null, ...printed },
  ],
} as const satisfies Record<BandSystem, readonly AltitudeBand[]>;

export type BandLookup = { ok: true; index: number; band: AltitudeBand } | { ok: false; reason: string };

/** The band of an altitude in feet. Refuses what the table does not print: below 0 ft, or not a number. */
export function altitudeBand(system: BandSystem, altitudeFt: number): BandLookup {
  if (!Number.isFinite(altitudeFt)) return { ok: false, reason: 'the altitude of the kitchen is missing' };
  if (altitudeFt < 0) return { ok: false, reason: `${altitudeFt} ft is below 0 ft, where the table begins` };
  const bands: readonly AltitudeBand[] = ALTITUDE_BANDS[system];
  const index = bands.findIndex((b) => b.upToFt === null || altitudeFt <= b.upToFt);
  const band = bands[index];
  return band ? { ok: true, index, band } : { ok: false, reason: `${altitudeFt} ft is above the table` };
}
