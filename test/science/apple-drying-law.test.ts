import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { appleDryingHours, appleRate, mouldWatch } from '#lib/science/apple-drying-law.ts';
import { moistureRatio } from '#lib/science/page-drying.ts';
import { celsius } from '#lib/units/quantity.ts';

const air = (t: number, humidity: number, metresPerSecond: number) => ({ t: celsius(t), humidity, metresPerSecond });

describe('the drying law of apple slices', () => {
  it('has a fifth of the water left after 264 min at its reference, 50 °C and 6 mm', () => {
    assert.ok(Math.abs(moistureRatio(appleRate(air(50, 0.425, 1.1), 6), 264 / 60) - 0.2) < 2e-3);
  });

  it('gives the thin-layer and windowsill hours worked elsewhere', () => {
    const cases = [
      [air(57, 0.06, 1), 3, 0.2, 1.85],
      [air(57, 0.06, 1), 6, 0.08, 3.69],
      [air(60, 0.055, 0.5), 6, 0.2, 3.37],
      [air(22, 0.45, 0.1), 3, 0.15, 55.8],
      [air(20, 0.6, 0.1), 6, 0.2, 126],
      [air(25, 0.4, 0.2), 6, 0.15, 50.7],
    ] as const;
    for (const [at, mm, target, hours] of cases) {
      const own = appleDryingHours(at, { mm, target }) ?? 0;
      assert.ok(Math.abs(own / hours - 1) < 0.005, `${own} against ${hours}`);
    }
  });

  it('never gets there where the air is too damp', () => {
    assert.equal(appleDryingHours(air(20, 0.6, 0.1), { mm: 6, target: 0.15 }), null);
    assert.equal(appleDryingHours(air(18, 0.7, 0.1), { mm: 6, target: 0.2 }), null);
  });

  it('asks for a look at mould in a damp warm room and not in a dryer', () => {
    assert.equal(mouldWatch(air(24, 0.7, 0.1), 9), true);
    assert.equal(mouldWatch(air(57, 0.06, 1), 9), false);
    assert.equal(mouldWatch(air(18, 0.7, 0.1), 9), false);
  });

  it('refuses still air and slices of no thickness', () => {
    assert.throws(() => appleRate(air(50, 0.4, 0), 6), RangeError);
    assert.throws(() => appleRate(air(50, 0.4, 1), 0), RangeError);
  });
});
