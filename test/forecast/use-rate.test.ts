import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { key, Sfc32 } from '#lib/forecast/random.ts';
import { learnUse, learnUseFromSums } from '#lib/forecast/use-rate.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('use rate', () => {
  test('gives the reference figures to the digits printed', () => {
    for (const v of vectors.useRate) {
      const got = learnUseFromSums(v, v.prior);
      for (const k of ['usePerWeek', 'rateCv', 'dispersion'] as const)
        assert.ok(Math.abs(got[k] - v[k]) < 1e-8, `${k}: ${got[k]} is not ${v[k]}`);
    }
  });

  test('counts and their sums say the same', () => {
    const counts = [0, 2, 1, 0, 0, 4, 1];
    const mean = 8 / 7;
    const sums = { weeks: 7, jars: 8, sumSquaredDeviations: counts.reduce((s, x) => s + (x - mean) ** 2, 0) };
    assert.deepEqual(learnUse(counts, { mean: 0.6 }), learnUseFromSums(sums, { mean: 0.6 }));
  });

  test('two years of a household are found again, rate and lumpiness', () => {
    const rng = new Sfc32(key(9, 4));
    // Twice a Poisson count of half the mean: mean 1.2, variance 2 x mean.
    const counts = Array.from({ length: 5200 }, () => 2 * rng.poisson(0.6));
    const got = learnUse(counts, { mean: 0.3 });
    assert.ok(Math.abs(got.usePerWeek - 1.2) < 4.5 * Math.sqrt(2.4 / 5200));
    assert.ok(Math.abs(got.dispersion - 2) < 0.15);
  });
});
