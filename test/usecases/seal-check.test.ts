/** Stories B1 and B2 without a browser: which jars gave, where they go, and what is answered of the others. */
import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, piecesOf, rebuildBalances } from '#lib/store/ledger-store.ts';
import { processLoad } from '#lib/usecases/batch-flow.ts';
import { contentsOf } from '#lib/usecases/jar-contents.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { phTooHigh } from '#lib/usecases/ph-hold.ts';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { readLine, readPantry } from '#lib/usecases/read-pantry.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { reportDeviation } from '#lib/usecases/report-deviation.ts';
import { checkSeals } from '#lib/usecases/seal-check.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { LOOK_AT_LOAD, type OutInput, takeOut } from '#lib/usecases/take-out.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, cooling, filled } from './damson-day.ts';

const open = demoOn('2025-09-12');
const [A, B] = CODES;
const sealed = (change: object = {}) => ({ id: 'seal-b', code: B, address: 'B2-S1', ...change });
const gave = (change: Partial<OutInput> = {}): OutInput => ({
  id: 'gave-b',
  code: B,
  pieces: [4],
  way: 'fridge',
  ...change,
});
const lids = async (db: Db) =>
  (await loadLots(db, DEMO_PLACE, { item: 'lid-regular' })).reduce((n, l) => n + l.onHand, 0);
const logOf = async (db: Db, code: string) => (await batchOfCode(db, DEMO_PLACE, code))?.log.map((l) => l.what) ?? [];

