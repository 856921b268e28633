/**
 * The model against series that were measured and played no part in making it. Small figures, cited here and read by hand from
 * their publications; the files themselves are not kept.
 */
import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { learnPrior, type PastSeason, type TableEntry } from '#lib/forecast/learn-prior.ts';
import { pnorm, qnorm } from '#lib/forecast/math.ts';
import { type CurveShape, curve } from '#lib/forecast/ripening-curve.ts';

/**
 * Strawberries picked 17 to 35 times a season, seven seasons of cultivars in Florida (crop-model example data, University of
 * Florida, 2014-2017): days from first to last pick and the two normals the cumulated share was fitted with there (root mean
 * square error of those fits 0.9 to 1.6 % of the crop).
 */
const PICKED = [
  { season: '2014, first', span: 112, m1: 53.7, s1: 26.9, m2: 89.9, s2: 13.1, w: 0.52 },
  { season: '2016, first', span: 119, m1: 28.7, s1: 13.1, m2: 88.1, s2: 17.0, w: 0.15 },
  { season: '2016, second', span: 119, m1: 42.2, s1: 24.2, m2: 95.7, s2: 13.6, w: 0.29 },
  { season: '2017, first', span: 110, m1: 62.6, s1: 25.6, m2: 93.4, s2: 9.5, w: 0.31 },
  { season: '2017, second', span: 110, m1: 49.5, s1: 24.0, m2: 94.2, s2: 9.1, w: 0.4 },
  { season: '2014, other site, first', span: 122, m1: 68.8, s1: 30.8, m2: 105.9, s2: 10.2, w: 0.52 },
  { season: '2014, other site, second', span: 122, m1: 70.7, s1: 28.4, m2: 101.6, s2: 13.4, w: 0.6 },
] as const;

/** Least root mean square distance of one of the three curves, cut off where picking began and ended, from the measured share. */
function bestFit(p: (typeof PICKED)[number]): { rms: number; shape: CurveShape } {
  const days = Array.from({ length: 29 }, (_, i) => (i * p.span) / 28);
  const share = (t: number) => p.w * pnorm((t - p.m1) / p.s1) + (1 - p.w) * pnorm((t - p.m2) / p.s2);
  const seen = days.map((t) => (share(t) - share(0)) / (share(p.span) - share(0)));
  let best = { rms: Number.POSITIVE_INFINITY, shape: 0 as CurveShape };
  for (const shape of [0, 1, 2] as const)
    for (let mid = 0.3 * p.span; mid <= 1.3 * p.span; mid += 1)
      for (let width = 0.2 * p.span; width <= 2 * p.span; width += 2) {
        const at = (t: number) => curve(shape, t, mid, width);
        const [from, to] = [at(0), at(p.span)];
        const rms = Math.sqrt(
          days.reduce((sum, t, i) => sum + ((at(t) - from) / (to - from) - (seen[i] as number)) ** 2, 0) / days.length,
        );
        if (rms < best.rms) best = { rms, shape };
      }
  return best;
}

describe('picking curves of strawberries as they were picked', () => {
  test.each(PICKED)('$season: one of the three curves comes within 4 % of the crop', (p) => {
    const { rms } = bestFit(p);
    assert.ok(rms < 0.04, `root mean square ${rms}`);
  });
  test('a curve of the wrong shape and place does not', () => {
    const p = PICKED[0];
    const share = (t: number) => p.w * pnorm((t - p.m1) / p.s1) + (1 - p.w) * pnorm((t - p.m2) / p.s2);
    const rms = Math.sqrt([20, 40, 60, 80, 100].reduce((sum, t) => sum + (curve(2, t, 30, 20) - share(t)) ** 2, 0) / 5);
    assert.ok(rms > 0.04);
  });
});

/**
 * Day of the year of full bloom of the cherries at Washington DC, 1921 to 2026 (US Environmental Protection Agency, Climate
 * Change Indicators: cherry blossoms; bloom set by the National Park Service). Bloom stands in for the middle of a season: the
 * longest open series of a fruit tree's dates there is.
 */
