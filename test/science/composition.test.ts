import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { brixOf, dissolvedG, massOf, syrup } from '#lib/science/composition.ts';

describe('a composition', () => {
  it('made as a syrup weighs 100 g and reads its own °Bx', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 90, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (b, i) => {
        assert.ok(Math.abs(massOf(syrup(b, i)) - 100) < 1e-9);
        assert.ok(Math.abs(brixOf(syrup(b, i)) - b) < 1e-9);
      }),
    );
  });

  it('counts pulp in its mass and not in its °Bx', () => {
    const jam = { ...syrup(65, 0), insoluble: 2 };
    assert.equal(massOf(jam), 102);
    assert.equal(brixOf(jam), 65);
  });

  it('counts acid and pectin in its °Bx', () => {
    assert.equal(dissolvedG({ ...syrup(60, 0), citric: 1, malic: 1, tartaric: 1, polymer: 2 }), 65);
  });

  it('refuses what is no syrup', () => {
    assert.throws(() => syrup(100, 0), RangeError);
    assert.throws(() => syrup(-1, 0), RangeError);
    assert.throws(() => syrup(60, 1.1), RangeError);
  });
});
