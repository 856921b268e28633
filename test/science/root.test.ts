import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { bisection, brent } from '#lib/science/root.ts';

describe('a root', () => {
  it('of x³ - 2x - 5, the equation Newton solved in 1669, is 2.0945514815', () => {
    const f = (x: number): number => x ** 3 - 2 * x - 5;
    assert.ok(Math.abs(brent(f, { low: 2, high: 3 }) - 2.0945514815423265) < 1e-10);
    assert.ok(Math.abs(bisection(f, { low: 2, high: 3 }) - 2.0945514815423265) < 1e-9);
  });

  it('of cos x - x is the Dottie number', () => {
    assert.ok(Math.abs(brent((x) => Math.cos(x) - x, { low: 0, high: 1 }) - 0.7390851332151607) < 1e-10);
  });

  it('is the same by both methods on any rising cubic', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (at, slope) => {
          const f = (x: number): number => (x - at) ** 3 + slope * (x - at);
          const bracket = { low: -4, high: 4 };
          assert.ok(Math.abs(brent(f, bracket) - bisection(f, bracket)) < 1e-8);
          assert.ok(Math.abs(brent(f, bracket) - at) < 1e-8);
        },
      ),
    );
  });

  it('is found at an end of the bracket', () => {
    assert.equal(
      brent((x) => x, { low: 0, high: 1 }),
      0,
    );
    assert.ok(Math.abs(bisection((x) => x - 1, { low: 0, high: 1 }) - 1) < 1e-9);
  });

  it('is refused without a change of sign', () => {
    assert.throws(() => brent((x) => x * x + 1, { low: -1, high: 1 }), RangeError);
    assert.throws(() => bisection((x) => x * x + 1, { low: -1, high: 1 }), RangeError);
    assert.throws(() => brent(() => Number.NaN, { low: 0, high: 1 }), RangeError);
  });
});
