import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { DRYER_STARTS, dryerStartOf, startRate } from '#lib/science/dryer-start.ts';
import { dryBasis } from '#lib/science/gab-isotherm.ts';
import { hoursToRatio } from '#lib/science/page-drying.ts';

describe('the first guess of a dryer', () => {
  it('reaches its target in the geometric middle of the printed hours', () => {
    for (const row of DRYER_STARTS) {
      const hours = hoursToRatio(startRate(row), dryBasis(row.wt) / dryBasis(row.w0));
      assert.ok(Math.abs(hours - Math.sqrt(row.hours[0] * row.hours[1])) < 1e-9, row.id);
    }
  });

  it('is 0.350 per hour for apple slices and 0.498 for peel and core', () => {
    assert.equal(startRate(dryerStartOf('apple-slices')).kappa.toFixed(3), '0.350');
    assert.equal(startRate(dryerStartOf('apple-peel-core')).kappa.toFixed(3), '0.498');
  });

  it('is refused for a product without one', () => {
    assert.throws(() => dryerStartOf('banana'), RangeError);
  });
});
