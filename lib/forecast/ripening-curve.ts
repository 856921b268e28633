/**
 * Share of a crop ripe by a day. All three curves have half the crop ripe on the mid-date and `width` days from 10 % to 90 %:
 * 0 long tail (Gompertz), 1 symmetric (logistic), 2 late rush (Gompertz mirrored).
 */
export type CurveShape = 0 | 1 | 2;

const LN2 = Math.LN2;
const STEEP_SKEWED = Math.log(Math.LN10 / -Math.log(0.9));
const STEEP_EVEN = 2 * Math.log(9);

/** Share ripe by day `t`, 0 to 1. `mid` and `t` on one day count, `width` > 0 in days. */
export function curve(shape: CurveShape, t: number, mid: number, width: number): number {
  const z = (t - mid) / width;
  if (shape === 0) return Math.exp(-LN2 * Math.exp(-STEEP_SKEWED * z));
  if (shape === 1) return 1 / (1 + Math.exp(-STEEP_EVEN * z));
  return -Math.expm1(-LN2 * Math.exp(STEEP_SKEWED * z));
}
