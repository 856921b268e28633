/** Trying a lot of powder or stock: each test is an act, kept with the lot; it moves the strength the next sheet takes. */
import { describe, expect, it } from 'vitest';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import type { Context } from '#lib/usecases/context.ts';
import { learntFigures, readLearnt } from '#lib/usecases/learn-figures.ts';
import { readSetAside, readSetAsides } from '#lib/usecases/read-set-asides.ts';
import { testByAlcohol, tryByCup } from '#lib/usecases/strength-tests.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const POWDER = 'S-25270-APC-1';

const inLine = async (ctx: Context, code: string) => {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) throw new Error('no kitchen');
  return (await learntFigures(ctx, kitchen, null)).homePectin.find((l) => l.code === code);
};

describe('the strength of a lot, tried', () => {
  const demo = demoOn('2025-10-15');

  it('is untested by the table, then weak or strong by the alcohol, and the next dose takes it', async () => {
    const db = await demo();
    const ctx = await demoAt(db, '2025-10-15', '09:00');
    expect((await readSetAside(ctx, POWDER))?.known).toMatchObject({
      word: 'untested',
      perG: { low: 3, typ: 5.5, high: 9 },
      testG: 30,
      mayTest: true,
    });
    const told = doneOf(await testByAlcohol(ctx, { id: 'clot-powder-1', code: POWDER, result: 'high' }));
    expect(told.said).toMatch(/one lump\. Throw the sample away; it is not tasted/);
    const strong = (await readSetAside(ctx, POWDER))?.known;
    expect(strong).toMatchObject({ word: 'strong', tests: [expect.stringContaining('alcohol test, one lump')] });
    expect(strong?.perG.typ).toBeGreaterThan(5.5);
    expect(strong?.perG.low).toBeGreaterThan(3);
    expect(await inLine(ctx, POWDER)).toMatchObject({ word: 'strong', sugarPerG: strong?.perG });
    expect((await readSetAsides(ctx)).lots.find((l) => l.code === POWDER)?.strength).toBe('strong');
    // Not a batch yet: the page of what was learnt says so.
    expect((await readLearnt(ctx)).rows.find((r) => r.id === `apple-powder-${POWDER}`)?.learnt.n).toBe(0);
    doneOf(await testByAlcohol(ctx, { id: 'clot-powder-2', code: POWDER, result: 'low' }));
    doneOf(await testByAlcohol(ctx, { id: 'clot-powder-3', code: POWDER, result: 'low' }));
    const weak = (await readSetAside(ctx, POWDER))?.known;
    expect([weak?.word, weak?.tests.length]).toEqual(['weak', 3]);
  });

  it('by the cup takes the powder out of the jar, and counts with its sugar', async () => {
    const db = await demo();
    const ctx = await demoAt(db, '2025-10-15', '09:00');
    const cup = { code: POWDER, powderG: 30, sugarG: 200 };
    expect(refusalOf(await tryByCup(ctx, { ...cup, id: 'cup-too-much', powderG: 1173, set: 2 }))).toMatch(
      /1173 g asked for, 1172 g left/,
    );
    doneOf(await tryByCup(ctx, { ...cup, id: 'cup-powder-1', set: 2 }));
    const replay = await tryByCup(ctx, { ...cup, id: 'cup-powder-1', set: 2 });
    expect(replay).toMatchObject({ replayed: true });
    const lot = await lotOfCode(db, ctx.place.id, POWDER);
    expect(lot?.onHand).toBe(1142);
    expect(lot?.details.tests).toHaveLength(1);
    // 200 g of sugar on 30 g of powder set: it carries 6.7 g a gram or more.
    const known = (await readSetAside(ctx, POWDER))?.known;
    expect(known?.word).toBe('strong');
    expect(known?.perG.typ).toBeGreaterThan(6.5);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
  });

  it('of a stock is its last alcohol test; rings and fresh trim are not tested', async () => {
    const db = await demo();
    const ctx = await demoAt(db, '2025-10-15', '09:00');
    const stock = (await loadLots(db, ctx.place.id, { kinds: ['set-aside'] })).find((l) => l.item === 'pectin-stock');
    const code = stock?.code ?? '';
    expect((await readSetAside(ctx, code))?.known).toMatchObject({ word: 'untested', testG: null });
    expect(refusalOf(await tryByCup(ctx, { id: 'cup-stock-1', code, powderG: 10, sugarG: 50, set: 2 }))).toMatch(
      /tried by alcohol/,
    );
    doneOf(await testByAlcohol(ctx, { id: 'clot-stock-1', code, result: 'medium' }));
    expect((await readSetAside(ctx, code))?.known?.word).toBe('weak');
    doneOf(await testByAlcohol(ctx, { id: 'clot-stock-2', code, result: 'high' }));
    expect(await inLine(ctx, code)).toMatchObject({ word: 'strong', clot: 'high', grams: 4500 });
    const rind = (await loadLots(db, ctx.place.id, { kinds: ['set-aside'] })).find((l) => l.item === 'citrus-rind');
    expect(refusalOf(await testByAlcohol(ctx, { id: 'clot-rind-1', code: rind?.code ?? '', result: 'high' }))).toMatch(
      /no powder or stock that is ready/,
    );
  });
});
