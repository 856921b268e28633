/** Job J11: a batch that did not set. Damsons are judged after 14 days; what is remade takes the old jars with it. */
import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { fillBatch, processLoad } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { contentsOf } from '#lib/usecases/jar-contents.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { reportSet } from '#lib/usecases/report-set.ts';
import { checkSeals } from '#lib/usecases/seal-check.ts';
import { callSyrup, remake } from '#lib/usecases/unset.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, cooling, filling } from './damson-day.ts';

const open = demoOn('2025-09-12');
const [A] = CODES;
const CHILD = '25270-DAM-A';
const lids = async (db: Db) =>
  (await loadLots(db, DEMO_PLACE, { item: 'lid-regular' })).reduce((n, l) => n + l.onHand, 0);

/** A sealed and shelved on Sunday; said to be thin a fortnight on, Saturday 27 September 20:00. */
async function thin(db: Db): Promise<Context> {
  await cooling(db);
  doneOf(await checkSeals(await demoAt(db, '2025-09-14', '08:00'), { id: 'seal-a', code: A, address: 'B2-S1' }));
  const ctx = await demoAt(db, '2025-09-27', '20:00');
  doneOf(await reportSet(ctx, { id: 'thin-a', code: A, set: 0 }));
  return ctx;
}

describe('a jam that did not set', () => {
  it('is left alone 12 hours, may set for a fortnight, and is not remade before', async () => {
    const db = await open();
    await cooling(db);
    const evening = await demoAt(db, '2025-09-13', '22:00');
    expect((await readBatch(evening, A))?.unset?.stage).toBe('leave');
    const day4 = await demoAt(db, '2025-09-17', '19:00');
    doneOf(await checkSeals(await demoAt(db, '2025-09-14', '08:00'), { id: 'seal-a', code: A, address: 'B2-S1' }));
    expect((await readBatch(day4, A))?.unset).toMatchObject({ stage: 'setting', judgedOn: 'Sat 27 Sep, 19:30' });
    expect(refusalOf(await remake(day4, { id: 'remake-early', code: A, pieces: [1] }))).toBe(
      'it may still set: 95 h of 336. Remade too early it is lost twice',
    );
  });

  it('says why by its own log, and offers a trial cup as printed (a quarter of a quart’s amounts)', async () => {
    const ctx = await thin(await open());
    const unset = (await readBatch(ctx, A))?.unset;
    expect(unset).toMatchObject({ stage: 'judge', said: 0, atOnce: 4 });
    expect(unset?.reasons[0]).toBe('35 % of the fruit was soft: overripe fruit has lost pectin and acid.');
    expect(unset?.reasons.at(-1)).toContain('Nothing was logged at the end of the boil');
    expect(unset?.trial).toBe('1 tbsp sugar, 2 tbsp water, ½ tbsp bottled lemon juice, 1 tsp powdered pectin');
    expect(unset?.remade).toBe('4 tbsp sugar, 8 tbsp water, 2 tbsp bottled lemon juice, 4 tsp powdered pectin');
  });

  it('called a syrup stays where it is under its new name', async () => {
    const db = await open();
    const ctx = await thin(db);
    expect(doneOf(await callSyrup(ctx, { id: 'syrup-a', code: A })).said).toContain('6 jars. Print new labels.');
    expect(await lotOfCode(db, DEMO_PLACE, A)).toMatchObject({ label: 'Damson syrup', onHand: 6, address: 'B2-S1' });
  });

  it('is remade at most four cups at a time, and the shelf never shows the jars twice', async () => {
    const db = await open();
    const ctx = await thin(db);
    expect(refusalOf(await remake(ctx, { id: 'remake-5', code: A, pieces: [1, 2, 3, 4, 5] }))).toBe(
      '5 jars at once; 4 cups, 4 of these jars, are the most',
    );
    const before = await lids(db);
    expect(doneOf(await remake(ctx, { id: 'remake-a', code: A, pieces: [1, 2, 3, 4] })).said).toContain(
      `25256-DAM-A/04 emptied into ${CHILD}. Weigh in 50 g sugar, 118 g water, 30 g bottled lemon juice, 12 g bought pectin powder`,
    );
    expect(await lotOfCode(db, DEMO_PLACE, A)).toMatchObject({ onHand: 2 });
    expect((await lotOfCode(db, DEMO_PLACE, `${CHILD}/pan`))?.onHand).toBe(4 * 312 + 50 + 118 + 30 + 12);
    const fill = { ...filling(CHILD), jars: 4, partialG: 150, trimG: 0 };
    doneOf(await fillBatch(ctx, fill));
    expect(before - (await lids(db))).toBe(4);
    doneOf(await processLoad(ctx, { id: 'out-again', codes: [CHILD], step: 'out', minutes: 10, deviation: null }));
    expect(await lotOfCode(db, DEMO_PLACE, CHILD)).toMatchObject({ onHand: 4, process: 'as tested', seal: 'waiting' });
    expect((await batchOfCode(db, DEMO_PLACE, A))?.log.at(-1)?.what).toContain(`emptied into ${CHILD}`);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('remade still knows its trees, and its label names what was added', async () => {
    const db = await open();
    const ctx = await thin(db);
    doneOf(await remake(ctx, { id: 'remake-a', code: A, pieces: [1, 2, 3, 4] }));
    doneOf(await fillBatch(ctx, { ...filling(CHILD), jars: 4, partialG: 150, trimG: 0 }));
    const lot = await lotOfCode(db, DEMO_PLACE, CHILD);
    const inIt = (await contentsOf(ctx, lot ? [lot] : [])).get(lot?.id ?? '');
    expect(inIt?.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    const names = inIt?.ingredients?.map((i) => i.name) ?? [];
    expect(names).toEqual(expect.arrayContaining(['sugar', 'lemon juice', 'pectin']));
    expect(names.filter((n) => n === 'sugar')).toHaveLength(1);
    expect((await readTrace(ctx, `${A}/01`))?.piece?.state).toBe(`moved to ${CHILD}`);
  });
});
