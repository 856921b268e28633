import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { splitWhole } from '#lib/units/split.ts';

const weights = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 })
  .filter((w) => w.some((x) => x > 0));

describe('a whole split into whole parts', () => {
  it('loses nothing and gives each part its share to less than one', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5_000_000 }), weights, (total, w) => {
        const parts = splitWhole(total, w);
        assert.equal(parts.length, w.length);
        assert.equal(
          parts.reduce((a, b) => a + b, 0),
          total,
        );
        const sum = w.reduce((a, b) => a + b, 0);
        for (const [i, part] of parts.entries()) {
          assert.ok(Number.isInteger(part) && part >= 0);
          assert.ok(Math.abs(part - (total * (w[i] as number)) / sum) < 1 + 1e-6, `part ${i}: ${part}`);
        }
      }),
    ));

  it('gives nothing to a part without weight', () => assert.deepEqual(splitWhole(7, [0, 1, 0]), [0, 7, 0]));

  it('gives the odd one to the earlier of equal parts', () => {
    assert.deepEqual(splitWhole(3, [1, 1]), [2, 1]);
    assert.deepEqual(splitWhole(8, [1, 1, 1]), [3, 3, 2]);
  });

  it('refuses what is no whole, and weights that cannot share', () => {
    assert.throws(() => splitWhole(1.5, [1]), /got 1\.5/);
    for (const w of [[], [0, 0], [1, -1], [2, -1], [Number.NaN]]) assert.throws(() => splitWhole(1, w), /weights/);
  });
});
