/** Minutes against the jam and applesauce rows of the USDA Complete Guide (AIB 539): jam to the pint, sauce to the quart. */
import assert from 'node:assert/strict';
import { expect, test } from 'vitest';
import { storageClass } from '#lib/batch/gate.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { jarMinutes, readRecipePage } from '#lib/usecases/recipe-page.ts';
import { demoContext, demoOn } from '#test/support/demo-database.ts';

const jars = (kind: string, word: string, ft: number) => {
  const recipe = RECIPES.find((r) => r.kind === kind && r.process && r.title.toLowerCase().includes(word));
  assert.ok(recipe, `the book has a canned ${word} ${kind}`);
  return new Map(jarMinutes(recipe, ft).map((j) => [j.jar, j]));
};

test('a quart of jam is refused and the largest tested jar offered with its minutes', () => {
  const quart = jars('jam', 'damson', 500).get('quart');
  assert.equal(quart?.refused, true);
  assert.match(quart?.text ?? '', /Take the pint: \d+ min here/);
});

test('a 12 oz jar of jam takes the time of the pint', () => {
  const jam = jars('jam', 'damson', 1400);
  assert.equal(jam.get('12 oz')?.refused, false);
  assert.equal(jam.get('12 oz')?.text, jam.get('pint')?.text);
});

test('a half-gallon of apple sauce is refused and the quart offered: 20 min to 1,000 ft, 25 min to 3,000 ft', () => {
  assert.match(jars('sauce', 'apple', 500).get('half-gallon')?.text ?? '', /Take the quart: 20 min here/);
  assert.match(jars('sauce', 'apple', 1400).get('half-gallon')?.text ?? '', /Take the quart: 25 min here/);
});

const open = demoOn('2025-09-13');
const allowed = (recipe: Recipe, foodId: string, altitudeFt: number): boolean => {
  const verdict = storageClass({
    recipe,
    fruit: [{ foodId, grams: 1000, grade: 'perfect', groundFall: false }],
    jar: { size: recipe.jarSizes[0] ?? 'half-pint', madeForCanning: true },
    altitudeFt,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
  });
  return verdict.shelf || verdict.needs.length > 0;
};

test('minutes stand on a page exactly when the gate lets a fruit of the recipe on the shelf, and an acid dose by jar is named', async () => {
  const ctx = await demoContext(await open());
  const altitudeFt = feet(mainKitchen(ctx.place)?.altitudeM ?? 0);
  let byJar = 0;
  for (const recipe of RECIPES) {
    const page = readRecipePage(ctx, recipe.id);
    const minutes = page?.kitchens.some((k) => k.jars.some((j) => !j.refused)) ?? false;
    const may = recipe.fruits.some((p) => p.foodIds.some((f) => allowed(recipe, f, altitudeFt)));
    expect(minutes, recipe.id).toBe(may);
    expect(JSON.stringify(page), recipe.id).not.toMatch(/\b(safe|probably|likely)\b/i);
    if (!recipe.acid || !('perJarOf' in recipe.acid)) continue;
    byJar += 1;
    expect(page?.acidByJar, recipe.id).toMatch(/acid dose in every jar/);
  }
  expect(byJar).toBeGreaterThan(0);
});
