// biome-ignore-all lint/style/noNonNullAssertion: one entry per product, checked at the head

import { cumulativeDemand, demandUntil } from './demand-until.ts';
import type { Scenario } from './scenario.ts';

export interface Taste {
  /** Worth of one jar that is used, by product. */
  readonly value: readonly number[];
  /** Cost of one jar nobody wanted. */
  readonly waste: number;
  /** Cost of one kitchen hour, in the same unit. */
  readonly perHour: number;
  /** Weeks each product has to last until it is made again; the whole season when left out. */
  readonly weeks?: readonly number[];
}

/** Stocks the table covers: 0 to 159 jars. */
const STOCKS = 160;

/**
 * Worth per kitchen hour of one more batch of each product, by jars in stock: each further jar counts by the chance that it
 * will still be wanted before the next harvest. The weights are the user's taste.
 */
export function batchWorth(sc: Scenario, taste: Taste): Float32Array[] {
  if (taste.value.length !== sc.products.length)
    throw new RangeError(`${taste.value.length} values for ${sc.products.length} products`);
  return sc.products.map((p, i) => {
    const jars = p.jarsPerBatch;
    const use = demandUntil({ ...p, weeks: taste.weeks?.[i] ?? sc.weeks });
    const cdf = cumulativeDemand(use, STOCKS + jars);
    return Float32Array.from({ length: STOCKS }, (_, stock) => {
      let worth = -taste.perHour * p.hoursPerBatch;
      for (let j = stock + 1; j <= stock + jars; j++) {
        const wanted = 1 - cdf[j - 1]!;
        worth += taste.value[i]! * wanted - taste.waste * (1 - wanted);
      }
      return worth / Math.max(p.hoursPerBatch, 0.1);
    });
  });
}
