/**
 * Harvest still to come from one crop block, learned from the picks so far.
 *
 * Picks are increments of a gamma process along the ripening curve, so that adding days together stays exact. The season's
 * total has an inverse gamma prior per kind of year and is integrated out in closed form; mid-date, width, curve and evenness
 * are a grid. The same grid holds every kind of year: they differ only in the closed-form part.
 * Masses in kg, days on the prior's own day count.
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over the grid's own arrays
import type { CropPrior } from './crop-prior.ts';
import { lgamma } from './math.ts';
import type { Sfc32 } from './random.ts';
import { type CurveShape, curve } from './ripening-curve.ts';

export interface PickRecord {
  /** Day of the record. */
  readonly t: number;
  /** Mass picked since the previous record; 0 = looked, nothing ripe. */
  readonly kg: number;
}

export interface HarvestMeans {
  /** Mass still to be picked. */
  readonly remaining: number;
  /** The season's scale of crop. Picked so far plus `remaining` is what the season is expected to bring. */
  readonly total: number;
  readonly picked: number;
  readonly mid: number;
  readonly midSd: number;
  readonly width: number;
  /** Weight of each kind of year. */
  readonly pComponent: number[];
  readonly kappa: number;
  /** Share of the crop ripe by the last record. */
  readonly share: number;
}

/** Exact split of the expected total: weight x figure, summed over records and prior, gives `HarvestMeans.total`. */
export interface Evidence {
  readonly recordsWeight: number;
  /** What the records alone say, kg; NaN before any record. */
  readonly recordsSay: number;
  readonly priorSays: number;
}

export interface HarvestSample {
  /** Row per path, column per bin, kg. */
  readonly paths: Float32Array;
  readonly cols: number;
  readonly remaining: Float64Array;
}

export interface GridOptions {
  readonly nMid?: number;
  readonly nWidth?: number;
  /** A record below this many kg counts as "nothing ripe"; 0.2 % of the prior mean unless given. */
  readonly zero?: number;
}

/** Bins thinner than this share of the crop are carried into the next. */
const SLIVER = 0.0004;
const MID_SPAN = 3.2;
const WIDTH_SPAN = 2.6;
const LOWEST_LOG_WEIGHT = -40;

/** Even points over [-span, span]; one point only: 0. */
const scores = (n: number, span: number): number[] =>
  n === 1 ? [0] : Array.from({ length: n }, (_, i) => -span + (2 * span * i) / (n - 1));

const sumOf = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0);

export class HarvestPosterior {
  readonly #prior: CropPrior;
  readonly #zero: number;
  /** Inverse gamma of each kind of year: shape a, scale b, log weight. */
  readonly #years: { a: number; b: number; logWeight: number }[];
  // One entry per curve (mid-date, width, shape).
  readonly #mid: Float64Array;
  readonly #width: Float64Array;
  readonly #shape: Uint8Array;
  readonly #logPrior: Float64Array;
  readonly #ripe: Float64Array;
  // One entry per curve and evenness.
  readonly #logL: Float64Array;
  readonly #extraB: Float64Array;
  #extraA = 0;
  #picked = 0;
  #weights: Float64Array | null = null;

  /** Before any record. Throws RangeError for a prior without a positive expected crop. */
  constructor(prior: CropPrior, options: GridOptions = {}) {
    const expected = sumOf(prior.total.map((y) => y.weight * y.mean)) / sumOf(prior.total.map((y) => y.weight));
    if (!(expected > 0)) throw new RangeError('A crop needs an expected mass above 0 kg');
    this.#prior = prior;
    this.#zero = options.zero ?? 0.002 * expected;
    this.#years = inverseGammas(prior);
    const mids = scores(options.nMid ?? 41, MID_SPAN);
    const widths = scores(options.nWidth ?? 9, WIDTH_SPAN);
    const n = mids.length * widths.length * 3;
    this.#mid = new Float64Array(n);
    this.#width = new Float64Array(n);
    this.#shape = new Uint8Array(n);
    this.#logPrior = new Float64Array(n);
    this.#ripe = new Float64Array(n);
    this.#logL = new Float64Array(n * prior.kappa.values.length);
    this.#extraB = new Float64Array(n * prior.kappa.values.length);
    let c = 0;
    for (const zm of mids) {
      for (const zw of widths) {
        for (let s = 0; s < 3; s++, c++) {
          this.#mid[c] = prior.mid.mean + zm * prior.mid.sd;
          this.#width[c] = prior.width.median * Math.exp(zw * prior.width.sdLog);
          this.#shape[c] = s;
          this.#logPrior[c] = -0.5 * (zm * zm + zw * zw) + Math.log(prior.shapes[s]!);
        }
      }
    }
  }

