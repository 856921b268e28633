/**
 * Random numbers with an address instead of a sequence: the same (seed, season, name, week) always gives the same number,
 * on any number of threads and whatever else is drawn. Multipliers of the mixer are published low-bias constants (from memory;
 * golden vectors fix them).
 */
const INV_32 = 2 ** -32;

/** 32-bit mixer: a bijection whose output bits all depend on all input bits. */
export function mix32(x: number): number {
  let h = x ^ (x >>> 16);
  h = Math.imul(h, 0x21f0aaad);
  h ^= h >>> 15;
  h = Math.imul(h, 0x735a2d97);
  return (h ^ (h >>> 15)) >>> 0;
}

/** Key of a stream, from a seed and up to three whole numbers. */
export function key(seed: number, a: number, b = 0, c = 0): number {
  let h = mix32(seed ^ 0x9e3779b9);
  h = mix32(h ^ Math.imul(a + 1, 0x85ebca6b));
  h = mix32(h ^ Math.imul(b + 1, 0xc2b2ae35));
  return mix32(h ^ Math.imul(c + 1, 0x27d4eb2f));
}

/** A name as 32 bits (FNV-1a over UTF-16 units), so that a stream keeps its numbers when others are added or moved. */
export function uid(name: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) h = Math.imul(h ^ name.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** Address as a uniform number in (0, 1). */
export const uniformOf = (address: number): number => ((address >>> 0) + 0.5) * INV_32;

/** A stream where rejection needs a varying count of numbers: sfc32 seeded by a key. */
export class Sfc32 {
  #a: number;
  #b: number;
  #c: number;
  #d = 1;
  #spare = Number.NaN;

  constructor(streamKey: number) {
    this.#a = mix32(streamKey ^ 0x243f6a88) | 0;
    this.#b = mix32(streamKey ^ 0x85a308d3) | 0;
    this.#c = mix32(streamKey ^ 0x13198a2e) | 0;
    for (let i = 0; i < 8; i++) this.u();
  }

  /** Uniform in (0, 1). */
  u(): number {
    const t = (this.#a + this.#b + this.#d) | 0;
    this.#d = (this.#d + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + t) | 0;
    return ((t >>> 0) + 0.5) * INV_32;
  }

  /** Standard normal, polar method; the second value of a pair is kept for the next call. */
  normal(): number {
    if (!Number.isNaN(this.#spare)) {
      const kept = this.#spare;
      this.#spare = Number.NaN;
      return kept;
    }
    for (;;) {
      const x = 2 * this.u() - 1;
      const y = 2 * this.u() - 1;
      const s = x * x + y * y;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      this.#spare = y * scale;
      return x * scale;
    }
  }

  /** Gamma of shape k and scale 1 (Marsaglia and Tsang 2000, ACM TOMS 26:363-372); 0 at k <= 1e-8. */
  gamma(k: number): number {
    if (k <= 1e-8) return 0;
    if (k < 1) return this.gamma(k + 1) * this.u() ** (1 / k);
    const d = k - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.normal();
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      const u = this.u();
      if (u < 1 - 0.0331 * x ** 4) return d * v;
      if (Math.log(u) < 0.5 * x * x + d * (1 - v + Math.log(v))) return d * v;
    }
  }

  /** Poisson count by inversion; a rounded normal above mean 60. */
  poisson(mean: number): number {
    if (mean > 60) return Math.max(0, Math.round(mean + Math.sqrt(mean) * this.normal()));
    let p = Math.exp(-mean);
    let left = this.u() - p;
    let count = 0;
    while (left > 0 && count < 400) {
      count++;
      p *= mean / count;
      left -= p;
    }
    return count;
  }
}
