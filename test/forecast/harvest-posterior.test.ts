import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import type { CropPrior } from '#lib/forecast/crop-prior.ts';
import { HarvestPosterior, type PickRecord } from '#lib/forecast/harvest-posterior.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { key, Sfc32 } from '#lib/forecast/random.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

const near = (got: number, want: number, relative: number, what = ''): void =>
  assert.ok(Math.abs(got - want) <= relative * Math.abs(want), `${what}: ${got} is not ${want}`);

const GRID_PRIOR = vectors.harvestGrid.prior as unknown as CropPrior;
interface Case {
  name: string;
  records: PickRecord[];
  eye: { kg: number; cv: number } | null;
  expect: Record<string, number>;
}
const CASES = vectors.harvestGrid.cases as unknown as Case[];
const learned = (prior: CropPrior, c: Pick<Case, 'records' | 'eye'>): HarvestPosterior => {
  const post = new HarvestPosterior(prior);
  if (c.eye) post.eyeEstimate(c.eye.kg, c.eye.cv);
  for (const r of c.records) post.update(r);
  return post;
};
const far = Array.from({ length: 30 }, (_, i) => 195 + 7 * i);

describe('harvest posterior, one cell', () => {
  const v = vectors.harvestSingle;
  const post = new HarvestPosterior(v.prior as unknown as CropPrior, { nMid: 1, nWidth: 1 });
  for (const r of v.records) post.update(r);

  test('equals the closed form of one inverse gamma', () => {
    near(post.means().total, v.postTotalMean, 1e-6);
    near(post.means().remaining, v.remainingMean, 1e-6);
    near(post.means().share, v.share, 1e-6);
  });

  test('sampled quantiles are those of the beta-prime law, within Monte Carlo error', () => {
    const n = 100_000;
    const { remaining } = post.sample(n, [230, 300], new Sfc32(key(3, 1)));
    remaining.sort();
    // sd of a sample quantile = sqrt(p(1-p)/n)/density; densities read from the reference run's own se at N = 40,000.
    const se = [0.0148, 0.0173, 0.0356];
    [v.remainingP10, v.remainingP50, v.remainingP90].forEach((want, i) => {
      const got = quantileSorted(remaining, [0.1, 0.5, 0.9][i] as number);
      assert.ok(Math.abs(got - want) < 4.5 * (se[i] as number), `${got} is not ${want}`);
    });
  });
});

describe('harvest posterior on the full grid', () => {
  test.each(CASES)('$name: means are those of the independent implementation', (c) => {
    const m = learned(GRID_PRIOR, c).means();
    near(m.remaining, c.expect.remaining as number, 2e-6, 'remaining');
    near(m.total, c.expect.total as number, 2e-6, 'total');
    near(m.mid, c.expect.mid as number, 2e-6, 'mid-date');
    near(m.midSd, c.expect.midSd as number, 2e-6, 'sd of the mid-date');
    assert.ok(Math.abs((m.pComponent[1] as number) - (c.expect.pFailed as number)) < 1e-7, 'failed year');
  });

  test.each(CASES)('$name: sampled mean is the closed-form mean and P10, P50, P90 are within 2.5 %', (c) => {
    const post = learned(GRID_PRIOR, c);
    const n = 40_000;
    const { remaining, paths, cols } = post.sample(n, far, new Sfc32(key(17, 2)));
    const mean = remaining.reduce((s, x) => s + x, 0) / n;
    const sd = Math.sqrt(remaining.reduce((s, x) => s + (x - mean) ** 2, 0) / (n - 1));
    const expected = post.means().remaining;
    // A skipped sliver is at most 0.0004 of the crop.
    assert.ok(Math.abs(mean - expected) < (4.5 * sd) / Math.sqrt(n) + 0.0004 * expected, `${mean} is not ${expected}`);
    const path = post.meanPath(far);
    near(
      path.reduce((s, x) => s + x, 0),
      expected,
      1e-9,
      'mean path',
    );
    for (let j = 0; j < cols; j++) {
      let [sum, square] = [0, 0];
      for (let i = 0; i < n; i++) {
        const x = paths[i * cols + j] as number;
        sum += x;
        square += x * x;
      }
      const se = Math.sqrt(Math.max(0, square / n - (sum / n) ** 2) / n);
      assert.ok(Math.abs(sum / n - (path[j] as number)) < 4.5 * se + 0.002 * expected, `column ${j}`);
    }
    remaining.sort();
    near(quantileSorted(remaining, 0.1), c.expect.p10approx as number, 0.045, 'P10');
    near(quantileSorted(remaining, 0.5), c.expect.p50approx as number, 0.025, 'P50');
    near(quantileSorted(remaining, 0.9), c.expect.p90approx as number, 0.025, 'P90');
  });

  test('two looks with nothing ripe hardly raise the weight of a failed year: the bound stays below 1', () => {
    const post = learned(GRID_PRIOR, CASES[1] as Case);
    for (let t = 221; t < 226; t++) post.update({ t, kg: 0 });
    assert.ok((post.means().pComponent[1] as number) < 0.2);
  });

  test('records and prior, weighted as shown to the user, give the expected total exactly', () => {
    for (const c of CASES.filter((x) => x.records.length > 0 || x.eye)) {
      const post = learned(GRID_PRIOR, c);
      const e = post.evidence();
      assert.ok(e.recordsWeight > 0 && e.recordsWeight < 1);
      near(e.recordsWeight * e.recordsSay + (1 - e.recordsWeight) * e.priorSays, post.means().total, 1e-12, c.name);
    }
    assert.equal(new HarvestPosterior(GRID_PRIOR).evidence().recordsWeight, 0);
  });

  test('with the clock known, two picks entered as one sum say the same', () => {
    const known: CropPrior = {
      ...GRID_PRIOR,
      total: [{ weight: 1, mean: 40, cv: 0.5 }],
      shapes: [0, 1, 0],
      kappa: { values: [25], weights: [1] },
    };
    const remaining = (records: PickRecord[]) => {
      const post = new HarvestPosterior(known, { nMid: 1, nWidth: 1 });
      for (const r of records) post.update(r);
      return post.means().remaining;
    };
    near(
      remaining([
        { t: 225, kg: 4 },
        { t: 228, kg: 5 },
      ]),
      remaining([{ t: 228, kg: 9 }]),
      1e-12,
    );
  });

  test('a narrower estimate by eye pulls harder', () => {
    const wide = new HarvestPosterior(GRID_PRIOR).eyeEstimate(80, 0.6).means().total;
    const narrow = new HarvestPosterior(GRID_PRIOR).eyeEstimate(80, 0.1).means().total;
    assert.ok(37 < wide && wide < narrow && narrow < 80);
  });

  test('a negative pick and an estimate without spread are refused', () => {
    assert.throws(() => new HarvestPosterior(GRID_PRIOR).update({ t: 220, kg: -1 }), RangeError);
    assert.throws(() => new HarvestPosterior(GRID_PRIOR).eyeEstimate(10, 0), RangeError);
  });
});
