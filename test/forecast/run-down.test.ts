import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { Sfc32 } from '#lib/forecast/random.ts';
import { batchesFor, leftBand, oddsByBatches, usedBy } from '#lib/forecast/run-down.ts';

describe('how a line runs down', () => {
  test('39 pints, 25 a year, 33.3 weeks: 16 used, 23 left; 66 quarts, 32 a year, 39.4 weeks: 42 left', () => {
    const year = (perYear: number) => ({ perYear, sold: 0, stallWeeks: 0 });
    assert.equal(Math.round(usedBy(year(25), 33.3, 0)), 16);
    assert.equal(Math.round(39 - usedBy(year(25), 33.3, 0)), 23);
    assert.equal(Math.round(66 - usedBy(year(32), 39.4, 0)), 42);
  });
  test('a line of the stall is sold in its weeks only', () => {
    assert.equal(usedBy({ perYear: 0, sold: 20, stallWeeks: 40 }, 20, 8), 4);
    assert.equal(usedBy({ perYear: 26, sold: 20, stallWeeks: 40 }, 20, 0), 10);
  });
  test('a rate known exactly and Poisson: quantiles of onHand - Poisson(6), by the printed table of the Poisson law', () => {
    // P(X <= 2) = 0.0620, P(X <= 3) = 0.1512, P(X <= 5) = 0.4457, P(X <= 6) = 0.6063, P(X <= 8) = 0.8472, P(X <= 9) = 0.9161.
    const left = leftBand(20, { usePerWeek: 0.5, rateCv: 0, dispersion: 1 }, 12);
    assert.deepEqual(left, { p10: 11, p50: 14, p90: 17 });
  });
});

describe('odds by batches', () => {
  const q = {
    onHand: 8,
    use: { usePerWeek: 0.4, rateCv: 0.3, dispersion: 1.6 },
    weeksBefore: 24,
    weeksAfter: 52,
    jarsPerBatch: 7,
    mostBatches: 6,
  };
  test('agree with seasons played jar by jar, within 4 standard errors', () => {
    const n = 20_000;
    const rng = new Sfc32(77);
    const lasted = Array<number>(q.mostBatches + 1).fill(0);
    const wanted = (mean: number) => (mean > 0 ? rng.poisson((rng.gamma(mean / 0.6) * 0.6) as number) : 0); // negative binomial, variance 1.6 x mean
    for (let s = 0; s < n; s++) {
      const rate = (q.use.usePerWeek * rng.gamma(1 / 0.09)) / (1 / 0.09);
      const left = Math.max(0, q.onHand - wanted(rate * q.weeksBefore));
      const after = wanted(rate * q.weeksAfter);
      for (let k = 0; k <= q.mostBatches; k++) if (left + 7 * k >= after) lasted[k] = (lasted[k] as number) + 1;
    }
    oddsByBatches(q).forEach((p, k) => {
      const share = (lasted[k] as number) / n;
      const error = 4 * Math.sqrt((p * (1 - p)) / n) + 0.005;
      assert.ok(Math.abs(p - share) < error, `${k} batches: ${p} against ${share}`);
    });
  });
  test('rise with every batch, and the fewest that reach 9 in 10 are found', () => {
    const odds = oddsByBatches(q);
    for (const [k, p] of odds.entries()) assert.ok(k === 0 || p >= (odds[k - 1] as number));
    const k = batchesFor(odds, 0.9) as number;
    assert.ok((odds[k] as number) >= 0.9 && (odds[k - 1] as number) < 0.9);
    assert.equal(batchesFor([0.1, 0.5], 0.9), null);
  });
});
