/** Readings logged at the stove, through the acts themselves: what a known pan and cook leaves in the records is read back. */
import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { fillBatch, logReading } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { draftBatch } from '#lib/usecases/draft-batch.ts';
import { learntFigures, readLearnt } from '#lib/usecases/learn-figures.ts';
import { forgetLearnt } from '#lib/usecases/learn-forget.ts';
import { trimOfFruit } from '#lib/usecases/learn-trim.ts';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { demoAt, demoOn, doneOf } from '#test/support/demo-database.ts';
import { CODES, damsonAsk, filled, filling, lit, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');
const NOTHING = { evapGPerMin: null, lossG: null, powder: null };

async function figures(ctx: Context) {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) throw new Error('no kitchen');
  const pan = kitchen.pans.find((p) => p.maxFillPercent !== null) ?? null;
  const { homePectin, ...own } = await learntFigures(ctx, kitchen, pan);
  return { ...own, powder: homePectin.find((l) => l.item === 'apple-powder')?.sugarPerG ?? null };
}
const row = async (ctx: Context, id: string) => (await readLearnt(ctx)).rows.find((r) => r.id.startsWith(id));
const log = async (
  db: Db,
  time: string,
  code: string,
  kind: 'weight' | 'temperature' | 'brix' | 'set-test',
  value: number,
) =>
  doneOf(await logReading(await demoAt(db, '2025-09-13', time), { id: `${code}-${kind}-${time}`, code, kind, value }));

/** Both pans weighed at the boil and 10 minutes on: one lost 600 g, the other 620. */
async function weighed(db: Db): Promise<Context> {
  await lit(db);
  for (const [code, grams] of [
    [CODES[0], 600],
    [CODES[1], 620],
  ] as const) {
    await log(db, '18:10', code, 'weight', 4.6);
    await log(db, '18:20', code, 'weight', 4.6 - grams / 1000);
  }
  return demoAt(db, '2025-09-13', '18:25');
}

