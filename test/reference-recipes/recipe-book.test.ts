import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUITS } from '#lib/reference/fruits.ts';
import { HOLD_TIMES } from '#lib/reference/hold-times.ts';
import { processAdmits } from '#lib/reference/process-admits.ts';
import { processTime } from '#lib/reference/process-times.ts';
import { doseItem } from '#lib/reference/recipes/dose-items.ts';
import type { RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { RECIPES, recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { YIELDS } from '#lib/reference/yields.ts';

/** The 37 lines of the demo year's shelf, with the recipe each is made by. */
const LINES: Readonly<Record<string, string>> = {
  'Rhubarb-ginger jam': 'rhubarb-ginger-jam',
  'Strawberry jam': 'strawberry-jam',
  'Gooseberry jam': 'gooseberry-jam',
  'Redcurrant jelly': 'redcurrant-jelly',
  'Blackcurrant jam': 'blackcurrant-jam',
  'Raspberry jam': 'raspberry-jam',
  'Blueberry-lemon conserve': 'blueberry-lemon-conserve',
  'Tayberry jam': 'tayberry-jam',
  'Sour cherry-almond conserve': 'sour-cherry-almond-conserve',
  'Mirabelle jam': 'mirabelle-jam',
  'Early plum jam': 'plum-jam',
  'Prune-plum butter': 'plum-butter',
  'Damson jam': 'damson-jam',
  'Crabapple jelly': 'crabapple-jelly',
  'Apple butter': 'apple-butter',
  'Pear-ginger conserve': 'pear-ginger-conserve',
  'Quince jelly': 'quince-jelly',
  'Medlar jelly': 'medlar-jelly',
  'Seville marmalade (Feb)': 'seville-marmalade',
  'Damson paste': 'damson-paste',
  'Quince paste': 'quince-paste',
  'Sour cherries in syrup': 'sour-cherries-in-syrup',
  'Apple sauce': 'apple-sauce',
  'Pears in light syrup': 'pears-in-light-syrup',
  'Plums in syrup': 'plums-in-syrup',
  'Apple slices in syrup': 'apple-slices-in-syrup',
  'Apple juice, canned': 'apple-juice',
  'Raspberry freezer jam': 'raspberry-freezer-jam',
  'Frozen raspberries 500 g': 'frozen-raspberries',
  'Frozen blackcurrants 500 g': 'frozen-blackcurrants',
  'Frozen sour cherries 500 g': 'frozen-sour-cherries',
  'Frozen apple slices 1 kg': 'frozen-apple-slices',
  'Frozen plum halves 1 kg': 'frozen-plum-halves',
  'Dried apple rings 100 g': 'dried-apple-rings',
  'Dried pears 100 g': 'dried-pears',
  'Prunes 100 g': 'dried-prunes',
  'Fruit leather roll': 'fruit-leather',
};
const KINDS: readonly RecipeKind[] = [
  'jam',
  'jelly',
  'preserve',
  'conserve',
  'marmalade',
  'butter',
  'sauce',
  'puree',
  'whole-fruit',
  'pie-filling',
  'juice',
  'syrup',
  'leather',
  'dried',
  'candied',
  'paste',
  'freezer-jam',
  'fridge-jam',
  'frozen',
  'blend',
  'tomato',
];
const known = new Set<string>(FRUITS.map((f) => f.id));

describe('the recipe book', () => {
  it('has a recipe for each of the 37 lines of the demo year', () => {
    assert.equal(Object.keys(LINES).length, 37);
    for (const id of Object.values(LINES)) assert.equal(recipeOf(id).id, id);
  });
  it('holds at least 60 recipes over all 21 kinds, each id once', () => {
    assert.ok(RECIPES.length >= 60);
    assert.equal(new Set(RECIPES.map((r) => r.id)).size, RECIPES.length);
    for (const kind of KINDS)
      assert.ok(
        RECIPES.some((r) => r.kind === kind),
        kind,
      );
  });
  it('throws for an id it does not know', () => assert.throws(() => recipeOf('fig-conserve'), RangeError));
  it('names only foods of the fruit table, with shares that can add up to one', () => {
    for (const r of RECIPES) {
      for (const p of r.fruits) {
        assert.ok(
          p.foodIds.every((id) => known.has(id)),
          r.id,
        );
        assert.ok(p.share.low <= p.share.typ && p.share.typ <= p.share.high, r.id);
      }
      const typ = r.fruits.reduce((s, p) => s + p.share.typ, 0);
      assert.ok(Math.abs(typ - 1) < 1e-9, `${r.id} ${typ}`);
    }
  });
  it('lists no jar size larger than the process table prints, and every fruit is admitted by its row', () => {
    for (const r of RECIPES) {
      if (!r.process) continue;
      assert.ok(r.jarSizes.length > 0, r.id);
      for (const jar of r.jarSizes) {
        const found = processTime({ ...r.process, jar, altitudeFt: 1345, method: 'boiling-water' });
        assert.ok(found.ok, `${r.id} ${jar}`);
        if (found.ok) {
          for (const id of r.fruits.flatMap((p) => p.foodIds))
            assert.ok(processAdmits(found.row, id).ok, `${r.id} ${id}`);
          if (found.row.acidRequired) assert.equal(r.acid?.purpose, 'safety dose', r.id);
        }
      }
    }
  });
  it('calls a recipe published only with a known source, and every other one household-only', () => {
    for (const r of RECIPES) {
      assert.equal(r.householdOnly, r.origin.standing === 'house', r.id);
      if (r.origin.standing === 'published')
        for (const s of r.origin.sources) assert.ok(s in SOURCES && s !== 'MEMORY' && s !== 'ESTIMATE', r.id);
      else assert.ok(r.origin.because.length > 0, r.id);
    }
  });
  it('keeps home powder and home stock out of published recipes', () => {
    for (const r of RECIPES) if (r.pectin && r.pectin.from !== 'bought') assert.equal(r.origin.standing, 'house', r.id);
  });
  it('gives every recipe somewhere to go when it is not for the shelf', () => {
    for (const r of RECIPES)
      assert.ok(
        HOLD_TIMES.some((h) => r.keeps.includes(h.item)),
        r.id,
      );
  });
  it('points every weight-table recipe at a printed line for its usual size', () => {
    for (const r of RECIPES) {
      const { finish } = r;
      if (finish.by !== 'weight table') continue;
      const row = YIELDS.find((y) => y.crop === finish.crop);
      assert.ok(row && 'lbPer9Pints' in row && 'lbPer7Quarts' in row, r.id);
    }
  });
  it('makes the nuts in a conserve an allergen', () => {
    for (const [id, nut] of [
      ['sour-cherry-almond-conserve', 'almonds'],
      ['grape-nut-conserve', 'walnuts'],
    ] as const) {
      const rows = recipeOf(id).others.map((d) => doseItem(d.item));
      assert.ok(
        rows.some((row) => row.nut === nut && row.allergens.includes('tree nuts')),
        id,
      );
    }
    assert.deepEqual(doseItem('butter').allergens, ['milk']);
  });
  it('keeps nuts at or under the share printed in the tested grape conserve (117 g to 1 680 g of pulp, HGB-56)', () => {
    for (const r of RECIPES)
      for (const d of r.others) if (doseItem(d.item).nut) assert.ok(d.gPerKg <= (117 / 1680) * 1000, r.id);
  });
  it('has no process for pastes, freezer jam, frozen, dried, candied or blends', () => {
    for (const r of RECIPES) {
      if (['paste', 'freezer-jam', 'fridge-jam', 'frozen', 'dried', 'leather', 'candied', 'blend'].includes(r.kind))
        assert.equal(r.process, null, r.id);
    }
  });
});
