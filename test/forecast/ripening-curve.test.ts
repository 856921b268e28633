import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { type CurveShape, curve } from '#lib/forecast/ripening-curve.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('ripening curve', () => {
  test('gives the reference shares', () => {
    for (const v of vectors.curve) {
      const got = curve(v.shape as CurveShape, v.t, v.mid, v.width);
      assert.ok(Math.abs(got - v.F) < 1e-9, `shape ${v.shape}, day ${v.t}: ${got}, not ${v.F}`);
    }
  });

  test('every shape has half on the mid-date, rises, and takes `width` days from 10 % to 90 %', () => {
    const dayOf = (shape: CurveShape, share: number, width: number): number => {
      let [low, high] = [-10 * width, 10 * width];
      for (let i = 0; i < 80; i++) {
        const t = (low + high) / 2;
        if (curve(shape, t, 0, width) < share) low = t;
        else high = t;
      }
      return low;
    };
    fc.assert(
      fc.property(
        fc.constantFrom<CurveShape>(0, 1, 2),
        fc.double({ min: 1, max: 120, noNaN: true }),
        (shape, width) => {
          assert.ok(Math.abs(curve(shape, 0, 0, width) - 0.5) < 1e-12);
          assert.ok(curve(shape, 1, 0, width) > curve(shape, 0, 0, width));
          assert.ok(Math.abs(dayOf(shape, 0.9, width) - dayOf(shape, 0.1, width) - width) < 1e-6 * width);
        },
      ),
    );
  });
});
