/** What the simulated seasons say: ranges by counting, and properties of whole years. */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over the results' own sizes
import { NEVER, type Out } from './out.ts';

/** Smallest value whose count reaches ceil(p N), for each p. */
export function quantilesByCount(
  values: ArrayLike<number>,
  from: number,
  n: number,
  ps: readonly number[],
  step = 1,
): number[] {
  let most = 0;
  for (let i = from; i < from + n; i++) if (values[i]! > most) most = values[i]!;
  const counts = new Uint32Array(Math.round(most / step) + 1);
  for (let i = from; i < from + n; i++) counts[Math.round(values[i]! / step)]!++;
  return ps.map((p) => {
    const wanted = Math.max(1, Math.ceil(p * n - 1e-9));
    let seen = 0;
    let bin = 0;
    for (; bin < counts.length; bin++) {
      seen += counts[bin]!;
      if (seen >= wanted) break;
    }
    return bin * step;
  });
}

/** Jars of a product at the end of a week: one quantile per p. */
export function bands(out: Out, week: number, product: number, ps: readonly number[]): number[] {
  return quantilesByCount(out.stock, (week * out.products + product) * out.n, out.n, ps);
}

/** Room taken in a store at the end of a week, to 0.5 cm or 0.1 l. */
export function storeBands(out: Out, week: number, store: number, ps: readonly number[]): number[] {
  const stores = out.storeUnits.length;
  const step = out.storeUnits[store] === 'cm' ? 0.5 : 0.1;
  return quantilesByCount(out.store, (week * stores + store) * out.n, out.n, ps, step);
}

/** Share of seasons for which `holds` is true. */
export function pAny(out: Out, holds: (season: number) => boolean): number {
  let count = 0;
  for (let s = 0; s < out.n; s++) if (holds(s)) count++;
  return count / out.n;
}

export interface RunOut {
  /** Share of seasons in which nobody wanted a jar in vain before the product was made again. */
  readonly lastsShare: number;
  /** Week of the first jar wanted in vain, sorted; only seasons in which it ran out before being made again. */
  readonly weeks: readonly number[];
  /** First week by which it had run out in a share p of all seasons; null when it never comes to that. */
  readonly goneBy: (p: number) => number | null;
  /** `k` years, evenly through all seasons tried: week of running out, null = lasts to harvest. */
  readonly dots: (k: number) => (number | null)[];
}

/** When a product runs out before its next harvest: run out in the same season earlier than made again. */
export function runOutDates(out: Out, product: number): RunOut {
  const weeks: number[] = [];
  for (let at = product * out.n; at < (product + 1) * out.n; at++) {
    const gone = out.runOut[at]!;
    if (gone !== NEVER && gone < out.firstMade[at]!) weeks.push(gone);
  }
  weeks.sort((a, b) => a - b);
  const goneBy = (p: number): number | null => weeks[Math.max(1, Math.ceil(p * out.n - 1e-9)) - 1] ?? null;
  const dots = (k: number) => Array.from({ length: k }, (_, i) => goneBy((i + 0.5) / k));
  return { lastsShare: 1 - weeks.length / out.n, weeks, goneBy, dots };
}

/** Share of seasons that end each week with no jar of a product: the run-out strip. */
export function emptyByWeek(out: Out, product: number): Float64Array {
  return Float64Array.from({ length: out.weeks }, (_, w) => {
    const from = (w * out.products + product) * out.n;
    let none = 0;
    for (let i = from; i < from + out.n; i++) if (out.stock[i] === 0) none++;
    return none / out.n;
  });
}

export interface Overflow {
  /** Share of seasons in which the store is over its capacity at the end of at least one week. */
  readonly share: number;
  /** Share of seasons over capacity at the end of each week. */
  readonly byWeek: Float64Array;
  /** Week in which it most often happens first; null when it never does. */
  readonly mostOftenFrom: number | null;
}

/** Whether the jars fit, counted by whole seasons. `capacity` in the store's unit. */
export function overflow(out: Out, store: number, capacity: number): Overflow {
  const stores = out.storeUnits.length;
  const first = new Uint8Array(out.n).fill(NEVER);
  const byWeek = new Float64Array(out.weeks);
  const firstCounts = new Uint32Array(out.weeks);
  for (let w = 0; w < out.weeks; w++) {
    const from = (w * stores + store) * out.n;
    for (let s = 0; s < out.n; s++) {
      if (!(out.store[from + s]! > capacity + 1e-4)) continue;
      byWeek[w]! += 1 / out.n;
      if (first[s] === NEVER) {
        first[s] = w;
        firstCounts[w]!++;
      }
    }
  }
  const seasons = firstCounts.reduce((sum, k) => sum + k, 0);
  return {
    share: seasons / out.n,
    byWeek,
    mostOftenFrom: seasons === 0 ? null : firstCounts.indexOf(Math.max(...firstCounts)),
  };
}

/** Lids to buy so that they are enough up to a week in a share p of seasons: quantile of lids used minus lids on hand. */
export function shopping(out: Out, lid: number, week: number, p: number): number {
  const [used] = quantilesByCount(out.lids, (week * out.lidStock.length + lid) * out.n, out.n, [p]);
  return Math.max(0, used! - out.lidStock[lid]!);
}

/** Share of seasons in which `have` lids are enough up to the end of a week. */
export function lidsEnough(out: Out, lid: number, week: number, have: number): number {
  const from = (week * out.lidStock.length + lid) * out.n;
  return pAny(out, (s) => out.lids[from + s]! <= have);
}

/** Standard error of a share p counted in n independent seasons; the Latin hypercube does better. */
export const mcError = (p: number, n: number): number => Math.sqrt((p * (1 - p)) / n);
