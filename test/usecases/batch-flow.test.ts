import { describe, expect, it } from 'vitest';
import { batchOfCode, readingsOf } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { fillBatch, logReading, processLoad } from '#lib/usecases/batch-flow.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readBatch, readBatches } from '#lib/usecases/read-batches.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, damsonAsk, filled, filling, lit, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');
const [A, B] = CODES;

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
