import { type DemandUntil, demandUntil } from './demand-until.ts';
import { qgamma } from './math.ts';

/** What left in the last year: all the year round, and over the stall in its weeks. */
export interface YearlyUse {
  /** Eaten and given in a year. */
  readonly perYear: number;
  readonly sold: number;
  /** Stall weeks those sales fell in; 0 when none. */
  readonly stallWeeks: number;
}

/** Jars used by then at last year's pace: yearly use x weeks / 52, and sales by the stall week for the stall weeks inside the span. */
export const usedBy = (use: YearlyUse, weeks: number, stallWeeksInside: number): number =>
  (use.perYear * weeks) / 52 + (use.stallWeeks > 0 ? (use.sold / use.stallWeeks) * stallWeeksInside : 0);

/** Weekly use as it is learnt; `weeks` may be a part of a season's weight, not only whole weeks. */
export interface LearntUse {
  readonly usePerWeek: number;
  readonly rateCv: number;
  readonly dispersion: number;
}

/** Jars left of `onHand` after a span: three quantiles of onHand - use, never below 0. */
export function leftBand(onHand: number, use: LearntUse, weeks: number): { p10: number; p50: number; p90: number } {
  const cdf = shares(demandUntil({ ...use, weeks }), onHand);
  // P(left <= x) = P(use >= onHand - x): the low quantile of what is left is the high one of what is used.
  const left = (p: number) => {
    let used = 0;
    while (used < onHand && (cdf[used] as number) < 1 - p) used++;
    return onHand - used;
  };
  return { p10: left(0.1), p50: left(0.5), p90: left(0.9) };
}

/** P(use <= k), k = 0..most. */
function shares(use: DemandUntil, most: number): Float64Array {
  const cdf = new Float64Array(most + 1);
  let sum = 0;
  for (let k = 0; k <= most; k++) {
    sum += use.pmf(k);
    cdf[k] = Math.min(1, sum);
  }
  return cdf;
}

export interface MakingQuestion {
  readonly onHand: number;
  readonly use: LearntUse;
  /** Weeks of use until the new jars are there, and from then to the harvest after. */
  readonly weeksBefore: number;
  readonly weeksAfter: number;
  readonly jarsPerBatch: number;
  readonly mostBatches: number;
}

/** Points at which the unknown rate is taken; more move no chance by half a point in a hundred (checked in the tests). */
const RATES = 21;

/**
 * For 0, 1, 2 … batches: the chance that the line lasts from its next harvest to the one after. The rate is the same before
 * and after; what is wanted in vain before the harvest is not made up for.
 */
export function oddsByBatches(q: MakingQuestion): number[] {
  const odds = Array<number>(q.mostBatches + 1).fill(0);
  const known = !(q.use.rateCv > 0);
  const points = known ? 1 : RATES;
  const shape = known ? 1 : 1 / q.use.rateCv ** 2;
  const most = q.onHand + q.mostBatches * q.jarsPerBatch;
  for (let i = 0; i < points; i++) {
    const factor = known ? 1 : qgamma((i + 0.5) / points, shape) / shape;
    const at = { usePerWeek: q.use.usePerWeek * factor, dispersion: q.use.dispersion, rateCv: 0 };
    const before = demandUntil({ ...at, weeks: q.weeksBefore });
    const after = shares(demandUntil({ ...at, weeks: q.weeksAfter }), most);
    let tail = 1;
    for (let used = 0; used < q.onHand; used++) {
      const p = before.pmf(used);
      tail -= p;
      addLasting(odds, p / points, { left: q.onHand - used, after, jarsPerBatch: q.jarsPerBatch });
    }
    addLasting(odds, Math.max(0, tail) / points, { left: 0, after, jarsPerBatch: q.jarsPerBatch });
  }
  return odds.map((p) => Math.min(1, p));
}

function addLasting(odds: number[], weight: number, o: { left: number; after: Float64Array; jarsPerBatch: number }) {
  for (let k = 0; k < odds.length; k++)
    odds[k] = (odds[k] as number) + weight * (o.after[o.left + k * o.jarsPerBatch] as number);
}

/** Fewest batches that last with this chance; null where even the most does not. */
export function batchesFor(odds: readonly number[], chance: number): number | null {
  const k = odds.findIndex((p) => p >= chance);
  return k < 0 ? null : k;
}
