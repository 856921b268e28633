import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUITS } from '#lib/reference/fruits.ts';
import { ACIDITY_VERDICTS, acidityVerdict } from '#lib/science/acidity-verdict.ts';

const alone = (fruitId: string, measuredPH?: number) =>
  acidityVerdict({ fruits: [{ fruitId, share: 1 }], ...(measuredPH === undefined ? {} : { measuredPH }) });

describe('the acidity verdict', () => {
  it('calls a sourced class A fruit high-acid and a provisional one not yet', () => {
    assert.equal(alone('cherry-sour'), 'high-acid');
    assert.equal(alone('damson'), 'tested-dose-only');
  });

  it('asks a meter for figs and Asian pears, and turns away white peach and dark elderberry', () => {
    assert.equal(alone('fig'), 'meter-required');
    assert.equal(alone('pear-asian'), 'meter-required');
    assert.equal(alone('peach-white'), 'not-for-boiling-water');
    assert.equal(alone('elderberry-european'), 'not-for-boiling-water');
  });

  it('turns anything measured above 4.6 away', () => {
    assert.equal(alone('cranberry', 4.61), 'not-for-boiling-water');
    assert.equal(alone('cranberry', 4.6), 'high-acid');
  });

  it('is never made milder by a low reading', () => {
    for (const { id } of FRUITS) {
      assert.ok(ACIDITY_VERDICTS.indexOf(alone(id, 3)) >= ACIDITY_VERDICTS.indexOf(alone(id)), id);
    }
  });

  it('of a mixture is never milder than that of its main fruit, and a tenth of melon does not need a meter', () => {
    for (const { id } of FRUITS) {
      const mixed = acidityVerdict({
        fruits: [
          { fruitId: id, share: 0.9 },
          { fruitId: 'cranberry', share: 0.1 },
        ],
      });
      assert.equal(mixed, alone(id));
    }
    const little = acidityVerdict({
      fruits: [
        { fruitId: 'cranberry', share: 0.9 },
        { fruitId: 'melon', share: 0.1 },
      ],
    });
    assert.equal(little, 'tested-dose-only');
  });

  it('calls no fruit high-acid whose published pH passes 4.1', () => {
    for (const fruit of FRUITS) if (alone(fruit.id) === 'high-acid') assert.ok(fruit.pH.high <= 4.1, fruit.id);
  });

  it('needs a fruit, and one of the table', () => {
    assert.throws(() => acidityVerdict({ fruits: [] }), RangeError);
    assert.throws(() => alone('banana'), RangeError);
  });
});
