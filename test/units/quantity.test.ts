import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { celsius, grams } from '#lib/units/quantity.ts';

describe('a quantity', () => {
  it('is the number itself', () => assert.equal(grams(5) + celsius(-2), 3));

  it('must be a finite number', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      assert.throws(() => grams(bad), /finite number, got/);
  });
});
