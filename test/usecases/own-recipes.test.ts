import { describe, expect, it } from 'vitest';
import { ownRecipeForm, ownRecipeText } from '#lib/forms/own-recipe.ts';
import { figuresOf, type OwnFigures, ownRecipe } from '#lib/reference/recipes/own-recipe.ts';
import { RECIPES, recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { dropRecipe, keepRecipe } from '#lib/usecases/own-recipes.ts';
import { recipeHere, recipesHere } from '#lib/usecases/recipes-here.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf, refusalOf } from '#test/support/demo-database.ts';

const PLUM: OwnFigures = {
  title: 'Plum & damson jam',
  kind: 'jam',
  fruits: [
    { foodId: 'plum-european', share: 0.6 },
    { foodId: 'damson', share: 0.4 },
  ],
  sugarG: 800,
  waterG: 100,
  acid: { item: 'lemon-juice-bottled', gPerKg: 20 },
  pectin: null,
  extras: [{ item: 'walnuts', gPerKg: 50 }],
  brix: 65,
  softToo: true,
};

describe('the form of a recipe of one’s own', () => {
  it('reads back what it shows', () => {
    expect(ownRecipeForm.parse(ownRecipeText(PLUM))).toEqual(PLUM);
  });

  it('can begin from most spreads of the book and means the same by them', () => {
    const copied = RECIPES.flatMap((r) => {
      const figures = figuresOf(r);
      return figures ? [{ r, figures }] : [];
    });
    expect(copied.length).toBeGreaterThan(40);
    for (const { r, figures } of copied) {
      const own = ownRecipe('own-x-1', figures);
      expect(own.householdOnly, r.id).toBe(true);
      expect(own.origin.standing, r.id).toBe('house');
      expect(own.sugar?.gPerKg ?? 0, r.id).toBe(r.sugar?.gPerKg ?? 0);
    }
  });

  it('says every contradiction with its numbers', () => {
    const why = (over: Record<string, string>) =>
      ownRecipeForm.safeParse({ ...ownRecipeText(PLUM), ...over }).error?.issues.map((i) => i.message);
    expect(why({ share1: '60', share2: '30' })).toEqual(['the shares make 90 %, not 100 %']);
    expect(why({ fruit2: 'plum-european' })).toEqual(['fruit 2 is there twice']);
    expect(why({ acidG: '' })).toEqual(['the acid: bottled lemon juice is chosen and its grams are missing']);
    expect(why({ pectinG: '12' })).toEqual(['the pectin: 12 g, and of what is not said']);
    expect(why({ kind: 'freezer-jam' })).toEqual(['freezer jam is not boiled down: leave the finish empty']);
    expect(why({ sugar: '90000' })).toEqual(['the sugar is 90000; it must lie between 0 and 20000']);
    expect(why({ share2: '' })).toEqual(['the share of fruit 2 is missing']);
    expect(why({ fruit1: '', fruit2: '' })).toEqual(['a fruit is missing']);
    expect(why({ kind: 'jelly', fruit1: 'fig' })?.[0]).toMatch(/draws no juice/);
  });
});

forEachDatabase((_name, open) => {
  const contextOf = async (db: Db): Promise<Context> => {
    const ctx = await openContext(db, 'ours', new Date('2025-09-12T18:00:00Z'));
    if (!ctx) throw new Error('the place is not there');
    return ctx;
  };
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    return db;
  };

  describe('recipes of one’s own', () => {
    it('are kept version by version, the newest offered, each found by its id', async () => {
      const db = await ours();
      const first = { id: 'recipe-act-1', code: null, figures: PLUM };
      expect(doneOf(await keepRecipe(await contextOf(db), first)).recipeId).toBe('own-plum-damson-jam-1');
      expect(await keepRecipe(await contextOf(db), first)).toMatchObject({ replayed: true });
      const sharper = { ...PLUM, sugarG: 650 };
      const second = { id: 'recipe-act-2', code: 'plum-damson-jam', figures: sharper };
      expect(doneOf(await keepRecipe(await contextOf(db), second)).said).toMatch(/keeps version 1/);
      const { place } = await contextOf(db);
      expect(recipesHere(place)[0]?.id).toBe('own-plum-damson-jam-2');
      expect(recipesHere(place).length).toBe(RECIPES.length + 1);
      expect(recipeHere(place, 'own-plum-damson-jam-1')?.sugar?.gPerKg).toBe(800);
      expect(recipeHere(place, 'own-plum-damson-jam-2')?.sugar?.gPerKg).toBe(650);
      expect(recipeHere(place, 'damson-jam')).toBe(recipeOf('damson-jam'));
    });

    it('taken off the list are offered no longer and still found; a new version offers them again', async () => {
      const db = await ours();
      doneOf(await keepRecipe(await contextOf(db), { id: 'recipe-act-1', code: null, figures: PLUM }));
      doneOf(await dropRecipe(await contextOf(db), { id: 'recipe-act-2', code: 'plum-damson-jam' }));
      expect(recipesHere((await contextOf(db)).place)).toEqual(RECIPES);
      expect(recipeHere((await contextOf(db)).place, 'own-plum-damson-jam-1')).toBeDefined();
      doneOf(await keepRecipe(await contextOf(db), { id: 'recipe-act-3', code: 'plum-damson-jam', figures: PLUM }));
      expect(recipesHere((await contextOf(db)).place)[0]?.id).toBe('own-plum-damson-jam-2');
      expect(refusalOf(await dropRecipe(await contextOf(db), { id: 'recipe-act-4', code: 'no-such' }))).toBe(
        'there is no recipe no-such of yours',
      );
    });

    it('of the same name have codes of their own', async () => {
      const db = await ours();
      const ids: string[] = [];
      for (const n of [1, 2])
        ids.push(
          doneOf(await keepRecipe(await contextOf(db), { id: `recipe-act-${n}`, code: null, figures: PLUM })).recipeId,
        );
      expect(ids).toEqual(['own-plum-damson-jam-1', 'own-plum-damson-jam-2-1']);
    });
  });
});
