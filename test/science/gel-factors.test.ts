import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { acidityFactor, cookFactor, highestGellingPh, solidsFactor } from '#lib/science/gel-factors.ts';

describe('the acidity factor', () => {
  it('squared follows Olsen: strength 36.5, 67 and 115 of 115 at pH 3.13, 2.88, 2.40 and 60 %', () => {
    for (const [pH, strength] of [
      [3.13, 36.5],
      [2.88, 67],
      [2.4, 115],
    ] as const) {
      assert.ok(Math.abs(acidityFactor({ pH, solidsPct: 60 }) ** 2 - strength / 115) < 0.01, `pH ${pH}`);
    }
    assert.equal(acidityFactor({ pH: 3.27, solidsPct: 60 }), 0);
  });

  it('never rises with the pH', () => {
    for (let pH = 2; pH < 4; pH += 0.01) {
      assert.ok(acidityFactor({ pH: pH + 0.01, solidsPct: 65 }) <= acidityFactor({ pH, solidsPct: 65 }) + 1e-12);
    }
    assert.equal(acidityFactor({ pH: 1.5, solidsPct: 65 }), 1);
  });

  it('ends at pH 3.46 for 65 % (Tarr, from memory)', () => {
    assert.equal(highestGellingPh(65).toFixed(2), '3.46');
  });
});

describe('the solids factor', () => {
  it('is nothing at 50 % and all at 65 % for high-sugar pectin', () => {
    assert.deepEqual(
      [45, 50, 57.5, 65, 70].map((s) => solidsFactor(s, 'HM')),
      [0, 0, 0.5, 1, 1],
    );
  });

  it('is all from 20 to 60 % for low-sugar pectin', () => {
    assert.deepEqual(
      [10, 20, 40, 60, 65].map((s) => solidsFactor(s, 'LM')),
      [0, 1, 1, 1, 0],
    );
  });
});

describe('the cook factor', () => {
  /** Lowe, Experimental Cookery: minutes boiled with acid, jelly strength at the top and bottom of the glass. */
  const MINUTES = [0, 1, 2, 3, 4, 6, 8, 10, 11.3, 12];
  const TOP = [61.5, 58, 58.5, 57.5, 55.5, 49.5, 44, 41, 39.5, 33.5];
  const BOTTOM = [79.5, 77.5, 76.5, 73, 70.5, 67.5, 62, 58.5, 54.5, 49];

  function slope(strength: readonly number[]): number {
    const logs = strength.map(Math.log);
    const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;
    const [mx, my] = [mean(MINUTES), mean(logs)];
    const sxy = MINUTES.reduce((sum, x, i) => sum + (x - mx) * ((logs[i] as number) - my), 0);
    return sxy / MINUTES.reduce((sum, x) => sum + (x - mx) ** 2, 0);
  }

  it("lies between the slopes of Lowe's two series, to which it was fitted", () => {
    const perMinute = -Math.log(cookFactor({ beforeSugarMin: 1, afterSugarMin: 0 }));
    assert.ok(perMinute < -slope(TOP) && perMinute > -slope(BOTTOM), `${perMinute}`);
    assert.equal(slope(TOP).toFixed(4), '-0.0461');
    assert.equal(slope(BOTTOM).toFixed(4), '-0.0366');
  });

  it('halves the strength in 15 to 20 minutes with acid', () => {
    const half = Math.LN2 / 0.041;
    assert.ok(half > 15 && half < 20);
    assert.ok(Math.abs(cookFactor({ beforeSugarMin: half, afterSugarMin: 0 }) - 0.5) < 1e-9);
  });
});
