import { describe, expect, it } from 'vitest';
import { lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { logFromMemory, offByOf, stateLate } from '#lib/usecases/late-batch.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { seasonInput } from '#lib/usecases/season-scenario.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2025-09-12');
const late = {
  id: 'late-plums',
  recipeId: 'plum-jelly',
  day: plainDate('2025-09-05'),
  jar: 'HP',
  about: 9,
};
const sale = (lot: string, id: string) => ({
  id,
  slug: 'plum-jelly',
  count: 1,
  to: 'sold' as const,
  who: 'the stall',
  lot,
  person: null,
  at: null,
});
const state = (lot: string, change: object = {}) => ({
  id: 'state-plums',
  lot,
  sealed: 8,
  minutes: 10,
  asWritten: true,
  ...change,
});

describe('a batch logged a week late from memory, about 9 jars (story D8)', () => {
  it('is accepted, marked, and not sold until the sealed count and the process are stated', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const { code, said } = doneOf(await logFromMemory(ctx, late));
    expect(said).toContain('about 9 jars of Plum jelly');
    const lot = await lotOfCode(db, DEMO_PLACE, code);
    expect([lot?.madeOn, lot?.onHand, lot?.process, lot?.seal]).toEqual(['2025-09-05', 9, 'unknown', 'unverified']);
    expect(lot?.flags[0]).toContain('from memory, about 9 jars');
    expect(refusalOf(await takeJars(ctx, sale(code, 'sale-before')))).toContain('0 left of Plum jelly that may leave');
    expect(doneOf(await stateLate(ctx, state(code))).said).toContain('8 sealed, 10 min at a full boil, as tested');
    const stated = await lotOfCode(db, DEMO_PLACE, code);
    expect([stated?.onHand, stated?.process, stated?.seal, stated?.hold]).toEqual([8, 'as tested', 'sealed', null]);
    expect(doneOf(await takeJars(ctx, sale(code, 'sale-after'))).left).toBe(7);
    expect(refusalOf(await stateLate(ctx, state(code, { id: 'state-again' })))).toContain('was not logged from memory');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('stays off the stall when nobody knows the minutes, and goes on hold when they were too few', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const { code } = doneOf(await logFromMemory(ctx, late));
    doneOf(await stateLate(ctx, state(code, { minutes: null })));
    expect(refusalOf(await takeJars(ctx, sale(code, 'sale-unknown')))).toContain('0 left');
    const said = doneOf(await stateLate(ctx, state(code, { id: 'state-short', minutes: 4 }))).said;
    expect(said).toContain('not as tested');
    expect((await lotOfCode(db, DEMO_PLACE, code))?.hold).toContain('process not as tested');
  });

  it('goes into the forecast with the jars it may be off by, until it is counted', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const { code } = doneOf(await logFromMemory(ctx, late));
    const offs = async () => (await seasonInput(await seasonSnapshot(ctx))).scenario.lots.filter((l) => l.offBy);
    expect((await offs()).map((l) => [l.jars, l.offBy])).toEqual([[9, offByOf(9)]]);
    expect(offByOf(9)).toBe(2);
    doneOf(await stateLate(ctx, state(code)));
    expect(await offs()).toEqual([]);
  });

  it('is refused for a day to come and for a recipe that is not here', async () => {
    const ctx = await demoContext(await open());
    expect(refusalOf(await logFromMemory(ctx, { ...late, day: plainDate('2025-10-05') }))).toContain('3 weeks ahead');
    expect(refusalOf(await logFromMemory(ctx, { ...late, recipeId: 'no-such' }))).toContain('"no-such"');
  });
});
