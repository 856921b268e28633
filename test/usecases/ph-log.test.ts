/**
 * Story D10: pear-ginger read 4.71 with buffers at 4.02 and 6.72: void; read again 4.22: recorded; had it been 4.71 with
 * good buffers: on hold, not for shelf. Limit 4.6: 21 CFR 114; buffers within 0.1: extension practice.
 */
import { describe, expect, it } from 'vitest';
import { batchOfCode, readingsOf } from '#lib/store/batch-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { lotOfCode } from '#lib/store/ledger-store.ts';
import { fillBatch, processLoad } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { logPh } from '#lib/usecases/ph-log.ts';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { readLine } from '#lib/usecases/read-pantry.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { checkSeals } from '#lib/usecases/seal-check.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, CODES as DAMSONS, damsonAsk, damsons, filled } from './damson-day.ts';

const open = demoOn('2025-09-12');
const CODE = '25256-PER-A';
const PH_HOLD = 'not for the shelf before a calibrated pH reading of the cooled product';

/** Pear-ginger, cooked and filled on Saturday: on hold for want of a reading. */
async function pearGinger(db: Db): Promise<Context> {
  const friday = await demoAt(db, '2025-09-12', '18:10');
  doneOf(
    await recordHarvest(friday, {
      ...damsons(),
      id: 'harvest-pears',
      rowId: 'C2|pear-mid',
      readings: [bucket(2120)],
      grades: { perfect: 1500 },
    }),
  );
  const ctx = await demoAt(db, '2025-09-13', '18:00');
  const draws = [{ lotId: 'harvest-pears.perfect', grams: 1500 }];
  doneOf(
    await startBatches(
      ctx,
      'start-pears',
      damsonAsk({ recipeId: 'pear-ginger-conserve', draws, trimG: 200, brix: 13 }),
    ),
  );
  doneOf(
    await fillBatch(ctx, {
      id: 'fill-pears',
      code: CODE,
      jars: 4,
      partialG: 50,
      skimmingsG: 0,
      panLossG: 0,
      trimG: null,
      keepTrim: false,
    }),
  );
  return ctx;
}

const reading = (change: object = {}) => ({
  id: 'ph-1',
  code: CODE,
  pH: 4.22,
  lowRead: 4.02,
  highNominal: 7,
  highRead: 6.97,
  jar: null,
  ...change,
});
const holdOf = async (db: Db, code = CODE) => (await lotOfCode(db, DEMO_PLACE, code))?.hold;
const readingsIn = async (db: Db) =>
  (await readingsOf(db, DEMO_PLACE, { batchId: (await batchOfCode(db, DEMO_PLACE, CODE))?.id ?? '', kind: 'ph' })).map(
    (r) => r.value,
  );

