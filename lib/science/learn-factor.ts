/**
 * One figure learnt from a household's own batches: normal-normal shrinkage of its logarithm. Each batch is the figure times
 * its own chance factor (log sd `batchLogSd`) and, where given, an error of measurement; the prior counts with its own
 * width, so that one batch moves the figure a little and ten settle it. The spread between batches is pooled: the stated one
 * counts as four batches, the observed one as many as there are. Bands are the middle four fifths (Student's t).
 * Method: conjugate normal update, any textbook of Bayesian statistics (from memory); t quantile by Cornish-Fisher
 * (Abramowitz & Stegun 26.7.5, from memory).
 */
export interface FigurePrior {
  readonly middle: number;
  readonly logSd: number;
  /** Log sd from batch to batch around the household's own figure. */
  readonly batchLogSd: number;
}

export interface Observed {
  readonly value: number;
  /** Relative error of this batch's own measurement; 0 when it is left to the spread between batches. */
  readonly relSd: number;
}

export interface Learnt {
  /** Batches it rests on. */
  readonly n: number;
  readonly middle: number;
  /** A tenth below, a tenth above: of the figure itself. */
  readonly low: number;
  readonly high: number;
  /** The same for what the next batch will show. */
  readonly nextLow: number;
  readonly nextHigh: number;
}

const STATED_COUNTS_AS = 4;
const Z90 = 1.2815515655446004;

/** RangeError for a value that is not above 0. */
export function learntFigure(prior: FigurePrior, seen: readonly Observed[]): Learnt {
  const logs = seen.map(({ value, relSd }) => {
    if (!(value > 0)) throw new RangeError(`a figure to learn from is above 0, got ${value}`);
    return { x: Math.log(value), error: relSd ** 2 };
  });
  const between = pooledVariance(prior.batchLogSd, logs);
  const weights = logs.map(({ error }) => 1 / (between + error));
  const priorWeight = 1 / prior.logSd ** 2;
  const precision = priorWeight + sum(weights);
  const centre =
    (priorWeight * Math.log(prior.middle) + sum(logs.map(({ x }, i) => x * (weights[i] as number)))) / precision;
  // Only the part of the precision that rests on the spread between batches has a spread still in doubt (Satterthwaite).
  const doubtful = 1 - priorWeight / precision;
  const freedom = STATED_COUNTS_AS + Math.max(0, seen.length - 1);
  const t = seen.length === 0 ? Z90 : tenthOfStudent(freedom / doubtful ** 2);
  const own = t * Math.sqrt(1 / precision);
  const next = t * Math.sqrt(1 / precision + between);
  return {
    n: seen.length,
    middle: Math.exp(centre),
    low: Math.exp(centre - own),
    high: Math.exp(centre + own),
    nextLow: Math.exp(centre - next),
    nextHigh: Math.exp(centre + next),
  };
}

/** Variance between batches: what was stated, and what was seen less the part errors of measurement explain. */
function pooledVariance(stated: number, logs: readonly { x: number; error: number }[]): number {
  const prior = STATED_COUNTS_AS * stated ** 2;
  if (logs.length < 2) return stated ** 2;
  const mean = sum(logs.map((l) => l.x)) / logs.length;
  const squares = sum(logs.map((l) => (l.x - mean) ** 2));
  const explained = (sum(logs.map((l) => l.error)) * (logs.length - 1)) / logs.length;
  return (prior + Math.max(0, squares - explained)) / (STATED_COUNTS_AS + logs.length - 1);
}

/** Value Student's t exceeds in one case of ten; within 0.005 from 4 degrees of freedom up. */
export function tenthOfStudent(freedom: number): number {
  const z = Z90;
  return z + (z ** 3 + z) / (4 * freedom) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * freedom ** 2);
}

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
