/**
 * Boiling water by altitude, every 1,000 ft to 10,000 ft. `boilsC` and `pressureKPa` are computed from the standard
 * atmosphere and the vapour pressure of water; `publishedBoilsF` is the printed table (BP_TABLE), an isothermal atmosphere,
 * up to 1.0 °F higher at 10,000 ft. A thermometer in boiling water beats both. For comparison and tests only.
 */
import type { Cited } from './source.ts';

export interface AltitudeRow extends Cited {
  readonly altitudeFt: number;
  readonly altitudeM: number;
  readonly pressureKPa: number;
  readonly boilsC: number;
  readonly publishedBoilsF: number;
}

// biome-ignore format: one printed row to a line
export const ALTITUDE_TABLE = [
  { altitudeFt: 0, altitudeM: 0, pressureKPa: 101.33, boilsC: 99.97, publishedBoilsF: 212, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 1000, altitudeM: 305, pressureKPa: 97.72, boilsC: 98.96, publishedBoilsF: 210.2, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 2000, altitudeM: 610, pressureKPa: 94.21, boilsC: 97.95, publishedBoilsF: 208.5, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 3000, altitudeM: 914, pressureKPa: 90.81, boilsC: 96.93, publishedBoilsF: 206.7, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 4000, altitudeM: 1219, pressureKPa: 87.51, boilsC: 95.92, publishedBoilsF: 204.9, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 5000, altitudeM: 1524, pressureKPa: 84.31, boilsC: 94.9, publishedBoilsF: 203.2, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 6000, altitudeM: 1829, pressureKPa: 81.2, boilsC: 93.89, publishedBoilsF: 201.5, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 7000, altitudeM: 2134, pressureKPa: 78.19, boilsC: 92.87, publishedBoilsF: 199.8, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 8000, altitudeM: 2438, pressureKPa: 75.26, boilsC: 91.85, publishedBoilsF: 198.1, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 9000, altitudeM: 2743, pressureKPa: 72.43, boilsC: 90.83, publishedBoilsF: 196.4, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
  { altitudeFt: 10000, altitudeM: 3048, pressureKPa: 69.68, boilsC: 89.81, publishedBoilsF: 194.7, source: 'COMPUTED', status: 'computed', also: ['BP_TABLE'] },
] as const satisfies readonly AltitudeRow[];
