import { lgamma } from './math.ts';

/** Use over a stretch of weeks: negative binomial; Poisson when the variance is no more than the mean. */
export interface DemandUntil {
  readonly mean: number;
  readonly variance: number;
  /** P(use = k). */
  readonly pmf: (k: number) => number;
}

/** From a weekly rate known to `rateCv` and weekly counts with `dispersion` = variance over mean. */
export function demandUntil(use: {
  usePerWeek: number;
  weeks: number;
  dispersion: number;
  rateCv: number;
}): DemandUntil {
  const mean = use.usePerWeek * use.weeks;
  return demandOf(mean, mean * use.dispersion + (mean * use.rateCv) ** 2);
}

/** From mean and variance. */
export function demandOf(mean: number, variance: number): DemandUntil {
  if (!(mean > 0)) return { mean: 0, variance: 0, pmf: (k) => (k === 0 ? 1 : 0) };
  if (variance <= mean * (1 + 1e-12))
    return { mean, variance: mean, pmf: (k) => Math.exp(k * Math.log(mean) - mean - lgamma(k + 1)) };
  const p = mean / variance;
  const size = (mean * p) / (1 - p);
  const fixed = size * Math.log(p) - lgamma(size);
  return { mean, variance, pmf: (k) => Math.exp(fixed + lgamma(k + size) - lgamma(k + 1) + k * Math.log1p(-p)) };
}

/** P(use <= k) for k = 0..most. */
export function cumulativeDemand(use: DemandUntil, most: number): Float64Array {
  const cdf = new Float64Array(most + 1);
  let sum = 0;
  for (let k = 0; k <= most; k++) {
    sum += use.pmf(k);
    cdf[k] = Math.min(1, sum);
  }
  return cdf;
}
