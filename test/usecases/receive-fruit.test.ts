import { describe, expect, it } from 'vitest';
import type { FruitReceived } from '#lib/forms/fruit-received.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import { readChooser } from '#lib/usecases/choose-recipe.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { readToday } from '#lib/usecases/read-today.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { receiveFruit } from '#lib/usecases/receive-fruit.ts';
import { traceCards } from '#lib/usecases/trace-cards.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf, refusalOf } from '#test/support/demo-database.ts';

const contextOf = async (db: Db): Promise<Context> => {
  const ctx = await openContext(db, 'ours', new Date('2025-09-12T18:00:00Z'));
  if (!ctx) throw new Error('the place is not there');
  return ctx;
};
const peaches = (change: Partial<FruitReceived> = {}): FruitReceived => ({
  id: 'received-1',
  foodId: 'peach-white',
  supplier: 'a friend',
  grams: 3200,
  typed: '3.2 kg',
  grade: 'blemished',
  groundFall: false,
  day: '2025-09-12' as FruitReceived['day'],
  boxLot: 'box 117',
  ...change,
});

forEachDatabase((_name, open) => {
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    return db;
  };

  describe('fruit from elsewhere', () => {
    it('is a receipt lot, written once however often it is sent, numbered in its day', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const first = doneOf(await receiveFruit(ctx, peaches()));
      expect(first.code).toBe('R-25255-PEW-1');
      expect(first.said).toContain('from a friend came in as R-25255-PEW-1.');
      expect(await receiveFruit(ctx, peaches())).toMatchObject({ replayed: true, done: first });
      expect(doneOf(await receiveFruit(ctx, peaches({ id: 'received-2' }))).code).toBe('R-25255-PEW-2');
      const late = doneOf(
        await receiveFruit(ctx, peaches({ id: 'received-3', day: '2025-09-10' as FruitReceived['day'] })),
      );
      expect(late.code).toBe('R-25253-PEW-1');
      const [lot] = await loadLots(db, 'ours', { ids: [first.lotId] });
      expect(lot).toMatchObject({
        kind: 'fruit',
        grade: 'blemished',
        onHand: 3200,
        cropId: null,
        foodId: 'peach-white',
      });
      expect((await loadLots(db, 'ours', { kinds: ['fruit'] })).length).toBe(3);
      expect(await rebuildBalances(db, 'ours')).toEqual([]);
    });

    it('shows on the trace whom it came from, when, and the lot on the box', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const { code } = doneOf(await receiveFruit(ctx, peaches()));
      const trace = await readTrace(ctx, code);
      if (!trace) throw new Error('no trace');
      const cards = traceCards(trace);
      expect(cards.sub).toContain('it came from elsewhere');
      expect(cards.facts).toContainEqual({
        what: 'One step back',
        value: 'came in 2025-09-12 from a friend, box lot box 117',
      });
    });

    it('white peach is offered no recipe but the freezer, and stands among what is turning', async () => {
      const ctx = await contextOf(await ours());
      const { lotId } = doneOf(await receiveFruit(ctx, peaches()));
      const { recipes } = await readChooser(ctx, [lotId]);
      expect(recipes.map((r) => r.goes)).toEqual(recipes.map(() => 'freezer'));
      expect(recipes.length).toBeGreaterThan(0);
      expect((await readToday(ctx)).turning.flatMap((t) => t.lotIds)).toEqual([lotId]);
    });

    it('what lay on the ground stays marked as such', async () => {
      const db = await ours();
      const { lotId } = doneOf(await receiveFruit(await contextOf(db), peaches({ groundFall: true })));
      expect((await loadLots(db, 'ours', { ids: [lotId] }))[0]?.groundFall).toBe(true);
    });

    it('a doubtful weight is saved and marked; a day ahead and an unknown fruit are refused', async () => {
      const ctx = await contextOf(await ours());
      expect(doneOf(await receiveFruit(ctx, peaches({ grams: 320_000, typed: '320 kg' }))).said).toContain(
        '320 kg from one hand at once: was another unit meant?',
      );
      expect(
        refusalOf(await receiveFruit(ctx, peaches({ id: 'received-8', day: '2026-09-12' as FruitReceived['day'] }))),
      ).toContain('that is 52 weeks ahead; did you mean');
      expect(refusalOf(await receiveFruit(ctx, peaches({ id: 'received-9', foodId: 'gold' })))).toBe(
        '"gold" is not a fruit of the table',
      );
    });
  });
});