  #share(c: number, t: number): number {
    return curve(this.#shape[c] as CurveShape, t, this.#mid[c]!, this.#width[c]!);
  }

  /** Learn one record. Records come in order of day. Time is proportional to the grid. */
  update(record: PickRecord): this {
    if (!(record.kg >= 0)) throw new RangeError(`A pick of ${record.kg} kg is below nothing`);
    const { values } = this.#prior.kappa;
    const nK = values.length;
    const ripe = record.kg >= this.#zero && record.kg > 0;
    const logKg = Math.log(ripe ? record.kg : this.#zero);
    const logKappa = values.map(Math.log);
    for (let c = 0; c < this.#ripe.length; c++) {
      const before = this.#ripe[c]!;
      const now = Math.max(before, this.#share(c, record.t));
      this.#ripe[c] = now;
      const step = Math.max(now - before, 1e-12);
      for (let k = 0; k < nK; k++) {
        const at = c * nK + k;
        const alpha = values[k]! * step;
        // A bare look uses the Jensen bound of P(Y < zero): it never exceeds 1 and keeps the total conjugate.
        this.#logL[at]! += alpha * (logKappa[k]! + logKg) - lgamma(ripe ? alpha : 1 + alpha);
        if (!ripe) this.#extraB[at]! += (values[k]! * this.#zero * alpha) / (alpha + 1);
      }
    }
    if (ripe) this.#picked += record.kg;
    this.#weights = null;
    return this;
  }

  /** "About `kg` still on the trees, give or take a share `cv`", said at the moment of the last record. */
  eyeEstimate(kg: number, cv: number): this {
    if (!(kg > 0) || !(cv > 0)) throw new RangeError('An estimate by eye needs a mass and a spread above 0');
    const k = 1 / (cv * cv);
    const nK = this.#prior.kappa.values.length;
    this.#extraA += k;
    for (let c = 0; c < this.#ripe.length; c++) {
      const left = Math.max(1 - this.#ripe[c]!, 1e-6);
      for (let at = c * nK; at < (c + 1) * nK; at++) {
        this.#extraB[at]! += (k * kg) / left;
        this.#logL[at]! -= k * Math.log(left);
      }
    }
    this.#weights = null;
    return this;
  }

  /** A and B of one curve and evenness: what records and estimates add to the inverse gamma. */
  #added(c: number, k: number): { A: number; B: number } {
    const { values } = this.#prior.kappa;
    const kappa = values[k]!;
    return { A: kappa * this.#ripe[c]! + this.#extraA, B: kappa * this.#picked + this.#extraB[c * values.length + k]! };
  }

  /** Normalised weight of every cell, kinds of year innermost. */
  #cells(): Float64Array {
    if (this.#weights) return this.#weights;
    const { values, weights: kappaWeights } = this.#prior.kappa;
    const nK = values.length;
    const nY = this.#years.length;
    const fixed = this.#years.map((y) => y.logWeight + y.a * Math.log(y.b) - lgamma(y.a));
    const w = new Float64Array(this.#ripe.length * nK * nY);
    let largest = -Infinity;
    for (let c = 0, at = 0; c < this.#ripe.length; c++) {
      for (let k = 0; k < nK; k++) {
        const { A, B } = this.#added(c, k);
        const common = this.#logPrior[c]! + Math.log(kappaWeights[k]!) + this.#logL[c * nK + k]!;
        for (let j = 0; j < nY; j++, at++) {
          const year = this.#years[j]!;
          const log =
            A === 0 && B === 0
              ? common + year.logWeight
              : common + fixed[j]! + lgamma(year.a + A) - (year.a + A) * Math.log(year.b + B);
          w[at] = log;
          if (log > largest) largest = log;
        }
      }
    }
    let sum = 0;
    for (let at = 0; at < w.length; at++) {
      const log = w[at]! - largest;
      w[at] = log < LOWEST_LOG_WEIGHT ? 0 : Math.exp(log);
      sum += w[at]!;
    }
    for (let at = 0; at < w.length; at++) w[at]! /= sum;
    this.#weights = w;
    return w;
  }

  /** Calls `visit` for every cell that carries weight. */
  #eachCell(
    visit: (cell: { p: number; c: number; k: number; j: number; a: number; b: number; A: number; B: number }) => void,
  ) {
    const w = this.#cells();
    const nK = this.#prior.kappa.values.length;
    for (let c = 0, at = 0; c < this.#ripe.length; c++) {
      for (let k = 0; k < nK; k++) {
        const { A, B } = this.#added(c, k);
        for (let j = 0; j < this.#years.length; j++, at++) {
          const p = w[at]!;
          if (p > 0) visit({ p, c, k, j, a: this.#years[j]!.a, b: this.#years[j]!.b, A, B });
        }
      }
    }
  }

  /** Posterior means, closed form. */
  means(): HarvestMeans {
    let [remaining, total, mid, midSquare, width, kappa, share] = [0, 0, 0, 0, 0, 0, 0];
    const pComponent = this.#years.map(() => 0);
    const centre = this.#prior.mid.mean;
    this.#eachCell(({ p, c, k, j, a, b, A, B }) => {
      const cellTotal = (p * (b + B)) / (a + A - 1);
      const off = this.#mid[c]! - centre;
      total += cellTotal;
      remaining += cellTotal * (1 - this.#ripe[c]!);
      mid += p * off;
      midSquare += p * off * off;
      width += p * this.#width[c]!;
      kappa += p * this.#prior.kappa.values[k]!;
      share += p * this.#ripe[c]!;
      pComponent[j]! += p;
    });
    const midSd = Math.sqrt(Math.max(0, midSquare - mid * mid));
    return { remaining, total, picked: this.#picked, mid: centre + mid, midSd, width, pComponent, kappa, share };
  }

  /** How much of the expected total comes from this season's records and how much from earlier belief. */
  evidence(): Evidence {
    let [recordsWeight, recordsKg, priorKg] = [0, 0, 0];
    this.#eachCell(({ p, a, b, A, B }) => {
      recordsWeight += (p * A) / (a - 1 + A);
      recordsKg += (p * B) / (a - 1 + A);
      priorKg += (p * b) / (a - 1 + A);
    });
    return { recordsWeight, recordsSay: recordsKg / recordsWeight, priorSays: priorKg / (1 - recordsWeight) };
  }

  /** Share of the crop in each bin (edge_j, edge_j+1]: the first starts at the last record, the last runs to the end. */
  #binShares(c: number, edges: ArrayLike<number>): number[] {
    const cols = edges.length - 1;
    let at = this.#ripe[c]!;
    return Array.from({ length: cols }, (_, j) => {
      const to = j === cols - 1 ? 1 : Math.max(at, this.#share(c, edges[j + 1]!));
      const step = to - at;
      at = to;
      return step;
    });
  }

  /** Expected kg ripening in each bin, closed form. Fruit ripe but not yet picked belongs to the first bin. */
  meanPath(edges: ArrayLike<number>): Float64Array {
    const path = new Float64Array(edges.length - 1);
    let shares: number[] = [];
    let last = -1;
    this.#eachCell(({ p, c, a, b, A, B }) => {
      if (c !== last) shares = this.#binShares(c, edges);
      last = c;
      const scale = (p * (b + B)) / (a + A - 1);
      for (let j = 0; j < path.length; j++) path[j]! += scale * shares[j]!;
    });
    return path;
  }

  /** `n` futures. Cells by systematic resampling, so paths come ordered by cell: sort or shuffle before pairing crops. */
  sample(n: number, edges: ArrayLike<number>, rng: Sfc32): HarvestSample {
    const cols = edges.length - 1;
    const paths = new Float32Array(n * cols);
    const remaining = new Float64Array(n);
    const start = rng.u();
    let running = 0;
    let i = 0;
    let shares: number[] = [];
    let last = -1;
    const draw = (kappa: number, total: number): void => {
      let carried = 0;
      for (let j = 0; j < cols; j++) {
        carried += shares[j]!;
        if (carried < SLIVER) continue;
        const kg = (total / kappa) * rng.gamma(kappa * carried);
        paths[i * cols + j] = kg;
        remaining[i]! += kg;
        carried = 0;
      }
    };
    this.#eachCell(({ p, c, k, a, b, A, B }) => {
      running += p;
      while (i < n && (i + start) / n < running + 1e-12) {
        if (c !== last) shares = this.#binShares(c, edges);
        last = c;
        draw(this.#prior.kappa.values[k]!, (b + B) / rng.gamma(a + A));
        i++;
      }
    });
    return { paths, cols, remaining };
  }
}

/** The gamma process supplies part of the stated spread; the inverse gamma only the rest. */
function inverseGammas(prior: CropPrior): { a: number; b: number; logWeight: number }[] {
  const { values, weights } = prior.kappa;
  const unevenness = sumOf(weights.map((w, k) => w / values[k]!)) / sumOf(weights);
  return prior.total.map(({ weight, mean, cv }) => {
    const a = 2 + 1 / Math.max((1 + cv * cv) / (1 + unevenness) - 1, 0.0004);
    return { a, b: mean * (a - 1), logWeight: Math.log(weight) };
  });
}
