/**
 * How fast a product is used, and how unevenly, learned from the ledger. The rate is a gamma; the lumpiness is the ratio of
 * variance to mean of weekly use: without it, ranges held 58-69 % instead of 80 % on simulated households with lumpy use.
 */
export interface UsePrior {
  /** Jars a week, before any record. */
  readonly mean: number;
  /** Weight of that figure; 4 = known to within half of itself. */
  readonly shape?: number;
}

export interface LearnedUse {
  readonly usePerWeek: number;
  /** Coefficient of variation of the rate itself. */
  readonly rateCv: number;
  /** Variance over mean of one week's use, 1 to 4. */
  readonly dispersion: number;
}

/** What a ledger of weekly counts comes down to. */
export interface UseSums {
  readonly weeks: number;
  readonly jars: number;
  readonly sumSquaredDeviations: number;
}

const PRIOR_SHAPE = 4;
const PRIOR_DISPERSION = 1.5;
const PRIOR_WEEKS = 10;
const LOWEST_MEAN = 0.05;
const HIGHEST_DISPERSION = 4;

/** Learn from jars used in each week. Give only weeks in which the product was there: use while out of stock is not seen. */
export function learnUse(weeklyCounts: readonly number[], prior: UsePrior): LearnedUse {
  const weeks = weeklyCounts.length;
  const jars = weeklyCounts.reduce((sum, x) => sum + x, 0);
  const mean = weeks > 0 ? jars / weeks : 0;
  return learnUseFromSums(
    { weeks, jars, sumSquaredDeviations: weeklyCounts.reduce((sum, x) => sum + (x - mean) ** 2, 0) },
    prior,
  );
}

/** The same from the sums of the counts. */
export function learnUseFromSums(seen: UseSums, prior: UsePrior): LearnedUse {
  const mean = seen.weeks > 0 ? seen.jars / seen.weeks : 0;
  const spread = seen.sumSquaredDeviations / Math.max(mean, LOWEST_MEAN) + PRIOR_DISPERSION * PRIOR_WEEKS;
  const dispersion = Math.min(HIGHEST_DISPERSION, Math.max(1, spread / (seen.weeks + PRIOR_WEEKS)));
  const a0 = prior.shape ?? PRIOR_SHAPE;
  const shape = a0 + seen.jars / dispersion;
  const rate = a0 / prior.mean + seen.weeks / dispersion;
  return { usePerWeek: shape / rate, rateCv: 1 / Math.sqrt(shape), dispersion };
}
