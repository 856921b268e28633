// biome-ignore-all lint/style/noNonNullAssertion: index kept below the table's length
import { cumulativeDemand, type DemandUntil } from './demand-until.ts';

export interface JarTarget {
  /** Jars worth having: the smallest number that covers the use with the critical ratio short / (short + left). */
  readonly jars: number;
  readonly expectedLeft: number;
  readonly expectedUnmet: number;
  readonly expectedCost: number;
}

/** How many jars to have until the next harvest, from what one missing and one left over jar are felt to cost (newsvendor). */
export function jarTarget(use: DemandUntil, cost: { short: number; left: number }): JarTarget {
  if (!(cost.short > 0) || !(cost.left > 0)) throw new RangeError('Both costs must be above 0');
  const ratio = cost.short / (cost.short + cost.left);
  const most = Math.ceil(use.mean + 12 * Math.sqrt(use.variance) + 20);
  const cdf = cumulativeDemand(use, most);
  let jars = 0;
  while (jars < most && cdf[jars]! < ratio) jars++;
  return { jars, ...leftAndUnmet(use, jars), expectedCost: costOf(leftAndUnmet(use, jars), cost) };
}

const costOf = (e: { expectedLeft: number; expectedUnmet: number }, cost: { short: number; left: number }): number =>
  cost.left * e.expectedLeft + cost.short * e.expectedUnmet;

/** Expected jars left over and expected jars wanted in vain when starting with `jars`. */
export function leftAndUnmet(use: DemandUntil, jars: number): { expectedLeft: number; expectedUnmet: number } {
  let expectedLeft = 0;
  for (let k = 0; k < jars; k++) expectedLeft += (jars - k) * use.pmf(k);
  return { expectedLeft, expectedUnmet: expectedLeft - jars + use.mean };
}
