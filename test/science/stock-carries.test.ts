import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { stockCarries } from '#lib/science/stock-carries.ts';

describe('a home pectin stock', () => {
  it('carries by its alcohol test: 500 g of several lumps, 0.4 to 0.8 % pectin of grade 130, 260 to 520 g of sugar', () => {
    const { low, typ, high } = stockCarries({ grams: 500, clot: 'medium' });
    assert.deepEqual([Math.round(low), Math.round(typ), Math.round(high)], [260, 390, 520]);
  });

  it('that nobody tested has the widest band, around several lumps', () => {
    const untested = stockCarries({ grams: 500, clot: 'untested' });
    const several = stockCarries({ grams: 500, clot: 'medium' });
    assert.equal(untested.typ, several.typ);
    assert.ok(untested.low < several.low && untested.high > several.high);
  });

  it('is refused for a result the test does not have', () => {
    assert.throws(() => stockCarries({ grams: 1, clot: 'jelly' as 'low' }), RangeError);
  });
});
