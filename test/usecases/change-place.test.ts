import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import { plantCrop, readWater, receive } from '#lib/usecases/change-place.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { readPlace } from '#lib/usecases/read-place.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, damsons } from './damson-day.ts';

const contextOf = async (db: Db): Promise<Context> => {
  const ctx = await openContext(db, 'ours', new Date('2025-09-12T18:00:00Z'));
  if (!ctx) throw new Error('the place is not there');
  return ctx;
};
const damson = {
  foodId: 'damson',
  label: 'Damson',
  row: 'D3',
  count: 3,
  unit: 'tree',
  kgPerUnit: 20,
  windowFrom: '09-05',
  windowTo: '09-25',
};

forEachDatabase((_name, open) => {
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    return db;
  };

  describe('what comes in', () => {
    it('is a receipt of its own each time, numbered in its day', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const sugar = { item: 'sugar', qty: 25, supplier: 'a shop' };
      expect(doneOf(await receive(ctx, { id: 'bought-1', ...sugar }))).toEqual({
        code: 'R-25255-SUG-1',
        said: 'Sugar came in as R-25255-SUG-1.',
      });
      expect(doneOf(await receive(ctx, { id: 'bought-2', ...sugar, qty: 1 })).code).toBe('R-25255-SUG-2');
      expect(await receive(ctx, { id: 'bought-2', ...sugar, qty: 1 })).toMatchObject({ replayed: true });
      expect(refusalOf(await receive(ctx, { id: 'bought-2', ...sugar }))).toMatch(/sent already, with something else/);
      expect(doneOf(await receive(ctx, { id: 'bought-3', item: 'HP', qty: 24, supplier: null })).code).toBe(
        'R-25255-JHP-1',
      );
      const { supplies } = await readPlace(ctx);
      expect(supplies.map((s) => [s.item, s.qty, s.unit])).toEqual(
        expect.arrayContaining([
          ['sugar', 26_000, 'g'],
          ['HP', 24, 'jar'],
        ]),
      );
      expect((await loadLots(db, 'ours', { item: 'sugar' }))[0]?.details).toEqual({ supplier: 'a shop' });
      expect(refusalOf(await receive(ctx, { id: 'bought-4', item: 'gold', qty: 1, supplier: null }))).toBe(
        '"gold" is not on the list of supplies',
      );
      expect(refusalOf(await receive(ctx, { id: 'bought-5', ...sugar, qty: 4000 }))).toBe(
        '4000 kg of sugar at once: was another unit meant?',
      );
      expect(refusalOf(await receive(ctx, { id: 'bought-6', item: 'lid-regular', qty: 2.5, supplier: null }))).toBe(
        '2.5 lids: whole ones only',
      );
      expect(await rebuildBalances(db, 'ours')).toEqual([]);
    });
  });

  describe('a crop planted', () => {
    it('can be picked from its row', async () => {
      const db = await ours();
      await plantCrop(await contextOf(db), damson);
      const ctx = await contextOf(db);
      const crop = ctx.place.crops[0];
      expect(crop).toMatchObject({ foodId: 'damson', count: 3, gPerUnit: 20_000, windowFrom: '09-05' });
      const picked = damsons({ rowId: `D3|${crop?.code}`, readings: [bucket(5620)], grades: { perfect: 5000 } });
      expect(doneOf(await recordHarvest(ctx, picked)).code).toBe('H-25255-D3-DAM-1');
    });

    it('may share its row with another', async () => {
      const db = await ours();
      await plantCrop(await contextOf(db), damson);
      await plantCrop(await contextOf(db), { ...damson, foodId: 'plum-european', label: 'Prune plum', count: 4 });
      await plantCrop(await contextOf(db), { ...damson, foodId: 'plum-european', label: 'Prune plum', count: 5 });
      const { crops } = (await contextOf(db)).place;
      expect(crops.map((c) => [c.label, c.plantings.map((p) => [p.row, p.count])]).sort()).toEqual([
        ['Damson', [['D3', 3]]],
        ['Prune plum', [['D3', 5]]],
      ]);
    });
  });

  describe('the boiling water', () => {
    it('is kept for its day and kitchen, the last reading counting', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const kitchenId = ctx.place.kitchens[0]?.id ?? '';
      expect(doneOf(await readWater(ctx, { id: 'water-1', kitchenId, centiC: 9860 })).said).toBe(
        'Water boils at 98.6 °C in the home kitchen today.',
      );
      expect((await readPlace(ctx)).water).toEqual([{ kitchenId, centiC: 9860 }]);
      expect(refusalOf(await readWater(ctx, { id: 'water-2', kitchenId: 'elsewhere', centiC: 9860 }))).toBe(
        'that kitchen is not here',
      );
    });
  });
});
