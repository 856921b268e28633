import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { demandOf } from '#lib/forecast/demand-until.ts';
import { jarTarget, leftAndUnmet } from '#lib/forecast/jar-target.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

const use = (mean: number, size: number | null) => demandOf(mean, mean + (size ? mean ** 2 / size : 0));

describe('jars worth having', () => {
  test.each(vectors.newsvendor)('mean $meanUse, size $size, short $costShort to left $costLeft: $q jars', (v) => {
    const got = jarTarget(use(v.meanUse, v.size), { short: v.costShort, left: v.costLeft });
    assert.equal(got.jars, v.q);
    assert.ok(Math.abs(got.expectedLeft - v.eLeft) < 1e-7);
    assert.ok(Math.abs(got.expectedUnmet - v.eUnmet) < 1e-7);
    assert.ok(Math.abs(got.expectedCost - v.eCost) < 1e-7);
  });

  test('expected jars left and wanted in vain', () => {
    for (const v of vectors.leftover) {
      const got = leftAndUnmet(use(v.meanUse, null), v.jars);
      assert.ok(Math.abs(got.expectedLeft - v.eLeft) < 1e-7 && Math.abs(got.expectedUnmet - v.eUnmet) < 1e-7);
    }
  });

  test('one jar more or fewer costs no less', () => {
    const wanted = use(12, 9);
    const cost = (q: number) => leftAndUnmet(wanted, q).expectedLeft + 3 * leftAndUnmet(wanted, q).expectedUnmet;
    const best = jarTarget(wanted, { short: 3, left: 1 });
    assert.ok(cost(best.jars) <= cost(best.jars - 1) && cost(best.jars) <= cost(best.jars + 1));
  });
});
