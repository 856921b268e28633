/**
 * Roots of one-variable equations; each function names its source. Both need a bracket whose ends differ in sign and throw RangeError without one: a value
 * outside the range of a formula is refused, never extrapolated.
 */
export interface Bracket {
  readonly low: number;
  readonly high: number;
  /** Largest error accepted in x. */
  readonly within?: number;
}

type Equation = (x: number) => number;

function signsOrThrow(low: number, high: number, bracket: Bracket): void {
  if (!(low * high <= 0)) throw new RangeError(`no solution between ${bracket.low} and ${bracket.high}`);
}

/** Brent's method: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4. */
export function brent(f: Equation, bracket: Bracket): number {
  const within = bracket.within ?? 1e-11;
  let [a, b] = [bracket.low, bracket.high];
  let [fa, fb] = [f(a), f(b)];
  signsOrThrow(fa, fb, bracket);
  let [c, fc] = [a, fa];
  let step = b - a;
  let previous = step;
  for (let i = 0; i < 200; i++) {
    if (Math.sign(fb) === Math.sign(fc)) {
      [c, fc] = [a, fa];
      step = previous = b - a;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + within / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    const next = Math.abs(previous) >= tolerance && Math.abs(fa) > Math.abs(fb) ? interpolated() : null;
    if (next !== null) [previous, step] = [step, next];
    else step = previous = half;
    [a, fa] = [b, fb];
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fb = f(b);

    /** Inverse quadratic (or secant) step, or null when it is no better than halving. */
    function interpolated(): number | null {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      return 2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(previous * q)) ? p / q : null;
    }
  }
  throw new RangeError(`no solution found between ${bracket.low} and ${bracket.high}`);
}

/** Halving. Slower than Brent and hard to get wrong: the tests use it as the second opinion. */
export function bisection(f: Equation, bracket: Bracket): number {
  const within = bracket.within ?? 1e-10;
  let { low, high } = bracket;
  const fLow = f(low);
  signsOrThrow(fLow, f(high), bracket);
  while (high - low > within) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (Math.sign(f(middle)) === Math.sign(fLow)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
