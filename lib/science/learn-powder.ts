/**
 * Strength of a home-dried powder, g of sugar a gram carries, from what the cold plate showed: runs, thickens or set. A batch
 * sets when the fruit's pectin and the powder's together reach the need. Bayes on a grid over the strength and over one shared
 * error of the fruit's own pectin (±40 % as one sd, so that a wrong fruit table does not pass for a strong powder); a batch
 * differs from the sum by a log sd of 0.2. Thickens stands for 0.7 to 1 of the need. The 0.2 and the 0.7 are estimates.
 * What is learnt is a strength within this program's own sums, not a laboratory grade.
 *
 * Each lot of powder has a strength of its own; lots of one household share half of their spread (estimate: the same trees and
 * mill), so that a lot nobody has tried starts from what the others showed and its own batches count most.
 *
 * An alcohol test of its extract counts too: 30 g simmered and strained to one cup, a cup of sugar taken as 200 g, the printed rule (a
 * lump 1 cup of sugar a cup, several lumps 3/4, flakes 1/2) puts the three results at 6.7, 5.0 and 3.3 g a gram; the borders
 * lie between, at the geometric means, and a test is taken to be off by a log sd of 0.3 (estimate: how much a simmer draws out).
 */
import { CLOT_TEST } from '#lib/reference/pectin-sources.ts';
import type { Clot } from './clot-test.ts';
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

export interface StrengthRange {
  readonly low: number;
  readonly typ: number;
  readonly high: number;
}

/** Grams of powder simmered and strained to one cup for the alcohol test. */
export const CLOT_POWDER_G = 30;
const SUGAR_CUP_G = 200;
const CLOT_SD = 0.3;
const GRADE = 150;
const BATCH_SD = 0.2;
const OWN_SD = Math.log(1.4);
const THICKENS_FROM = Math.log(0.7);
const Z90 = 1.2815515655446004;
const SHARED = 0.5;
const STEPS = { strength: 60, own: 12 };
const GRID = Array.from({ length: 2 * STEPS.strength + 1 }, (_, i) => (3.5 * (i - STEPS.strength)) / STEPS.strength);
const OWN = Array.from({ length: 2 * STEPS.own + 1 }, (_, j) => (3 * (j - STEPS.own)) / STEPS.own);
/** Weight of a lot at z beside a household at h. */
const NEAR = GRID.map((h) => GRID.map((z) => Math.exp((-0.5 * (z - Math.sqrt(SHARED) * h) ** 2) / (1 - SHARED))));

/** Strength of one lot from its own batches alone. */
export const powderStrength = (prior: StrengthRange, seen: readonly PlateSeen[]): Learnt =>
  powderStrengths(prior, [seen])[0] as Learnt;

/**
 * Strength of each lot, in the order given, from its own batches and tests and from those of the others. A lot may have none;
 * `clots` are the alcohol tests of each lot, in the same order.
 */
export function powderStrengths(
  prior: StrengthRange,
  lots: readonly (readonly PlateSeen[])[],
  clots: readonly (readonly Clot[])[] = [],
): Learnt[] {
  const strengths = GRID.map((z) => strengthAt(prior, z));
  const tested = lots.map((_, i) => strengths.map((q) => clotLikelihood(clots[i] ?? [], q)));
  const weights = lots.map(() => GRID.map(() => 0));
  for (const y of OWN) {
    const own = lots.map((seen, i) =>
      strengths.map((q, k) => likelihood(seen, q, Math.exp(OWN_SD * y)) * (tested[i]?.[k] as number)),
    );
    const toShared = own.map((like) => NEAR.map((near) => dot(near, like)));
    const prior01 = GRID.map((h) => Math.exp(-0.5 * (h * h + y * y)));
    for (const [i, weight] of weights.entries()) {
      const others = prior01.map((p, h) =>
        toShared.reduce((product, m, k) => (k === i ? product : product * (m[h] as number)), p),
      );
      for (const z of GRID.keys())
        weight[z] =
          (weight[z] as number) +
          ((own[i] as number[])[z] as number) * others.reduce((sum, o, h) => sum + o * (NEAR[h]?.[z] as number), 0);
    }
  }
  return weights.map((w, i) => learntOf(strengths, w, lots[i]?.length ?? 0));
}

const perGram = (clot: Clot): number =>
  ((CLOT_TEST.find((row) => row.pectin === clot)?.sugarCupsPerCup ?? Number.NaN) * SUGAR_CUP_G) / CLOT_POWDER_G;
const LUMP_FROM = Math.log(Math.sqrt(perGram('high') * perGram('medium')));
const LUMPS_FROM = Math.log(Math.sqrt(perGram('medium') * perGram('low')));

function clotLikelihood(clots: readonly Clot[], q: number): number {
  const lump = normalCdf((Math.log(q) - LUMP_FROM) / CLOT_SD);
  const lumps = normalCdf((Math.log(q) - LUMPS_FROM) / CLOT_SD) - lump;
  const chance: Record<Clot, number> = { high: lump, medium: lumps, low: 1 - lump - lumps };
  // As with a plate, no single test may rule a strength out.
  return clots.reduce((product, clot) => product * (0.001 + 0.999 * Math.max(0, chance[clot])), 1);
}

/** Half the cases below `typ`, a tenth below `low` and a tenth above `high`, log-normal on either side. */
const strengthAt = ({ low, typ, high }: StrengthRange, z: number): number =>
  typ * Math.exp((z * Math.log(z < 0 ? typ / low : high / typ)) / Z90);

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, i) => sum + x * (b[i] as number), 0);

function learntOf(strengths: readonly number[], weights: readonly number[], n: number): Learnt {
  const at = quantile(strengths.map((q, i) => ({ q, weight: weights[i] as number })));
  const [low, half, high] = [at(0.1), at(0.5), at(0.9)];
  const band = Math.exp(Z90 * BATCH_SD);
  return { n, middle: half, low, high, nextLow: low / band, nextHigh: high * band };
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

/** Quantiles of a weighted grid: half of each point's weight lies below it, linear between the points. */
function quantile(points: readonly { q: number; weight: number }[]): (share: number) => number {
  const total = points.reduce((s, p) => s + p.weight, 0);
  return (share) => {
    let below = 0;
    let last = { q: points[0]?.q ?? Number.NaN, share: 0 };
    for (const { q, weight } of points) {
      const here = { q, share: (below + weight / 2) / total };
      if (here.share >= share)
        return here.share > last.share
          ? last.q + ((here.q - last.q) * (share - last.share)) / (here.share - last.share)
          : q;
      below += weight;
      last = here;
    }
    return last.q;
  };
}