describe('a pH reading', () => {
  it('with a buffer 0.14 or 0.28 off is void: the jars stay on hold, nothing counts, and the log keeps it', async () => {
    for (const highNominal of [7, 6.86]) {
      const db = await open();
      const ctx = await pearGinger(db);
      expect(await holdOf(db)).toBe(PH_HOLD);
      const told = doneOf(await logPh(ctx, reading({ pH: 4.71, highNominal, highRead: 6.72 })));
      expect(told.void).toMatch(
        /void: the meter read the .* buffer as 6\.72, more than 0\.1 off: calibrate it and read/,
      );
      expect(await readingsIn(db)).toEqual([]);
      expect(await holdOf(db)).toBe(PH_HOLD);
      expect((await readBatch(ctx, CODE))?.log.at(-1)?.what).toContain('pH 4.71 void');
    }
  });

  it('of 4.22 after it is recorded and ends the hold', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    doneOf(await logPh(ctx, reading({ pH: 4.71, highRead: 6.72 })));
    const told = doneOf(await logPh(ctx, reading({ id: 'ph-2' })));
    expect(told).toEqual({
      said: 'Recorded: pH 4.22 of the cooled product: recorded, the hold for a pH reading ends.',
      void: null,
    });
    expect(await readingsIn(db)).toEqual([422]);
    expect(await holdOf(db)).toBeNull();
    expect((await readBatch(ctx, CODE))?.ph).toMatchObject({
      wanted: false,
      tooHigh: false,
      readings: [{ pH: 4.22, buffers: '4.01 read 4.02, 7.00 read 6.97' }],
    });
  });

  it('of 4.71 with good buffers puts the jars on hold, not for shelf, and they may not leave', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    expect(doneOf(await logPh(ctx, reading({ pH: 4.71 }))).said).toContain('on hold, not for shelf (above 4.6)');
    expect(await holdOf(db)).toBe('not for shelf: pH 4.71 is above 4.6, to the freezer or the fridge');
    doneOf(await processLoad(ctx, { id: 'out-pears', codes: [CODE], step: 'out', minutes: 90, deviation: null }));
    const sunday = await demoAt(db, '2025-09-14', '07:30');
    expect(refusalOf(await checkSeals(sunday, { id: 'seal-pears', code: CODE, address: 'B2-S1' }))).toContain(
      'stays off the shelf',
    );
    expect((await readBatch(sunday, CODE))?.out).toMatchObject({ why: 'acid', ways: ['fridge', 'freezer'] });
    expect(await holdOf(db)).toContain('not for shelf: pH 4.71');
    const jars = (await readLine(sunday, 'pear-ginger-conserve'))?.pieces.filter((p) => p.code.startsWith(CODE)) ?? [];
    expect(jars.map((p) => [p.mayLeave, p.why?.slice(0, 23)])).toEqual(
      Array.from({ length: 4 }, () => [false, 'on hold: not for shelf:']),
    );
  });

  it('that is too high is not lifted by a lower one after it: the highest decides', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    doneOf(await logPh(ctx, reading({ pH: 4.71 })));
    expect(doneOf(await logPh(ctx, reading({ id: 'ph-2', pH: 4.3 }))).said).toContain('an earlier jar read 4.71');
    expect(await holdOf(db)).toContain('pH 4.71 is above 4.6');
  });

  it('of exactly 4.60 ends the hold and is marked; 4.61 does not', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    expect(doneOf(await logPh(ctx, reading({ pH: 4.6 }))).said).toContain('close to 4.6, so read a second jar');
    expect(await holdOf(db)).toBeNull();
    expect((await lotOfCode(db, DEMO_PLACE, CODE))?.flags).toContain('pH 4.60, close to 4.6: read a second jar');
    doneOf(await logPh(ctx, reading({ id: 'ph-2', pH: 4.61 })));
    expect(await holdOf(db)).toContain('pH 4.61 is above 4.6');
  });

  it('leaves a hold for a process that was cut short where it is', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    doneOf(await processLoad(ctx, { id: 'out-pears', codes: [CODE], step: 'out', minutes: 1, deviation: null }));
    expect(await holdOf(db)).toContain(`${PH_HOLD}; process not as tested`);
    doneOf(await logPh(ctx, reading()));
    expect(await holdOf(db)).toMatch(/^process not as tested/);
  });

  it('of a batch that nobody holds is recorded, and holds it when it is too high', async () => {
    const db = await open();
    const ctx = await filled(db);
    expect(doneOf(await logPh(ctx, reading({ code: DAMSONS[0], pH: 3.3 }))).said).toMatch(/: recorded\.$/);
    expect(await holdOf(db, DAMSONS[0])).toBeNull();
    doneOf(await logPh(ctx, reading({ id: 'ph-2', code: DAMSONS[0], pH: 4.7 })));
    expect(await holdOf(db, DAMSONS[0])).toContain('not for shelf');
  });

  it('sent twice is written once', async () => {
    const db = await open();
    const ctx = await pearGinger(db);
    doneOf(await logPh(ctx, reading()));
    expect(await logPh(ctx, reading())).toMatchObject({ replayed: true });
    expect(await readingsIn(db)).toEqual([422]);
  });

  it('is refused while the pan is on the fire', async () => {
    const db = await open();
    await pearGinger(db);
    await db.batch.updateMany({ where: { code: CODE }, data: { state: 'cooking' } });
    expect(refusalOf(await logPh(await demoAt(db, '2025-09-13', '18:00'), reading()))).toContain('cooking');
  });
});
