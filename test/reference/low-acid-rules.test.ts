/** Extension guidance named on each row: Penn State and Missouri (tomato), Wisconsin and Maine (white peach), Oregon and Minnesota (elderberry). */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { fruitOf } from '#lib/reference/fruits.ts';
import { LOW_ACID_RULES, type LowAcidRule, lowAcidRuleOf } from '#lib/reference/low-acid-rules.ts';

const RULES: readonly LowAcidRule[] = LOW_ACID_RULES;

describe('low-acid rules', () => {
  it('are the 16 printed foods, in their order', () => {
    const order =
      'tomato fig pear-asian elderberry-dark elderberry-blue peach-white mango papaya banana persimmon melon coconut pumpkin-squash mulberry upper-range-watch pineapple';
    assert.equal(RULES.map((r) => r.id).join(' '), order);
  });

  it('name fruits that name the rule back', () => {
    for (const rule of RULES) for (const id of rule.fruitIds) assert.equal(fruitOf(id).lowAcidRule, rule.id, id);
  });

  it('forbid white peaches, and dark elderberries but for a weighed jam', () => {
    assert.equal(lowAcidRuleOf('peach-white').shelf, 'forbidden');
    assert.equal(lowAcidRuleOf('elderberry-dark').shelf, 'forbidden-except-tested-weighed-jam');
  });

  it('ask for acid with tomato, fig and Asian pear only, a meter with figs, a hot pack with Asian pears', () => {
    const withAcid = RULES.filter((r) => r.shelf === 'allowed-with-acid').map((r) => r.id);
    assert.deepEqual(withAcid, ['tomato', 'fig', 'pear-asian']);
    assert.deepEqual(
      RULES.filter((r) => r.meterRequired).map((r) => r.id),
      ['fig'],
    );
    assert.deepEqual(
      RULES.filter((r) => r.hotPackOnly).map((r) => r.id),
      ['pear-asian'],
    );
  });

  it('stop mulberries above pH 4.2 and watched fruit above 4.6', () => {
    assert.equal(lowAcidRuleOf('mulberry').stopAbovePH, 4.2);
    assert.equal(lowAcidRuleOf('upper-range-watch').warnAbovePH, 4.2);
    assert.equal(lowAcidRuleOf('upper-range-watch').stopAbovePH, 4.6);
  });

  it('refuse an unknown rule', () => {
    assert.throws(() => lowAcidRuleOf('apple'), RangeError);
  });
});
