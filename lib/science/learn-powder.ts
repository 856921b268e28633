/**
 * Strength of a home-dried powder, g of sugar a gram carries, from what the cold plate showed: runs, thickens or set. A batch
 * sets when the fruit's pectin and the powder's together reach the need. Bayes on a grid over the strength and over one shared
 * error of the fruit's own pectin (±40 % as one sd, so that a wrong fruit table does not pass for a strong powder); a batch
 * differs from the sum by a log sd of 0.2. Thickens stands for 0.7 to 1 of the need. The 0.2 and the 0.7 are estimates.
 * What is learnt is a strength within this program's own sums, not a laboratory grade.
 */
import type { Learnt } from './learn-factor.ts';
import { normalCdf } from './normal-cdf.ts';

export interface PlateSeen {
  /** 0 runs, 1 thickens, 2 set. */
  readonly plate: 0 | 1 | 2;
  /** Pectin of the fruit and the need, in grams of grade 150. */
  readonly ownEq150G: number;
  readonly needEq150G: number;
  readonly powderG: number;
}

const GRADE = 150;
const BATCH_SD = 0.2;
const OWN_SD = Math.log(1.4);
const THICKENS_FROM = Math.log(0.7);
const Z90 = 1.2815515655446004;
const STEPS = { strength: 60, own: 12 };

export function powderStrength(prior: { low: number; high: number }, seen: readonly PlateSeen[]): Learnt {
  const middle = Math.log(prior.low * prior.high) / 2;
  const sd = Math.log(prior.high / prior.low) / (2 * Z90);
  const points: { q: number; weight: number }[] = [];
  for (let i = -STEPS.strength; i <= STEPS.strength; i++) {
    const z = (3.5 * i) / STEPS.strength;
    const q = Math.exp(middle + sd * z);
    let weight = 0;
    for (let j = -STEPS.own; j <= STEPS.own; j++) {
      const y = (3 * j) / STEPS.own;
      weight += Math.exp(-0.5 * (z * z + y * y)) * likelihood(seen, q, Math.exp(OWN_SD * y));
    }
    points.push({ q, weight });
  }
  const at = quantile(points);
  const [low, half, high] = [at(0.1), at(0.5), at(0.9)];
  const band = Math.exp(Z90 * BATCH_SD);
  return { n: seen.length, middle: half, low, high, nextLow: low / band, nextHigh: high * band };
}

const likelihood = (seen: readonly PlateSeen[], q: number, ownFactor: number): number =>
  seen.reduce((product, b) => {
    const has = Math.log((b.ownEq150G * ownFactor + (q * b.powderG) / GRADE) / b.needEq150G);
    const setShare = normalCdf(has / BATCH_SD);
    const notRunning = normalCdf((has - THICKENS_FROM) / BATCH_SD);
    const chance = b.plate === 2 ? setShare : b.plate === 1 ? notRunning - setShare : 1 - notRunning;
    // No single plate may rule a strength out: one in a thousand is misread.
    return product * (0.001 + 0.999 * Math.max(0, chance));
  }, 1);

/** Quantiles of a weighted grid, linear between its points. */
function quantile(points: readonly { q: number; weight: number }[]): (share: number) => number {
  const total = points.reduce((s, p) => s + p.weight, 0);
  return (share) => {
    let below = 0;
    let last = points[0]?.q ?? Number.NaN;
    for (const { q, weight } of points) {
      const next = below + weight / total;
      if (next >= share) return last + (q - last) * ((share - below) / (next - below));
      below = next;
      last = q;
    }
    return last;
  };
}
