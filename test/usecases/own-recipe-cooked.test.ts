import { describe, expect, it } from 'vitest';
import { OWN_KINDS, type OwnFigures } from '#lib/reference/recipes/own-recipe.ts';
import { batchOfCode } from '#lib/store/batch-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { receive } from '#lib/usecases/change-place.ts';
import { readChooser } from '#lib/usecases/choose-recipe.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { keepRecipe } from '#lib/usecases/own-recipes.ts';
import { readSheet } from '#lib/usecases/read-sheet.ts';
import { receiveFruit } from '#lib/usecases/receive-fruit.ts';
import { recordedRecipe } from '#lib/usecases/recipes-here.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf } from '#test/support/demo-database.ts';

const contextOf = async (db: Db): Promise<Context> => {
  const ctx = await openContext(db, 'ours', new Date('2025-09-12T18:00:00Z'));
  if (!ctx) throw new Error('the place is not there');
  return ctx;
};
const MIX: OwnFigures = {
  title: 'Damson & apple jam',
  kind: 'jam',
  fruits: [
    { foodId: 'damson', share: 0.6 },
    { foodId: 'apple-cooking', share: 0.4 },
  ],
  sugarG: 850,
  waterG: 100,
  acid: null,
  pectin: null,
  extras: [],
  brix: 65,
  softToo: true,
};

forEachDatabase((_name, open) => {
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    return db;
  };
  const fruit = async (ctx: Context, foodId: string, grams: number): Promise<string> =>
    doneOf(
      await receiveFruit(ctx, {
        id: `received-${foodId}`,
        foodId,
        supplier: 'a friend',
        grams,
        typed: `${grams / 1000} kg`,
        grade: 'perfect',
        groundFall: false,
        day: ctx.today,
        boxLot: null,
      }),
    ).lotId;

  describe('a recipe a household writes', () => {
    it('a doubtful amount is saved and said, with the span of the book', async () => {
      const db = await ours();
      const { said } = doneOf(
        await keepRecipe(await contextOf(db), { id: 'recipe-1', code: null, figures: { ...MIX, sugarG: 12_000 } }),
      );
      expect(said).toMatch(/12000 g of sugar a kg: the book’s recipes for jam take \d+ to \d+ g\.$/);
      expect(doneOf(await keepRecipe(await contextOf(db), { id: 'recipe-2', code: null, figures: MIX })).said).toBe(
        'Damson & apple jam is in your book.',
      );
    });

    it('the batch cooked by it keeps its version, needs a pH reading, and is for the household', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const { recipeId } = doneOf(await keepRecipe(ctx, { id: 'recipe-1', code: null, figures: MIX }));
      const draws = [
        { lotId: await fruit(ctx, 'damson', 1200), grams: 1200 },
        { lotId: await fruit(ctx, 'apple-cooking', 800), grams: 800 },
      ];
      for (const [item, qty] of [
        ['sugar', 5],
        ['lid-regular', 24],
        ['HP', 24],
      ] as const)
        doneOf(await receive(ctx, { id: `bought-${item}`, item, qty, supplier: null }));
      const now = await contextOf(db);
      const offered = (
        await readChooser(
          now,
          draws.map((d) => d.lotId),
        )
      ).recipes;
      expect(offered.map((r) => [r.id, r.goes])).toContainEqual([
        recipeId,
        'shelf, 10 min here, once a pH reading allows it',
      ]);
      const sheet = await readSheet(now, {
        recipe: recipeId,
        lot: draws.map((d) => d.lotId),
        kg: draws.map((d) => String(d.grams / 1000)),
      });
      if ('refused' in sheet) throw new Error(sheet.refused);
      expect(sheet.props.draft).toMatchObject({ shelf: false, household: true });
      expect(sheet.props.draft.needs).toEqual(['a calibrated pH reading of the finished, cooled product']);
      const { codes } = doneOf(
        await startBatches(now, 'start-1', {
          recipeId,
          draws,
          kitchenId: null,
          panCode: null,
          jarKind: null,
          method: 'boiling-water',
          trimG: null,
          brix: null,
          waterC: null,
          batches: 1,
          amounts: {},
        }),
      );
      const figures = { ...MIX, title: 'Sharper damson & apple jam', sugarG: 600 };
      doneOf(await keepRecipe(now, { id: 'recipe-2', code: 'damson-apple-jam', figures }));
      const batch = await batchOfCode(db, 'ours', codes[0] ?? '');
      expect(batch).toMatchObject({ recipeId, label: 'Damson & apple jam' });
      expect(recordedRecipe((await contextOf(db)).place, batch?.recipeId ?? '').sugar?.gPerKg).toBe(850);
    });

    it('dark elderberry and white peach have no shelf, whatever kind is written', async () => {
      const db = await ours();
      let n = 0;
      for (const foodId of ['elderberry-european', 'peach-white'])
        for (const kind of OWN_KINDS.filter((k) => k !== 'jelly'))
          doneOf(
            await keepRecipe(await contextOf(db), {
              id: `recipe-${foodId}-${n++}`,
              code: null,
              figures: { ...MIX, title: `${foodId} ${kind}`, kind, fruits: [{ foodId, share: 1 }], brix: 65 },
            }),
          );
      const ctx = await contextOf(db);
      for (const foodId of ['elderberry-european', 'peach-white']) {
        const { recipes } = await readChooser(ctx, [await fruit(ctx, foodId, 2000)]);
        expect(recipes.filter((r) => r.id.startsWith('own-')).length).toBe(OWN_KINDS.length - 1);
        for (const r of recipes) expect(r.goes, r.id).not.toContain('shelf');
      }
    });
  });
});
