import { expect, test } from 'vitest';
import { ownDoubts } from '#lib/reference/recipes/own-doubts.ts';
import { figuresOf } from '#lib/reference/recipes/own-recipe.ts';
import { RECIPES, recipeOf } from '#lib/reference/recipes/recipe-book.ts';

test('no recipe of the book is doubtful by the book’s own spans', () => {
  let asked = 0;
  for (const recipe of RECIPES) {
    const figures = figuresOf(recipe);
    if (!figures) continue;
    asked += 1;
    expect(ownDoubts(figures), recipe.id).toEqual([]);
  }
  expect(asked).toBeGreaterThan(30);
});

test('12 kg of sugar or 400 g of citric acid a kilogram and a thin finish are doubtful in a jam', () => {
  const damson = figuresOf(recipeOf('damson-jam'));
  if (!damson) throw new Error('damson jam is a boiled spread');
  expect(ownDoubts({ ...damson, sugarG: 12_000 })).toEqual([
    expect.stringMatching(/^12000 g of sugar a kg: the book’s recipes for jam take \d+ to \d+ g$/),
  ]);
  expect(ownDoubts({ ...damson, brix: 63 })).toEqual([]);
  expect(ownDoubts({ ...damson, brix: 21 })).toEqual(['21 % solids: the book’s recipes for jam stop at 65 %']);
  expect(ownDoubts({ ...damson, acid: { item: 'citric-acid', gPerKg: 400 } })).toEqual([
    '400 g of citric acid a kg: none of the book’s recipes takes any',
  ]);
});