// biome-ignore format: a series
const BLOOM = [
  79, 97, 99, 104, 86, 101, 79, 99, 90, 91, 101, 106, 99, 105, 91, 98, 104, 84, 89, 104, 102, 95, 94, 100, 79, 82, 102, 88, 88, 99,
  96, 100, 86, 96, 92, 97, 98, 108, 96, 105, 92, 97, 93, 102, 105, 95, 96, 90, 99, 106, 98, 102, 101, 93, 93, 83, 85, 102, 92, 97,
  93, 97, 97, 94, 97, 92, 87, 91, 88, 74, 88, 98, 101, 95, 92, 95, 85, 86, 95, 77, 96, 92, 92, 91, 99, 89, 91, 86, 91, 90,
  88, 80, 99, 100, 100, 85, 84, 95, 91, 80, 87, 80, 82, 77, 87, 85,
];
const TREE: TableEntry = { expected: 40, cv: 0.4, mid: 95, midSd: 7, width: 10, failProb: 0.1, failShare: 0.25 };
const seasonOf = (day: number): PastSeason => ({ total: 40, expected: 40, t10: day - 5, t50: day, t90: day + 5 });

describe('a season’s middle from the ten seasons before it, 96 years of bloom', () => {
  const z = BLOOM.slice(10).map((day, i) => {
    const { mid } = learnPrior(TREE, BLOOM.slice(i, i + 10).map(seasonOf));
    return (day - mid.mean) / mid.sd;
  });
  // Three binomial standard errors at 96 years: 15, 12 and 7 points.
  test.each([0.5, 0.8, 0.95])('the band meant for %d of the years holds about that often', (band) => {
    const held = z.filter((x) => Math.abs(x) <= qnorm((1 + band) / 2)).length / z.length;
    const error = 3 * Math.sqrt((band * (1 - band)) / z.length);
    assert.ok(Math.abs(held - band) < error, `held ${held.toFixed(2)}`);
  });
  test('it misses by less than last year’s date does', () => {
    const misses = BLOOM.slice(10).map((day, i) => {
      const { mid } = learnPrior(TREE, BLOOM.slice(i, i + 10).map(seasonOf));
      return { learnt: Math.abs(day - mid.mean), last: Math.abs(day - (BLOOM[i + 9] as number)) };
    });
    const sum = (of: (m: (typeof misses)[number]) => number) => misses.reduce((total, m) => total + of(m), 0);
    assert.ok(sum((m) => m.learnt) < sum((m) => m.last));
  });
});

/**
 * Pounds a tree of a navel orange orchard, means of 195 plots of eight trees, 1924 to 1927 (Parker and Batchelor 1932, Hilgardia
 * 7(2):81-161). Four mature years of one orchard: a look, not a proof.
 */
describe('an orange orchard’s fourth year from the three before', () => {
  const [a, b, c, came] = [158.7, 141.4, 127.1, 170.5];
  const season = (total: number): PastSeason => ({ total, expected: 140, t10: 0, t50: 35, t90: 70 });
  const prior = learnPrior(
    { expected: 140, cv: 0.2, mid: 35, midSd: 8, width: 70, failProb: 0.05, failShare: 0.25 },
    [a, b, c].map(season),
  );
  test('lies in the band meant for 8 years of 10, and the band is narrower than without the three', () => {
    const ordinary = prior.total[0] as (typeof prior.total)[number];
    const spread = (cv: number) => Math.sqrt(Math.log(1 + cv ** 2));
    const middle = Math.log(ordinary.mean) - spread(ordinary.cv) ** 2 / 2;
    assert.ok(Math.abs(Math.log(came) - middle) < 1.2816 * spread(ordinary.cv));
    const bare = learnPrior(
      { expected: 140, cv: 0.2, mid: 35, midSd: 8, width: 70, failProb: 0.05, failShare: 0.25 },
      [],
    ).total[0] as (typeof prior.total)[number];
    assert.ok(ordinary.cv < bare.cv);
  });
});
