import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { cumulativeDemand, demandOf, demandUntil } from '#lib/forecast/demand-until.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('use over a stretch of weeks', () => {
  test.each(vectors.runout)('$name: chance of an empty shelf and of a jar wanted in vain', (v) => {
    for (const at of v.points) {
      const use = demandUntil({
        usePerWeek: v.usePerWeek,
        weeks: at.afterWeeks,
        dispersion: v.dispersion,
        rateCv: v.rateCv,
      });
      const cdf = cumulativeDemand(use, v.jars);
      assert.ok(Math.abs(1 - (cdf[v.jars - 1] as number) - at.pEmpty) < 1e-8, `empty after ${at.afterWeeks}`);
      assert.ok(Math.abs(1 - (cdf[v.jars] as number) - at.pUnmet) < 1e-8, `unmet after ${at.afterWeeks}`);
    }
  });

  test('has the mean and variance asked for', () => {
    for (const [mean, variance] of [
      [3, 3],
      [30, 86.25],
      [0.4, 0.9],
    ] as const) {
      const use = demandOf(mean, variance);
      let [m, s] = [0, 0];
      for (let k = 0; k < 600; k++) {
        m += k * use.pmf(k);
        s += k * k * use.pmf(k);
      }
      assert.ok(Math.abs(m - mean) < 1e-9 && Math.abs(s - m * m - variance) < 1e-7);
    }
  });

  test('nothing used means nothing wanted', () => assert.equal(demandOf(0, 0).pmf(0), 1));
});
