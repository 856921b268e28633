/** Fresh moistures read again beside their rows: orange rind 72.5 %, apple without skin 86.67 %, quince 83.8 % (USDA SR26). */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { SET_ASIDE_MATERIALS, setAsideMaterial, trimMaterial, ZEST_SHARE } from '#lib/reference/set-aside-materials.ts';
import { dryerStartOf } from '#lib/science/dryer-start.ts';

describe('what may be set aside', () => {
  it('dries from its fresh water to less, by a row of the dryer table, in letters of its own', () => {
    for (const m of SET_ASIDE_MATERIALS) {
      assert.ok(m.wt < m.w0 && m.kgPerM2[0] < m.kgPerM2[1], m.id);
      assert.equal(dryerStartOf(m.dryer).wt, m.wt, m.id);
      assert.match(m.letters, /^[A-Z]{3}$/);
    }
    assert.equal(new Set(SET_ASIDE_MATERIALS.map((m) => m.letters)).size, SET_ASIDE_MATERIALS.length);
  });

  it('has the printed moistures', () => {
    assert.equal(setAsideMaterial('citrus-rind').w0, 0.725);
    assert.equal(setAsideMaterial('apple-rings').w0, 0.8667);
    assert.equal(setAsideMaterial('quince-peel-core').w0, 0.838);
    assert.ok(ZEST_SHARE.low < ZEST_SHARE.high && ZEST_SHARE.high < ZEST_SHARE.doubtful);
    assert.throws(() => setAsideMaterial('straw'), RangeError);
  });

  it('is known of a batch by its recipe, and of quince alone', () => {
    assert.equal(trimMaterial(['apple-peel-core'], ['apple-dessert'])?.id, 'apple-peel-core');
    assert.equal(trimMaterial([], ['quince', 'quince'])?.id, 'quince-peel-core');
    assert.equal(trimMaterial([], ['quince', 'apple-cooking']), undefined);
    assert.equal(trimMaterial(['stones'], ['damson']), undefined);
    assert.equal(trimMaterial([], []), undefined);
  });
});
