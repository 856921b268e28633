/**
 * What a whole season has in common: how fast each product is used, and how good a year each crop has.
 * Drawn for all seasons beforehand, one stream per name, so that any thread may simulate any range of them.
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over arrays allocated here
import { pnorm, qgamma, qnorm } from './math.ts';
import { key, Sfc32, uid } from './random.ts';
import type { Scenario } from './scenario.ts';

export type DrawMethod = 'lhs' | 'mc' | 'antithetic' | 'lattice';

/** Weekly paths of each crop, sorted by size: rows x weeks, kg. Positions as in `Scenario.crops`. */
export interface HarvestBanks {
  readonly paths: readonly Float32Array[];
  readonly rows: readonly number[];
}

export interface Draws {
  readonly n: number;
  readonly seed: number;
  readonly antithetic: boolean;
  /** Rate factor, [product][season]. */
  readonly mult: Float32Array;
  /** Row of the crop's bank, [crop][season]. */
  readonly cropIdx: Uint32Array;
  readonly banks: readonly Float32Array[];
  readonly bankRows: readonly number[];
  /** What-if factor on each crop's kg; 1 when left out. */
  readonly cropScale?: readonly number[];
}

export interface DrawOptions {
  readonly n: number;
  readonly seed: number;
  /** Latin hypercube unless given. */
  readonly method?: DrawMethod;
  /** Rank correlation of crops through a common good year; 0.3 from memory, unmeasured. */
  readonly rho?: number;
}

/** Season-level draws for `n` seasons. `antithetic` pairs seasons 2j and 2j+1 and wants an even n. */
export function drawSeasons(sc: Scenario, banks: HarvestBanks, options: DrawOptions): Draws {
  const { n, seed, method = 'lhs', rho = 0.3 } = options;
  if (banks.paths.length !== sc.crops.length)
    throw new RangeError(`${banks.paths.length} harvest banks for ${sc.crops.length} crops`);
  const names = [...sc.products.map((p) => `use ${p.id}`), ...sc.crops.map((c) => `crop ${c.id}`), 'year'];
  const uniforms = uniformsFor(names, { n, seed, method });
  const mult = new Float32Array(sc.products.length * n);
  sc.products.forEach((p, i) => {
    const factor = rateFactor(p.rateCv);
    const u = uniforms(`use ${p.id}`);
    for (let s = 0; s < n; s++) mult[i * n + s] = factor(u[s]!);
  });
  const year = uniforms('year').map(qnorm);
  const cropIdx = new Uint32Array(sc.crops.length * n);
  sc.crops.forEach((c, i) => {
    const z = uniforms(`crop ${c.id}`).map((u, s) => Math.sqrt(rho) * year[s]! + Math.sqrt(1 - rho) * qnorm(u));
    cropIdx.set(method === 'lhs' ? rowsByRank(z, banks.rows[i]!) : rowsByScore(z, banks.rows[i]!), i * n);
  });
  return { n, seed, antithetic: method === 'antithetic', mult, cropIdx, banks: banks.paths, bankRows: banks.rows };
}

function uniformsFor(
  names: readonly string[],
  o: { n: number; seed: number; method: DrawMethod },
): (name: string) => Float64Array {
  // The lattice needs one prime per name; order of names, not of records, so that reordering changes nothing.
  const place = new Map([...new Set(names)].sort().map((name, i) => [name, i]));
  return (name) => {
    const rng = new Sfc32(key(o.seed, uid(name)));
    const u = new Float64Array(o.n);
    if (o.method === 'lhs') {
      const order = permutation(o.n, rng);
      for (let s = 0; s < o.n; s++) u[s] = (order[s]! + rng.u()) / o.n;
    } else if (o.method === 'lattice') {
      const step = Math.sqrt(nthPrime(place.get(name)!));
      const shift = rng.u();
      for (let s = 0; s < o.n; s++) u[s] = Math.min(1 - 1e-12, Math.max(1e-12, (s * step + shift) % 1));
    } else if (o.method === 'antithetic') {
      for (let s = 0; s < o.n; s++) u[s] = s % 2 === 1 ? 1 - u[s - 1]! : rng.u();
    } else for (let s = 0; s < o.n; s++) u[s] = rng.u();
    return u;
  };
}

function permutation(n: number, rng: Sfc32): Uint32Array {
  const order = Uint32Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const j = Math.floor(rng.u() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}

function nthPrime(n: number): number {
  for (let candidate = 2, found = -1; ; candidate++) {
    let prime = true;
    for (let d = 2; d * d <= candidate && prime; d++) prime = candidate % d !== 0;
    if (prime && ++found === n) return candidate;
  }
}

/** Quantiles of a gamma of mean 1, tabled at 513 normal scores from -4 to 4 and read linearly at qnorm(u). */
function rateFactor(cv: number): (u: number) => number {
  if (!(cv > 0)) return () => 1;
  const shape = 1 / (cv * cv);
  const table = Float64Array.from({ length: 513 }, (_, i) => qgamma(pnorm(-4 + i / 64), shape) / shape);
  return (u) => {
    const at = Math.min(511.999999, Math.max(0, (qnorm(u) + 4) * 64));
    const below = Math.floor(at);
    return table[below]! + (at - below) * (table[below + 1]! - table[below]!);
  };
}

/** Each row equally often: the rank of the score picks it. */
function rowsByRank(z: Float64Array, rows: number): Uint32Array {
  const order = Uint32Array.from(z.keys()).sort((a, b) => z[a]! - z[b]!);
  const picked = new Uint32Array(z.length);
  order.forEach((season, rank) => {
    picked[season] = Math.floor((rank * rows) / z.length);
  });
  return picked;
}

const rowsByScore = (z: Float64Array, rows: number): Uint32Array =>
  Uint32Array.from(z, (score) => Math.min(rows - 1, Math.floor(pnorm(score) * rows)));
