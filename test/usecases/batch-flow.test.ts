import { describe, expect, it } from 'vitest';
import { batchOfCode, readingsOf } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, piecesOf, rebuildBalances } from '#lib/store/ledger-store.ts';
import { checkSeals, fillBatch, logReading, processLoad } from '#lib/usecases/batch-flow.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readBatch, readBatches } from '#lib/usecases/read-batches.ts';
import { readPantry } from '#lib/usecases/read-pantry.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, cooling, damsonAsk, filled, filling, lit, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');
const [A, B] = CODES;
const sealed = (change: object = {}) => ({
  id: 'seal-b',
  code: B,
  unsealed: [] as number[],
  address: 'B2-S1',
  ...change,
});

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

  it('answered after 24 hours shelve them as unverified, with a note', async () => {
    const db = await open();
    await cooling(db);
    const late = await demoAt(db, '2025-09-14', '19:31');
    expect(doneOf(await checkSeals(late, sealed())).said).toBe('6 jars unverified (checked after 24 h), to B2-S1.');
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({
      seal: 'unverified',
      flags: ['seal checked after 24 h: look at each jar when it is opened'],
    });
  });

  it('of which one gave leave five on the shelf and one in the fridge, to be used within a week', async () => {
    const db = await open();
    await cooling(db);
    const lids = (await loadLots(db, DEMO_PLACE, { item: 'lid-regular' })).reduce((n, l) => n + l.onHand, 0);
    const morning = await demoAt(db, '2025-09-14', '07:30');
    doneOf(await checkSeals(morning, { id: 'seal-a', code: A, unsealed: [], address: 'B2-S1' }));
    expect(doneOf(await checkSeals(morning, sealed({ unsealed: [4] }))).said).toBe(
      '5 jars sealed, to B2-S1; 1 open jar to the fridge, to be used by 2025-09-21.',
    );
    const [shelf, open1] = [await lotOfCode(db, DEMO_PLACE, B), await lotOfCode(db, DEMO_PLACE, `${B}/open`)];
    expect(shelf).toMatchObject({ onHand: 5, seal: 'sealed' });
    expect(open1).toMatchObject({
      onHand: 1,
      kind: 'cold-jars',
      seal: 'unsealed',
      bestBefore: '2025-09-21',
      roomId: 'wrenlatch:room:kitchen-fridge',
    });
    const pieces = await piecesOf(db, DEMO_PLACE, [shelf?.id ?? '', open1?.id ?? '']);
    expect([...pieces.values()]).toEqual([[1, 2, 3, 5, 6], [4]]);
    const pantry = await readPantry(morning);
    const madeHere = pantry.lines
      .find((l) => l.line === 'Damson jam')
      ?.lots.filter((l) => CODES.some((c) => c === l.code));
    expect(madeHere?.reduce((n, l) => n + l.count, 0)).toBe(11);
    expect((await loadLots(db, DEMO_PLACE, { item: 'lid-regular' })).reduce((n, l) => n + l.onHand, 0)).toBe(lids);
    const trace = await readTrace(morning, `${B}/04`);
    expect([trace?.made, trace?.piece?.state]).toEqual([6, 'moved to the cold']);
    expect((await readTrace(morning, `${B}/open/04`))?.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('name a jar twice and it is still one jar; name one that is not there and it is refused', async () => {
    const db = await open();
    await cooling(db);
    const morning = await demoAt(db, '2025-09-14', '07:30');
    expect(refusalOf(await checkSeals(morning, sealed({ unsealed: [7] })))).toBe(`jar 7 is not one of the 6 of ${B}`);
    expect(refusalOf(await checkSeals(morning, sealed({ unsealed: [0] })))).toContain('jar 0');
    expect(doneOf(await checkSeals(morning, sealed({ unsealed: [4, 4] }))).said).toContain('5 jars sealed');
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({ onHand: 5 });
    expect(await lotOfCode(db, DEMO_PLACE, `${B}/open`)).toMatchObject({ onHand: 1 });
  });

  it('that all gave leave nothing on the shelf', async () => {
    const db = await open();
    await cooling(db);
    doneOf(await checkSeals(await demoAt(db, '2025-09-14', '07:30'), sealed({ unsealed: [1, 2, 3, 4, 5, 6] })));
    expect(await lotOfCode(db, DEMO_PLACE, B)).toMatchObject({ onHand: 0 });
    expect(await lotOfCode(db, DEMO_PLACE, `${B}/open`)).toMatchObject({ onHand: 6 });
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

describe('the trim', () => {
  it('of fruit from the ground cannot come to be, for such fruit is not cooked', async () => {
    const db = await open();
    const ctx = await weighedIn(db, { groundFall: true });
    expect(refusalOf(await startBatches(ctx, 'start-damsons', damsonAsk()))).toMatch(
      /picked up from the ground is not cooked/,
    );
    expect(await batchOfCode(db, DEMO_PLACE, A)).toBeNull();
  });

  it('of fruit found out afterwards to be ground-fall or cull is not kept for food, and nothing is written', async () => {
    const db = await open();
    const ctx = await lit(db);
    const where = { id: 'harvest-damsons.soft' };
    const keep = { ...filling(A), keepTrim: true };
    await db.lot.update({ where, data: { groundFall: true } });
    expect(refusalOf(await fillBatch(ctx, keep))).toBe(
      'the trim is not kept for food: H-25255-D3-DAM-1/S was picked up from the ground',
    );
    await db.lot.update({ where, data: { groundFall: false, grade: 'cull' } });
    expect(refusalOf(await fillBatch(ctx, keep))).toBe('the trim is not kept for food: H-25255-D3-DAM-1/S was culled');
    expect((await batchOfCode(db, DEMO_PLACE, A))?.state).toBe('cooking');
    doneOf(await fillBatch(ctx, filling(A)));
  });

  it('kept becomes a set-aside of the worst grade that went in, good for a day', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await fillBatch(ctx, { ...filling(A), keepTrim: true }));
    const [trim] = await loadLots(db, DEMO_PLACE, { item: 'fresh-trim' });
    expect(trim).toMatchObject({
      onHand: 120,
      grade: 'soft',
      bestBefore: '2025-09-14',
      kind: 'set-aside',
      label: 'Fresh trim of damson jam',
    });
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });
});

describe('filling', () => {
  it('takes the trim as weighed rather than as the sheet had it', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await fillBatch(ctx, { ...filling(A), trimG: 100, skimmingsG: 30, panLossG: 45 }));
    const act = await db.act.findUniqueOrThrow({ where: { id: `fill-${A}` }, include: { movements: true } });
    const sink = (name: string) => act.movements.find((m) => m.toSink === name)?.grams;
    expect([sink('trim'), sink('skimmings'), sink('pan-loss')]).toEqual([100, 30, 45]);
  });

  it('more than the pan held is refused, and less than it held is fine', async () => {
    const db = await open();
    const ctx = await lit(db);
    expect(refusalOf(await fillBatch(ctx, { ...filling(A), jars: 0, partialG: 2800 }))).toBe(
      `2920 g came out of ${A} but only 2850 g went in: 70 g too much`,
    );
    expect(refusalOf(await fillBatch(ctx, { ...filling(A), jars: 3, partialG: 2730 }))).toContain(
      '3 jars cannot be filled',
    );
    doneOf(await fillBatch(ctx, { ...filling(A), jars: 5, partialG: 0 }));
    expect(await lotOfCode(db, DEMO_PLACE, A)).toMatchObject({ onHand: 5 });
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('is refused when the lids run out, with the figures', async () => {
    const db = await open();
    const ctx = await lit(db);
    const lots = await loadLots(db, DEMO_PLACE, { kinds: ['lids'], item: 'lid-regular' });
    for (const [i, l] of lots.entries())
      await db.lot.update({ where: { id: l.id }, data: { onHand: i === 0 ? 5 : 0 } });
    expect(refusalOf(await fillBatch(ctx, filling(A)))).toMatch(/^5 lid left of lids .*; 6 asked for$/);
    expect((await batchOfCode(db, DEMO_PLACE, A))?.state).toBe('cooking');
  });

  it('is done once for a batch', async () => {
    const db = await open();
    const ctx = await filled(db);
    expect(await fillBatch(ctx, filling(A))).toMatchObject({ replayed: true });
    expect(refusalOf(await fillBatch(ctx, { ...filling(A), id: 'fill-again' }))).toBe(`${A} is filled already`);
  });
});

describe('the canner', () => {
  it('stopped short leaves jars that are not as tested and on hold', async () => {
    const db = await open();
    await filled(db);
    await processLoad(await demoAt(db, '2025-09-13', '19:20'), {
      id: 'boil',
      codes: [A],
      step: 'boiling',
      minutes: null,
      deviation: null,
    });
    const said = doneOf(
      await processLoad(await demoAt(db, '2025-09-13', '19:29'), {
        id: 'out',
        codes: [A],
        step: 'out',
        minutes: null,
        deviation: null,
      }),
    ).said;
    expect(said).toContain(`${A} not as tested (9 of 10 minutes)`);
    const lot = await lotOfCode(db, DEMO_PLACE, A);
    expect([lot?.process, lot?.hold]).toEqual([
      'not as tested',
      'process not as tested: cool it, then fridge, freezer or the full process again within 2 h',
    ]);
  });

  it('that left the boil is not as tested, however long it ran', async () => {
    const db = await open();
    const ctx = await filled(db);
    const said = doneOf(
      await processLoad(ctx, { id: 'out', codes: [A, B], step: 'out', minutes: 30, deviation: 'left the boil' }),
    ).said;
    expect(said).toContain('not as tested (left the boil)');
    expect((await lotOfCode(db, DEMO_PLACE, B))?.process).toBe('not as tested');
  });

  it('asks for the minutes when its clock was never started', async () => {
    const ctx = await filled(await open());
    const out = { id: 'out', codes: [A], step: 'out' as const, minutes: null, deviation: null };
    expect(refusalOf(await processLoad(ctx, out))).toBe(
      `${A}: the clock was never started. Say for how many minutes it boiled`,
    );
    expect(refusalOf(await processLoad(ctx, { ...out, codes: ['25256-XXX-A'] }))).toBe(
      'no filled batch waits for the canner',
    );
  });

  it('takes two batches in one load and shows each the other before', async () => {
    const db = await open();
    const ctx = await filled(db);
    expect((await readBatch(ctx, A))?.sharing.map((b) => b.code)).toEqual([B]);
    expect((await readBatches(ctx)).going.map((b) => [b.code, b.state])).toEqual([
      [A, 'filled'],
      [B, 'filled'],
    ]);
  });
});

describe('a reading at the stove', () => {
  it('is kept in hundredths with the batch and in its log', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await logReading(ctx, { id: 'read-1', code: A, kind: 'temperature', value: 103.04 }));
    expect(doneOf(await logReading(ctx, { id: 'read-2', code: A, kind: 'set-test', value: 2 })).said).toBe(
      'Logged: set test set.',
    );
    const batch = await batchOfCode(db, DEMO_PLACE, A);
    expect((await readingsOf(db, DEMO_PLACE, { batchId: batch?.id ?? '' })).map((r) => [r.kind, r.value])).toEqual(
      expect.arrayContaining([
        ['temperature', 10_304],
        ['set-test', 200],
      ]),
    );
    expect(batch?.log.map((l) => l.what)).toEqual(['burner lit', 'temperature: 103.04 °C', 'set test: set']);
    expect((await readBatch(ctx, A))?.readings.find((r) => r.kind === 'temperature')?.value).toBe(103.04);
  });

  it('of the boiling water typed on the sheet is the day’s', async () => {
    const db = await open();
    const ctx = await lit(db);
    expect((await readingsOf(db, DEMO_PLACE, { kind: 'water', day: ctx.today })).map((r) => r.value)).toEqual([9860]);
  });
});
