import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { hoursToRatio, kappaFromWeighing, moistureRatio, rateAt } from '#lib/science/page-drying.ts';
import { bisection } from '#lib/science/root.ts';
import { celsius } from '#lib/units/quantity.ts';

/**
 * Apple slices, 6 mm, 50 °C, 1.1 m/s: hours from the first reading and grams of a 1000 g load with 134.6 g dry matter, read
 * from a digitised figure of Royen, Noori & Haydary 2020, Processes 8:1562.
 */
const ROYEN = [
  [0.5, 882.2],
  [0.842, 806.7],
  [1, 772.9],
  [1.404, 689.3],
  [1.5, 671],
  [1.685, 639.5],
  [2, 583],
  [2.808, 461.9],
  [3, 434.5],
  [4, 316.6],
  [4.211, 299.8],
  [5, 237.2],
] as const;

describe("Page's curve", () => {
  it('with κ 0.361 and n 1.229 follows the published apple run to 0.02 in the moisture ratio', () => {
    const squares = ROYEN.map(([hours, g]) => {
      const seen = (g - 134.6) / (1000 - 134.6);
      return (moistureRatio({ kappa: 0.361, n: 1.229 }, hours) - seen) ** 2;
    });
    const rms = Math.sqrt(squares.reduce((sum, s) => sum + s, 0) / squares.length);
    assert.ok(rms < 0.02, `${rms}`);
  });

  it('read backwards gives the hours, as halving does', () => {
    const rate = { kappa: 0.35, n: 1.3 };
    for (const ratio of [0.9, 0.5, 0.1, 0.02]) {
      const halved = bisection((h) => moistureRatio(rate, h) - ratio, { low: 0, high: 100 });
      assert.ok(Math.abs(hoursToRatio(rate, ratio) - halved) < 1e-7);
      assert.ok(Math.abs(kappaFromWeighing(1.3, halved, ratio) - 0.35) < 1e-8);
    }
    assert.equal(hoursToRatio(rate, 1.2), 0);
  });

  it('is the same at 60 °C and faster above', () => {
    const rate = { kappa: 0.35, n: 1.3 };
    assert.equal(rateAt(rate, celsius(60), 'fruit').kappa, 0.35);
    assert.ok(rateAt(rate, celsius(63), 'fruit').kappa > 0.35);
    assert.ok(rateAt(rate, celsius(50), 'herb').kappa < rateAt(rate, celsius(50), 'peel').kappa);
  });

  it('refuses what the air cannot do, and a weighing that tells nothing', () => {
    assert.throws(() => hoursToRatio({ kappa: 0.35, n: 1.3 }, 0), /cannot/);
    assert.throws(() => kappaFromWeighing(1.3, 0, 0.5), RangeError);
    assert.throws(() => kappaFromWeighing(1.3, 2, 1), RangeError);
  });
});
