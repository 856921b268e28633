/**
 * Special functions for the season forecast, plain numbers in and out.
 * lnGamma: Lanczos, g = 7, 9 terms. Normal quantile: Wichura 1988, Algorithm AS 241 (PPND16), Applied Statistics 37:477-484.
 * Incomplete gamma: power series below a + 1, continued fraction (Lentz) above. Gamma quantile: Wilson-Hilferty start, Halley steps.
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over the arrays' own lengths

// biome-ignore format: one series, read across
const LANCZOS = [0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
  12.507343278686905, -0.13857109526572012, 0.000009984369578019572, 1.5056327351493116e-7];

/** Natural log of the gamma function, x > 0; relative error about 1e-14. */
export function lgamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - lgamma(1 - x);
  const t = x + 6.5;
  let sum = LANCZOS[0]!;
  for (let i = 1; i < 9; i++) sum += LANCZOS[i]! / (x - 1 + i);
  return 0.9189385332046727 + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

// biome-ignore format: published rows
const AS241 = {
  a: [3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227],
  b: [1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854],
  c: [1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414],
  d: [1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9],
  e: [6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124, 0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7],
  f: [1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15],
} as const;

const ratio = (top: readonly number[], bottom: readonly number[], x: number): number =>
  top.reduceRight((sum, k) => sum * x + k, 0) / bottom.reduceRight((sum, k) => sum * x + k, 0);

/** Standard normal quantile, 0 < p < 1; -Infinity and Infinity at the ends. */
export function qnorm(p: number): number {
  if (p <= 0) return -Infinity;
  if (p >= 1) return Infinity;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(AS241.a, AS241.b, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const z = r <= 5 ? ratio(AS241.c, AS241.d, r - 1.6) : ratio(AS241.e, AS241.f, r - 5);
  return q < 0 ? -z : z;
}

/** Standard normal probability below x. */
export function pnorm(x: number): number {
  const tail = 0.5 * gammaQ(0.5, (x * x) / 2);
  return x < 0 ? tail : 1 - tail;
}

function gammaSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let i = 1; i < 10_000 && term > sum * 1e-16; i++) {
    term *= x / (a + i);
    sum += term;
  }
  return sum * Math.exp(a * Math.log(x) - x - lgamma(a));
}

function gammaFraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 10_000; i++) {
    const an = -i * (i - a);
    b += 2;
    d = 1 / (an * d + b || 1e-300);
    c = b + an / c || 1e-300;
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return h * Math.exp(a * Math.log(x) - x - lgamma(a));
}

/** P(Gamma(a, 1) <= x), a > 0. Equals P(Poisson(x) >= a) for whole a. */
export function gammaP(a: number, x: number): number {
  if (x <= 0) return 0;
  return x < a + 1 ? gammaSeries(a, x) : 1 - gammaFraction(a, x);
}

/** P(Gamma(a, 1) > x), exact in the far tail too. */
export function gammaQ(a: number, x: number): number {
  if (x <= 0) return 1;
  return x < a + 1 ? 1 - gammaSeries(a, x) : gammaFraction(a, x);
}

/** Quantile of Gamma(shape a, scale 1), 0 <= p < 1. */
export function qgamma(p: number, a: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return Infinity;
  const cube = 1 - 1 / (9 * a) + qnorm(p) / (3 * Math.sqrt(a));
  const small = Math.exp((Math.log(p) + lgamma(a + 1)) / a);
  let x = cube > 0.2 ? a * cube ** 3 : small;
  for (let i = 0; i < 40; i++) {
    const density = Math.exp((a - 1) * Math.log(x) - x - lgamma(a));
    const newton = (gammaP(a, x) - p) / density;
    const step = newton / (1 - 0.5 * Math.min(1, newton * ((a - 1) / x - 1)));
    const next = x - step;
    x = next > 0 ? next : x / 2;
    if (Math.abs(step) < 1e-13 * x) break;
  }
  return x;
}

/** Quantile of values already sorted upwards, linear between neighbours (Hyndman and Fan type 7). NaN for no values. */
export function quantileSorted(sorted: ArrayLike<number>, p: number): number {
  if (sorted.length === 0) return Number.NaN;
  const at = Math.min(1, Math.max(0, p)) * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  return below + 1 < sorted.length ? low + (at - below) * (sorted[below + 1]! - low) : low;
}
