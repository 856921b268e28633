// biome-ignore-all lint/style/noNonNullAssertion: indices run over the sample's own arrays
import type { HarvestPosterior } from './harvest-posterior.ts';
import { key, Sfc32, uid } from './random.ts';

export interface BankRequest {
  readonly posterior: HarvestPosterior;
  /** Name of the random stream: the crop's id. */
  readonly cropId: string;
  readonly seed: number;
  /** First day of week 0, on the posterior's day count. */
  readonly fromDay: number;
  readonly weeks: number;
  readonly rows: number;
}

/**
 * Weekly paths of one crop, kg, sorted by their size within the weeks simulated: rows x weeks.
 * Fruit that ripens after the last week is cut off, not heaped into it.
 */
export function harvestBank(request: BankRequest): Float32Array {
  const { weeks, rows } = request;
  const edges = Array.from({ length: weeks + 2 }, (_, w) => request.fromDay + 7 * w);
  const { paths, cols } = request.posterior.sample(
    rows,
    edges,
    new Sfc32(key(request.seed, uid(`paths ${request.cropId}`))),
  );
  const size = new Float64Array(rows);
  for (let r = 0; r < rows; r++) for (let w = 0; w < weeks; w++) size[r]! += paths[r * cols + w]!;
  const order = Uint32Array.from(size.keys()).sort((a, b) => size[a]! - size[b]!);
  const bank = new Float32Array(rows * weeks);
  order.forEach((row, place) => {
    bank.set(paths.subarray(row * cols, row * cols + weeks), place * weeks);
  });
  return bank;
}
