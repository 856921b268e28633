// biome-ignore-all lint/style/noNonNullAssertion: indices run over arrays allocated here
import type { HarvestPosterior } from './harvest-posterior.ts';
import { quantileSorted } from './math.ts';
import { key, Sfc32, uid } from './random.ts';

export interface PicksRequest {
  readonly posterior: HarvestPosterior;
  readonly cropId: string;
  readonly seed: number;
  /** First day wanted, on the posterior's day count, and how many. */
  readonly fromDay: number;
  readonly days: number;
  /** Days on which this crop is picked at all; fruit ripe earlier waits for the first of them. Always, when left out. */
  readonly window?: { readonly from: number; readonly to: number };
  /** Futures sampled for low and high. */
  readonly futures?: number;
}

export interface ExpectedPick {
  readonly day: number;
  /** Closed-form mean. */
  readonly kg: number;
  /** Between these 8 times in 10. */
  readonly lowKg: number;
  readonly highKg: number;
}

export interface ExpectedPicks {
  readonly days: readonly ExpectedPick[];
  /** All days together; its low is not the sum of the lows. */
  readonly all: { readonly kg: number; readonly lowKg: number; readonly highKg: number };
}

const nothing = (day: number): ExpectedPick => ({ day, kg: 0, lowKg: 0, highKg: 0 });

/** Fruit expected to come in on each of the next days, kg, as the planner needs it. Fruit ripe but unpicked comes on the first. */
export function expectedPicks(request: PicksRequest): ExpectedPicks {
  const { fromDay, days, window } = request;
  const first = Math.max(fromDay, window?.from ?? fromDay);
  const last = Math.min(fromDay + days - 1, window?.to ?? fromDay + days - 1);
  const all = Array.from({ length: days }, (_, i) => nothing(fromDay + i));
  if (last < first) return { days: all, all: nothing(fromDay) };
  const open = last - first + 1;
  // One bin more than days: what ripens later must not be heaped into the last day.
  const edges = Array.from({ length: open + 2 }, (_, i) => first - 1 + i);
  const mean = request.posterior.meanPath(edges);
  const n = request.futures ?? 1000;
  const sample = request.posterior.sample(n, edges, new Sfc32(key(request.seed, uid(`picks ${request.cropId}`))));
  const total = new Float64Array(n);
  for (let j = 0; j < open; j++) {
    const column = Float64Array.from({ length: n }, (_, i) => sample.paths[i * sample.cols + j]!);
    column.forEach((kg, i) => {
      total[i]! += kg;
    });
    all[first - fromDay + j] = { day: first + j, kg: mean[j]!, ...lowHigh(column) };
  }
  return { days: all, all: { kg: mean.subarray(0, open).reduce((sum, kg) => sum + kg, 0), ...lowHigh(total) } };
}

function lowHigh(values: Float64Array): { lowKg: number; highKg: number } {
  values.sort();
  return { lowKg: quantileSorted(values, 0.1), highKg: quantileSorted(values, 0.9) };
}
