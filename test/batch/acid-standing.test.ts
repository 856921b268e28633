import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { acidStanding } from '#lib/batch/acid-standing.ts';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import { GOOD_BUFFERS } from './gate-question.ts';

const standing = (recipeId: string, foodId: string, pH?: number) =>
  acidStanding({
    recipe: recipeOf(recipeId),
    fruit: [{ foodId, grams: 1000, grade: 'perfect' }],
    row: null,
    followsPublished: false,
    acidDoseGiven: true,
    reading: pH === undefined ? undefined : { pH, buffers: GOOD_BUFFERS },
  });

describe('acid standing, on its own', () => {
  it('stops white peach and dark elderberry whatever the meter says', () => {
    for (const food of [
      'peach-white',
      'elderberry-european',
      'elderberry-american',
      'melon',
      'persimmon-japanese',
      'tomato',
    ]) {
      assert.ok(standing('damson-jam', food, 3.5).stops.length > 0, food);
    }
  });
  it('holds mulberry to 4.2, not 4.6', () => {
    assert.deepEqual(standing('damson-jam', 'mulberry-black').needs, ['ph-reading']);
    assert.ok(standing('damson-jam', 'mulberry-black', 4.3).stops.length > 0);
    assert.deepEqual(standing('damson-jam', 'mulberry-black', 4.1).stops, []);
  });
  it('asks a reading for a provisional class A fruit no published row names, and none where one does', () => {
    assert.deepEqual(standing('damson-jam', 'orange-seville').needs, ['ph-reading']);
    assert.deepEqual(standing('damson-jam', 'damson').needs, []);
    assert.deepEqual(standing('damson-jam', 'gooseberry').needs, []);
  });
  it('warns for a plum of 4.4 and stops one of 4.61', () => {
    assert.ok(standing('plum-jam', 'plum-european', 4.4).cautions.length > 0);
    assert.deepEqual(standing('plum-jam', 'plum-european', 4.6).stops, []);
    assert.ok(standing('plum-jam', 'plum-european', 4.61).stops.length > 0);
  });
});
