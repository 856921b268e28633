/**
 * Hours an apple slice takes in air of a known temperature, humidity and speed: a line through the time to a moisture ratio of
 * 0.2 of 13 thin-layer runs (source: Royen et al. 2020, digitised; fitted by this project, residue 6 %), and the Page model with
 * n 1.3. Runs: 40-50 °C, 0.6-1.1 m/s, 4-10 mm, humidity 26-43 %. Beyond those it is extrapolated: a loaded home dryer takes
 * about twice as long (1.3-2.5), a windowsill may differ by more.
 */
import type { Celsius } from '#lib/units/quantity.ts';
import { dryBasis, equilibriumMoisture } from './gab-isotherm.ts';
import { hoursToRatio, type PageRate } from './page-drying.ts';
import { ZERO_CELSIUS_K } from './physical-constants.ts';

export interface DryingAir {
  readonly t: Celsius;
  /** Share, 0 to 1, of the air at the food. */
  readonly humidity: number;
  readonly metresPerSecond: number;
}

const SHAPE = 1.3;
const FRESH = 0.856;

/** Rate of a thin layer of slices `sliceMm` thick. */
export function appleRate(air: DryingAir, sliceMm: number): PageRate {
  if (!(air.metresPerSecond > 0 && sliceMm > 0))
    throw new RangeError(`air and slices need a size above 0, got ${air.metresPerSecond} m/s and ${sliceMm} mm`);
  const minutes = Math.exp(
    5.5755 +
      4140 * (1 / (air.t + ZERO_CELSIUS_K) - 1 / 323.15) +
      1.92 * (air.humidity - 0.425) -
      0.38 * Math.log(air.metresPerSecond / 1.1) +
      0.66 * Math.log(sliceMm / 6),
  );
  return { n: SHAPE, kappa: (60 * Math.log(5) ** (1 / SHAPE)) / minutes };
}

/** Hours to a moisture, share of the weight; null where the air never takes it so low. */
export function appleDryingHours(air: DryingAir, slice: { mm: number; target: number }): number | null {
  const left = equilibriumMoisture({ activity: air.humidity, t: air.t });
  const ratio = (dryBasis(slice.target) - left) / (dryBasis(FRESH) - left);
  return ratio > 0 ? hoursToRatio(appleRate(air, slice.mm), ratio) : null;
}

const MOULD_FROM_HOURS = 48;
/** Still half water after two days in a room above 20 °C: mould is to be looked for (estimate). */
export function mouldWatch(air: DryingAir, sliceMm: number): boolean {
  const hours = appleDryingHours(air, { mm: sliceMm, target: 0.5 });
  return air.t > 20 && (hours === null || hours > MOULD_FROM_HOURS);
}
