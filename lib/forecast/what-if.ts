// biome-ignore-all lint/style/noNonNullAssertion: indices run over the results' own sizes
import { allocOut, type Out } from './out.ts';
import type { Scenario } from './scenario.ts';
import type { Draws } from './season-draws.ts';
import { simulate } from './simulate.ts';
import { overflow } from './summary.ts';

/** A change to try. Products, crops and their order stay: the same random numbers must meet the same names. */
export interface Lever {
  readonly scenario?: (sc: Scenario) => Scenario;
  /** Factor on each crop's kg, e.g. two more trees. */
  readonly cropScale?: readonly number[];
}

/** Change of one figure, season by season against the same season without the change. */
export interface Change {
  readonly before: number;
  readonly mean: number;
  /** Standard error of the mean change, from paired seasons. */
  readonly se: number;
  /** Whether the 95 % margin leaves zero out. Otherwise say "no clear difference". */
  readonly clear: boolean;
  /** False when no single season came out differently: the lever did nothing. */
  readonly moved: boolean;
  readonly bySeason: Float64Array;
}

/** Jars used, given, expired, wanted in vain and made; hours; kg of fruit lost, sugar; lids; and per store "over capacity" as 0/1. */
export function seasonFigures(sc: Scenario, out: Out): Record<string, Float64Array> {
  const perSeason = (values: ArrayLike<number>, kinds: number, first = 0): Float64Array => {
    const sums = new Float64Array(out.n);
    for (let k = 0; k < kinds; k++) for (let s = 0; s < out.n; s++) sums[s]! += values[(first + k) * out.n + s]!;
    return sums;
  };
  const last = out.weeks - 1;
  const figures: Record<string, Float64Array> = {
    used: perSeason(out.used, out.products),
    given: perSeason(out.given, out.products),
    expired: perSeason(out.expired, out.products),
    unmet: perSeason(out.unmet, out.products),
    made: perSeason(out.made, out.products),
    hours: perSeason(out.hours, 1),
    fruitLostKg: perSeason(out.lostKg, sc.crops.length),
    sugarKg: perSeason(out.sugar, 1, last),
    lids: perSeason(out.lids, sc.lids.length, last * sc.lids.length),
  };
  sc.stores.forEach((store, i) => {
    figures[`over ${store.id}`] = seasonsOver(out, i, store.capacity);
  });
  return figures;
}

function seasonsOver(out: Out, store: number, capacity: number): Float64Array {
  const over = new Float64Array(out.n);
  if (overflow(out, store, capacity).share === 0) return over;
  for (let w = 0; w < out.weeks; w++) {
    const from = (w * out.storeUnits.length + store) * out.n;
    for (let s = 0; s < out.n; s++) if (out.store[from + s]! > capacity + 1e-4) over[s] = 1;
  }
  return over;
}

/** Runs the season with and without the lever on the same random numbers. */
export const compare = (sc: Scenario, lever: Lever, draws: Draws): Record<string, Change> =>
  compareAll(sc, [lever], draws)[0]!;

/** The same for several levers; the season without them is run once. */
export function compareAll(sc: Scenario, levers: readonly Lever[], draws: Draws): Record<string, Change>[] {
  const before = seasonFigures(sc, run(sc, draws));
  return levers.map((lever) => against(before, sc, lever, draws));
}

function against(
  before: Record<string, Float64Array>,
  sc: Scenario,
  lever: Lever,
  draws: Draws,
): Record<string, Change> {
  const changed = lever.scenario?.(sc) ?? sc;
  const same = (a: readonly { id: string }[], b: readonly { id: string }[]) =>
    a.length === b.length && a.every((x, i) => x.id === b[i]!.id);
  if (!same(sc.products, changed.products) || !same(sc.crops, changed.crops))
    throw new RangeError('A what-if keeps the products and crops; to leave one out, drop its intention');
  const after = seasonFigures(
    changed,
    run(changed, lever.cropScale ? { ...draws, cropScale: lever.cropScale } : draws),
  );
  const names = Object.keys(before).filter((name) => name in after);
  return Object.fromEntries(names.map((name) => [name, pairedChange(before[name]!, after[name]!)]));
}

function run(sc: Scenario, draws: Draws): Out {
  const out = allocOut(sc, draws.n);
  simulate({ scenario: sc, draws, out });
  return out;
}

function pairedChange(before: Float64Array, after: Float64Array): Change {
  const n = before.length;
  const bySeason = after.map((x, s) => x - before[s]!);
  const mean = bySeason.reduce((sum, x) => sum + x, 0) / n;
  const variance = bySeason.reduce((sum, x) => sum + (x - mean) ** 2, 0) / Math.max(1, n - 1);
  const se = Math.sqrt(variance / n);
  const moved = bySeason.some((x) => x !== 0);
  return {
    before: before.reduce((sum, x) => sum + x, 0) / n,
    mean,
    se,
    clear: moved && Math.abs(mean) > 1.96 * se,
    moved,
    bySeason,
  };
}