describe('the seals', () => {
  it('are not tried before 12 hours have gone by', async () => {
    const db = await open();
    await cooling(db);
    const early = await demoAt(db, '2025-09-14', '07:29');
    expect(refusalOf(await checkSeals(early, sealed()))).toBe(
      'the jars came out 12.0 h ago; leave them 12 h before the seals are tried',
    );
    expect(refusalOf(await checkSeals(await demoAt(db, '2025-09-13', '22:00'), sealed()))).toContain('2.5 h ago');
    expect((await lotOfCode(db, DEMO_PLACE, B))?.seal).toBe('waiting');
  });

  it('are due at 12 hours, overdue at 20 and too late after 24', async () => {
    const db = await open();
    await cooling(db);
    const stateAt = async (day: string, time: string) => (await readBatch(await demoAt(db, day, time), B))?.sealState;
    expect([
      await stateAt('2025-09-14', '07:29'),
      await stateAt('2025-09-14', '07:30'),
      await stateAt('2025-09-14', '15:29'),
      await stateAt('2025-09-14', '15:30'),
      await stateAt('2025-09-14', '19:30'),
      await stateAt('2025-09-14', '19:31'),
    ]).toEqual(['early', 'due', 'due', 'red', 'red', 'locked']);
  });

  it('answered within 24 hours shelve the jars as sealed', async () => {
    const db = await open();
    await cooling(db);
    const last = await demoAt(db, '2025-09-14', '19:30');
    expect(doneOf(await checkSeals(last, sealed())).said).toBe('6 jars sealed, to B2-S1.');
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({ seal: 'sealed', flags: [] });
  });

  it('answered after 24 hours are unverified: an open jar is discarded, the others are the household’s, with a note (B2)', async () => {
    const db = await open();
    await cooling(db);
    const late = await demoAt(db, '2025-09-14', '19:31');
    await db.lot.updateMany({ where: { code: B }, data: { household: false } });
    const view = await readBatch(late, B);
    expect([view?.jars.find((j) => j.kind === 'jars')?.seal, view?.out?.ways]).toEqual(['unverified', ['discard']]);
    for (const way of ['fridge', 'freezer', 'process again'] as const)
      expect(refusalOf(await takeOut(late, gave({ way })))).toContain('too late for');
    expect(doneOf(await takeOut(late, gave({ way: 'discard' }))).said).toBe(`${B}/04 out, whole.`);
    expect(doneOf(await checkSeals(late, sealed())).said).toBe(
      '5 jars unverified (checked after 24 h), for the household, to B2-S1.',
    );
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({
      onHand: 5,
      seal: 'unverified',
      household: true,
      flags: ['seal checked after 24 h: look at each jar when it is opened'],
    });
    const line = await readLine(late, 'damson-jam');
    expect(line?.pieces.filter((p) => p.code.startsWith(B)).map((p) => p.mayLeave)).toEqual(Array(5).fill(true));
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('are answered once', async () => {
    const db = await open();
    await cooling(db);
    const morning = await demoAt(db, '2025-09-14', '07:30');
    doneOf(await checkSeals(morning, sealed()));
    expect(await checkSeals(morning, sealed())).toMatchObject({ replayed: true });
    expect(refusalOf(await checkSeals(morning, sealed({ id: 'seal-b-again' })))).toBe(`${B} is jarred already`);
    expect(refusalOf(await checkSeals(morning, sealed({ id: 'seal-none', code: '25256-XXX-A' })))).toBe(
      'there is no batch 25256-XXX-A',
    );
  });

  it('keep the jars from being taken until they are answered', async () => {
    const db = await open();
    const ctx = await cooling(db);
    const there = (await loadLots(db, DEMO_PLACE, { kinds: ['jars'] }))
      .filter((l) => l.label === 'Damson jam' && l.seal !== 'waiting')
      .reduce((n, l) => n + l.onHand, 0);
    const why = refusalOf(
      await takeJars(ctx, {
        id: 'take-early',
        slug: 'damson-jam',
        count: there + 1,
        to: 'eaten',
        who: null,
        person: null,
        at: null,
      }),
    );
    expect(why).toBe(
      `${there} left of Damson jam that may leave (the others: its seal has not been checked yet); ${there + 1} asked for`,
    );
  });
});

describe('a jar that flexes (story B1)', () => {
  it('is told of at 11 h and goes to the fridge; the others are answered later: 11 on the shelf, lids unchanged', async () => {
    const db = await open();
    await cooling(db);
    const before = await lids(db);
    const early = await demoAt(db, '2025-09-14', '06:30');
    expect((await readBatch(early, B))?.out).toEqual({
      pieces: [1, 2, 3, 4, 5, 6],
      why: 'unsealed',
      ways: ['fridge', 'freezer', 'process again'],
      fridgeBy: 'Sat 20 Sep',
      processMin: 10,
    });
    expect(doneOf(await takeOut(early, gave())).said).toBe(`${B}/04 to the fridge, use by Sat 20 Sep.`);
    const morning = await demoAt(db, '2025-09-14', '08:30');
    doneOf(await checkSeals(morning, sealed({ id: 'seal-a', code: A })));
    expect(doneOf(await checkSeals(morning, sealed())).said).toBe('5 jars sealed, to B2-S1.');
    const [shelf, cold] = [await lotOfCode(db, DEMO_PLACE, B), await lotOfCode(db, DEMO_PLACE, `${B}/open`)];
    expect(shelf).toMatchObject({ onHand: 5, seal: 'sealed', flags: [] });
    expect(cold).toMatchObject({
      onHand: 1,
      kind: 'cold-jars',
      seal: 'unsealed',
      bestBefore: '2025-09-20',
      roomId: 'wrenlatch:room:kitchen-fridge',
    });
    const pieces = await piecesOf(db, DEMO_PLACE, [shelf?.id ?? '', cold?.id ?? '']);
    expect([...pieces.values()]).toEqual([[1, 2, 3, 5, 6], [4]]);
    const pantry = await readPantry(morning);
    const made = pantry.lines.find((l) => l.line === 'Damson jam')?.lots.filter((l) => CODES.some((c) => c === l.code));
    expect(made?.reduce((n, l) => n + l.count, 0)).toBe(11);
    expect(await lids(db)).toBe(before);
    const log = await logOf(db, B);
    expect([log.some((l) => l.startsWith('6 jars filled')), log.at(-1)]).toEqual([true, '5 jars sealed, to B2-S1.']);
    const trace = await readTrace(morning, `${B}/04`);
    expect([trace?.made, trace?.piece?.state]).toEqual([6, `moved to ${B}/open`]);
    expect((await readTrace(morning, `${B}/open/04`))?.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('processed again takes one new lid and the full ten minutes, and knows its fruit', async () => {
    const db = await open();
    await cooling(db);
    const before = await lids(db);
    const early = await demoAt(db, '2025-09-14', '06:30');
    expect(doneOf(await takeOut(early, gave({ way: 'process again' }))).said).toBe(
      `${B}/04 to be processed again as ${B}-R: emptied, heated, clean jars, 1 new lid, 10 minutes.`,
    );
    expect(await lids(db)).toBe(before - 1);
    const again = await readBatch(early, `${B}-R`);
    expect([again?.state, again?.sheet?.processMin, again?.jars.map((j) => [j.code, j.onHand, j.process])]).toEqual([
      'filled',
      10,
      [[`${B}-R`, 1, 'unknown']],
    ]);
    const load = { codes: [`${B}-R`], minutes: null, deviation: null };
    doneOf(await processLoad(await demoAt(db, '2025-09-14', '07:00'), { id: 'boil-again', step: 'boiling', ...load }));
    const short = await demoAt(db, '2025-09-14', '07:09');
    expect(doneOf(await processLoad(short, { id: 'out-again', step: 'out', ...load })).said).toContain(
      'not as tested (9 of 10 minutes)',
    );
    const lot = await lotOfCode(db, DEMO_PLACE, `${B}-R`);
    expect((await contentsOf(early, lot ? [lot] : [])).get(lot?.id ?? '')?.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    expect((await readTrace(early, `${B}-R/04`))?.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('is not processed again without a lid, nor named where it is not', async () => {
    const db = await open();
    await cooling(db);
    const early = await demoAt(db, '2025-09-14', '06:30');
    await db.lot.updateMany({ where: { item: 'lid-regular', placeId: DEMO_PLACE }, data: { onHand: 0 } });
    expect(refusalOf(await takeOut(early, gave({ way: 'process again' })))).toBe('no lids left; 1 asked for');
    expect(refusalOf(await takeOut(early, gave({ pieces: [7] })))).toBe(
      `jar 7 is not one of those left of ${B}: 1, 2, 3, 4, 5, 6`,
    );
    expect(doneOf(await takeOut(early, gave({ pieces: [4, 4] }))).said).toContain(`${B}/04 to the fridge`);
    expect(refusalOf(await takeOut(early, gave({ id: 'gave-twice' })))).toContain('jar 4 is not one of those left');
  });

  it('after a second one of the load, the load is looked at; both batches of it are marked', async () => {
    const db = await open();
    await cooling(db);
    const early = await demoAt(db, '2025-09-14', '06:30');
    expect(doneOf(await takeOut(early, gave())).said).not.toContain('of this load');
    expect(doneOf(await takeOut(early, gave({ id: 'gave-a', code: A, pieces: [2], way: 'freezer' }))).said).toBe(
      `${A}/02 to the freezer, best before 15 May 2026. 2 of the 12 jars of this load gave: look at lids, headspace and rims.`,
    );
    for (const code of CODES) expect((await lotOfCode(db, DEMO_PLACE, code))?.flags).toEqual([LOOK_AT_LOAD]);
  });

  it('where all gave, nothing is left to answer', async () => {
    const db = await open();
    await cooling(db);
    const early = await demoAt(db, '2025-09-14', '06:30');
    doneOf(await takeOut(early, gave({ pieces: [1, 2, 3, 4, 5, 6] })));
    expect((await batchOfCode(db, DEMO_PLACE, B))?.state).toBe('jarred');
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({ onHand: 0 });
    expect(await lotOfCode(db, DEMO_PLACE, `${B}/open`)).toMatchObject({ onHand: 6 });
  });

  it('cannot be before the canner', async () => {
    const ctx = await filled(await open());
    expect(refusalOf(await takeOut(ctx, gave()))).toBe(`${B} was not in the canner yet`);
  });
});

describe('a process that was not as tested', () => {
  const cutShort = async (db: Db) => {
    await filled(db);
    const at = await demoAt(db, '2025-09-13', '19:30');
    doneOf(await processLoad(at, { id: 'out', codes: [B], step: 'out', minutes: 8, deviation: null }));
  };

  it('leads to the canner within 2 h, to the cold within 24 h, and never to the shelf', async () => {
    const db = await open();
    await cutShort(db);
    const waysAt = async (day: string, time: string) => (await readBatch(await demoAt(db, day, time), B))?.out?.ways;
    expect(await waysAt('2025-09-13', '21:30')).toEqual(['fridge', 'freezer', 'process again']);
    expect(await waysAt('2025-09-13', '21:31')).toEqual(['fridge', 'freezer']);
    expect(await waysAt('2025-09-14', '19:31')).toEqual(['discard']);
    const morning = await demoAt(db, '2025-09-14', '08:00');
    expect(refusalOf(await checkSeals(morning, sealed()))).toContain('stays off the shelf: process not as tested');
    expect(refusalOf(await takeOut(morning, gave({ way: 'process again' })))).toContain('too late for: process again');
  });

  it('done again in full within 2 h is free of its hold', async () => {
    const db = await open();
    await cutShort(db);
    const all = { pieces: [1, 2, 3, 4, 5, 6], way: 'process again' } as const;
    doneOf(await takeOut(await demoAt(db, '2025-09-13', '20:30'), gave({ ...all, pieces: [...all.pieces] })));
    expect(await lotOfCode(db, DEMO_PLACE, `${B}-R`)).toMatchObject({ onHand: 6, hold: null, process: 'unknown' });
    const load = { id: 'out-again', codes: [`${B}-R`], step: 'out' as const, minutes: 10, deviation: null };
    doneOf(await processLoad(await demoAt(db, '2025-09-13', '21:00'), load));
    expect(await lotOfCode(db, DEMO_PLACE, `${B}-R`)).toMatchObject({ process: 'as tested', hold: null });
  });
});

describe('something different in the canner, found out afterwards', () => {
  it('turns the verdict, puts the jars on hold though they sealed, and says by their age what is left', async () => {
    const db = await open();
    await cooling(db);
    doneOf(await checkSeals(await demoAt(db, '2025-09-14', '08:00'), sealed()));
    const noon = await demoAt(db, '2025-09-14', '12:00');
    const told = { id: 'different-b', code: B, what: 'minutes of another altitude' };
    expect(doneOf(await reportDeviation(noon, told)).said).toBe(
      `${B} not as tested: minutes of another altitude. 6 jars on hold; left for them: fridge, freezer.`,
    );
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({ seal: 'sealed', process: 'not as tested' });
    const line = await readLine(noon, 'damson-jam');
    expect(line?.pieces.filter((p) => p.code.startsWith(B)).map((p) => p.mayLeave)).toEqual(Array(6).fill(false));
    expect((await readBatch(await demoAt(db, '2025-09-15', '08:00'), B))?.out).toMatchObject({
      why: 'process',
      ways: ['discard'],
    });
  });

  it('says nothing of a batch that was not in the canner', async () => {
    const ctx = await filled(await open());
    expect(refusalOf(await reportDeviation(ctx, { id: 'different', code: B, what: 'x' }))).toBe(
      `${B} is filled already`,
    );
  });
});

describe('a batch held for its pH', () => {
  it('is in no shared load, and its jars go to the fridge within 24 h', async () => {
    const db = await open();
    const ctx = await filled(db);
    await db.lot.updateMany({ where: { code: B }, data: { hold: phTooHigh(4.71, 4.6) } });
    expect((await readBatch(ctx, A))?.sharing).toEqual([]);
    expect(await readBatch(ctx, B)).toMatchObject({ sharing: [], out: { why: 'acid', ways: ['fridge', 'freezer'] } });
    const load = { id: 'boil', codes: [A, B], step: 'boiling' as const, minutes: null, deviation: null };
    expect(refusalOf(await processLoad(ctx, load))).toBe(
      `${B} is held for its pH: no boil puts that right. Leave it out of the load`,
    );
    expect(doneOf(await takeOut(ctx, gave({ pieces: [1, 2, 3, 4, 5, 6] }))).said).toContain('to the fridge, use by');
    expect((await batchOfCode(db, DEMO_PLACE, B))?.state).toBe('jarred');
  });
});
