import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { batchSheet } from '#lib/batch/batch-sheet.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { homeBatch } from './home-kitchen.ts';

const setOf = (id: string, foodId: string, grade: 'perfect' | 'soft' = 'perfect', more = {}) =>
  batchSheet(homeBatch(id, [{ foodId, grams: 1300, grade, prepared: true }], more)).set;

describe('the set outlook of a batch', () => {
  it('names nothing while its band reaches to both sides of enough', () => {
    assert.equal(setOf('damson-jam', 'damson')?.outlook, 'open');
    assert.equal(setOf('sour-cherry-jam', 'cherry-sour')?.outlook, 'soft');
  });
  it('falls with soft fruit and rises with powder and with a strength learnt to be higher', () => {
    const ratio = (set: ReturnType<typeof setOf>): number => set?.ratio?.value ?? 0;
    assert.ok(ratio(setOf('damson-jam', 'damson', 'soft')) < ratio(setOf('damson-jam', 'damson')));
    const plain = ratio(setOf('sour-cherry-jam', 'cherry-sour'));
    const powder = ratio(setOf('sour-cherry-powder-jam', 'cherry-sour'));
    const known = {
      item: 'apple-powder',
      code: 'S-1',
      grams: 500,
      word: 'learnt',
      sugarPerG: { low: 8, typ: 9, high: 10 },
    };
    const strong = ratio(setOf('sour-cherry-powder-jam', 'cherry-sour', 'perfect', { homePectin: [known] }));
    assert.ok(plain < powder && powder < strong);
  });
  it('leaves bought pectin to its own printed amounts, and says nothing of what is not meant to set', () => {
    assert.equal(setOf('strawberry-bought-pectin-jam', 'strawberry'), null);
    assert.equal(setOf('apple-butter', 'apple-cooking'), null);
  });
  it('runs low, as its reason says: four of the five published jellies come out short of the need', () => {
    const jellies = RECIPES.filter((r) => r.kind === 'jelly' && r.origin.standing === 'published');
    const sets = jellies.map((r) => setOf(r.id, r.fruits[0]?.foodIds[0] as string));
    assert.equal(sets.length, 5);
    assert.equal(sets.filter((set) => (set?.ratio?.value ?? 0) < 1).length, 4);
    assert.ok(sets.every((set) => set?.reasons.some((text) => text.includes('run low'))));
  });
});