describe('what own batches teach', () => {
  it('is nothing before one was logged, so that the sheet’s own figures stand', async () => {
    const db = await open();
    expect(await figures(await demoAt(db, '2025-09-12', '18:00'))).toEqual(NOTHING);
    expect(await figures(await filled(db))).toEqual(NOTHING);
  });

  it('moves the pan’s figure toward what its weights showed, with the batches named', async () => {
    const db = await open();
    const ctx = await weighed(db);
    const pan = mainKitchen(ctx.place)?.pans.find((p) => p.maxFillPercent !== null);
    const learnt = await row(ctx, 'pan');
    expect(learnt?.learnt.n).toBe(2);
    expect([...(learnt?.codes ?? [])].sort()).toEqual([...CODES]);
    expect(learnt?.before.middle).toBeCloseTo(pan?.evapGPerMin ?? Number.NaN, 6);
    const { evapGPerMin } = await figures(ctx);
    // 61 g/min were seen twice; the stated figure keeps about a fifteenth of the say.
    expect(evapGPerMin).toBeGreaterThan(57);
    expect(evapGPerMin).toBeLessThan(61);
    expect(learnt?.learnt.low).toBeLessThan(61);
    expect(learnt?.learnt.high).toBeGreaterThan(61);
  });

  it('reaches the next sheet: its clock runs at what the pan was seen to lose', async () => {
    const db = await open();
    // What the two batches left of the damsons.
    const next = damsonAsk({ draws: [{ lotId: 'harvest-damsons.blemished', grams: 1500 }], trimG: null });
    const draft = async (ctx: Context) => {
      const drawn = await draftBatch(ctx, next);
      if ('refused' in drawn) throw new Error(drawn.refused);
      return drawn;
    };
    expect((await draft(await weighedIn(db))).question.pan?.evapGPerMin).toBe(45);
    const other = await open();
    const ctx = await weighed(other);
    const { evapGPerMin } = await figures(ctx);
    expect((await draft(ctx)).question.pan?.evapGPerMin).toBe(evapGPerMin);
    expect(evapGPerMin).toBeGreaterThan(57);
  });

  it('takes what stuck and was skimmed as weighed, and 0 as not weighed', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await fillBatch(ctx, { ...filling(CODES[0]), partialG: 150, skimmingsG: 40, panLossG: 60 }));
    doneOf(await fillBatch(ctx, filling(CODES[1])));
    const learnt = await row(ctx, 'losses');
    expect([learnt?.learnt.n, learnt?.codes]).toEqual([1, [CODES[0]]]);
    const { lossG } = await figures(ctx);
    expect(lossG).toBeGreaterThan(100);
    expect(lossG).toBeLessThan(120);
  });

  it('says beside the trim what is published and what was weighed here, and forgets it when asked', async () => {
    const db = await open();
    const ctx = await lit(db);
    const shown = async () => (await readBatch(ctx, CODES[1]))?.trim;
    expect(await shown()).toBe('published 10 % (From memory of handbooks); not weighed here yet');
    const batch = (await readBatch(ctx, CODES[0]))?.sheet;
    const raw = batch?.rawG ?? 0;
    // Left as suggested, it teaches nothing.
    const before = await trimOfFruit(ctx, 'damson');
    expect([before?.published, before?.learnt.n]).toEqual([0.1, 0]);
    const trimG = Math.round(raw * 0.07);
    doneOf(await fillBatch(ctx, { ...filling(CODES[0]), jars: 4, trimG }));
    const after = await trimOfFruit(ctx, 'damson');
    const share = trimG / raw;
    const byHand = Math.exp((Math.log(0.1) / 0.2 ** 2 + Math.log(share) / 0.15 ** 2) / (1 / 0.2 ** 2 + 1 / 0.15 ** 2));
    expect(after?.learnt.n).toBe(1);
    expect(after?.learnt.middle).toBeCloseTo(byHand, 9);
    expect(await shown()).toMatch(/^published 10 % \(From memory.*\), here 8 % \(.* to .*\) from 1 weighing$/);
    doneOf(await forgetLearnt(await demoAt(db, '2025-09-13', '21:00'), { id: 'forget-trim' }));
    expect((await trimOfFruit(ctx, 'damson'))?.learnt.n).toBe(0);
  });

  it('asks a measured pH before it says anything about inversion', async () => {
    const db = await open();
    await weighed(db);
    await log(db, '18:23', CODES[0], 'temperature', 102.9);
    await log(db, '18:24', CODES[0], 'brix', 65);
    const ctx = await demoAt(db, '2025-09-13', '18:25');
    expect((await row(ctx, 'inversion'))?.learnt.n).toBe(0);
    const batch = await readBatch(ctx, CODES[0]);
    await db.reading.create({
      data: {
        id: 'ph-damson',
        placeId: ctx.place.id,
        actId: 'start-damsons',
        batchId: (await db.batch.findFirstOrThrow({ where: { code: batch?.code ?? '' } })).id,
        kitchenId: null,
        kind: 'ph',
        day: ctx.today,
        at: ctx.now,
        value: 310,
        unit: 'pH',
        instrument: null,
        note: null,
      },
    });
    const learnt = await row(ctx, 'inversion');
    expect(learnt?.learnt.n).toBe(1);
    expect(learnt?.learnt.low).toBeLessThan(learnt?.learnt.middle ?? 0);
  });

  it('is forgotten on request: earlier batches no longer count, later ones do, and the records stay', async () => {
    const db = await open();
    await weighed(db);
    const evening = await demoAt(db, '2025-09-13', '18:40');
    doneOf(await forgetLearnt(evening, { id: 'forget-all' }));
    expect(await figures(evening)).toEqual(NOTHING);
    expect((await readLearnt(evening)).since).toBe('2025-09-13 18:40');
    expect((await readBatch(evening, CODES[0]))?.readings.filter((r) => r.kind === 'weight')).toHaveLength(2);
    const next = await demoAt(db, '2025-09-14', '09:00');
    const draws = [{ lotId: 'harvest-damsons.blemished', grams: 1500 }];
    const { codes } = doneOf(await startBatches(next, 'start-again', damsonAsk({ draws, trimG: 120 })));
    for (const [time, kg] of [
      ['09:10', 4.6],
      ['09:20', 4.1],
    ] as const)
      doneOf(
        await logReading(await demoAt(db, '2025-09-14', time), {
          id: `again-${time}`,
          code: codes[0] as string,
          kind: 'weight',
          value: kg,
        }),
      );
    const learnt = await row(await demoAt(db, '2025-09-14', '09:30'), 'pan');
    expect([learnt?.learnt.n, learnt?.codes]).toEqual([1, codes]);
  });

  it('counts a plate only on a batch with apple powder', async () => {
    const db = await open();
    await weighed(db);
    await log(db, '18:24', CODES[0], 'set-test', 2);
    expect((await row(await demoAt(db, '2025-09-13', '18:25'), 'apple-powder'))?.learnt.n).toBe(0);
  });

  it('keeps a strength for each lot of powder, and the next sheet takes that of the lot it draws', async () => {
    const db = await open();
    const ctx = await demoAt(db, '2025-09-12', '18:00');
    const fruit = (await loadLots(db, ctx.place.id, { kinds: ['fruit'] })).find((l) => l.onHand >= 1500);
    if (!fruit?.foodId) throw new Error('no fruit for the jam');
    const powder = (await loadLots(db, ctx.place.id, { kinds: ['set-aside'], item: 'apple-powder' }))[0];
    expect(powder?.code).toBe('S-24275-APC-1');
    await db.lot.update({ where: { id: fruit.id }, data: { foodId: 'cherry-sour', grade: 'perfect' } });
    const ask = damsonAsk({
      recipeId: 'sour-cherry-powder-jam',
      draws: [{ lotId: fruit.id, grams: 1400 }],
      trimG: 100,
      brix: null,
      softSet: 'accept',
    });
    const { codes } = doneOf(await startBatches(ctx, 'start-cherries', ask));
    expect((await figures(ctx)).powder).toBeNull();
    doneOf(await logReading(ctx, { id: 'runs', code: codes[0] as string, kind: 'set-test', value: 2 }));
    const own = await row(ctx, 'apple-powder-S-24275-APC-1');
    const untried = (await readLearnt(ctx)).rows.find((r) => r.id === 'apple-powder');
    expect([own?.learnt.n, own?.codes, untried?.learnt.n]).toEqual([1, codes, 0]);
    expect(own?.before.middle).toBeCloseTo(5.5, 1);
    expect(own?.learnt.middle).toBeGreaterThan(untried?.learnt.middle ?? Number.NaN);
    expect(untried?.learnt.middle).toBeGreaterThan(own?.before.middle ?? Number.NaN);
    expect((await figures(ctx)).powder?.typ).toBe(own?.learnt.middle);
    // The next lot in line has no batch of its own: it starts from what this one showed.
    await db.lot.update({ where: { id: powder?.id ?? '' }, data: { onHand: 0 } });
    await db.lot.create({
      data: {
        ...(await db.lot.findUniqueOrThrow({ where: { id: powder?.id ?? '' } })),
        details: { state: 'dry' },
        flags: [],
        id: 'another-powder',
        code: 'S-25270-APC-1',
        onHand: 500,
      },
    });
    expect((await figures(ctx)).powder?.typ).toBe(untried?.learnt.middle);
  });
});
