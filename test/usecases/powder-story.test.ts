/**
 * Story A3 through the acts: 24.5 kg of blemished apples to 36 pints of sauce (13.5 lb to 9 pints, USDA), 5.39 kg of trim (22 %) to 1.05 kg at 82 to 8 %
 * water and 1172 g as weighed, which 80 % leaves; in January 33 g of it to 1.30 kg of sour cherries weighed out of frozen packs.
 */
import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import type { BatchAsk } from '#lib/usecases/batch-ask.ts';
import { fillBatch } from '#lib/usecases/batch-flow.ts';
import { readChooser } from '#lib/usecases/choose-recipe.ts';
import type { Context } from '#lib/usecases/context.ts';
import { draftBatch } from '#lib/usecases/draft-batch.ts';
import { readLearnt } from '#lib/usecases/learn-figures.ts';
import { moveDemoDay } from '#lib/usecases/open-demo.ts';
import { readSetAside } from '#lib/usecases/read-set-asides.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { reportSet } from '#lib/usecases/report-set.ts';
import { endConditioning, startDrying, weighDrying } from '#lib/usecases/set-aside-acts.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { DEMO_INSTANT, demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, damsonAsk, damsons } from './damson-day.ts';

const TRIM = 'S-25270-APC-1';

/** Plays the season on from one day to another. */
async function on(db: Db, from: string, to: string, time?: string): Promise<Context> {
  await moveDemoDay(db, plainDate(from), plainDate(to), DEMO_INSTANT, time);
  return demoContext(db);
}

/** Picked on 25 September, cooked on the 27th with its trim kept. */
async function sauceDay(db: Db): Promise<{ ctx: Context; said: string }> {
  const picking = { id: 'liberty', rowId: 'A2|apple-dessert', day: '2025-09-25' };
  const apples = { readings: [bucket(25_120)], grades: { blemished: 24_500 } };
  doneOf(await recordHarvest(await demoContext(db), damsons({ ...picking, ...apples })));
  const ctx = await on(db, '2025-09-25', '2025-09-27', '18:00');
  const lot = (await loadLots(db, ctx.place.id, { kinds: ['fruit'] })).find((l) => l.parentActId === 'liberty');
  expect(lot?.code).toBe('H-25268-A2-APL-1/B');
  const draws = [{ lotId: lot?.id ?? '', grams: 24_500 }];
  const ask = damsonAsk({ recipeId: 'apple-sauce', draws, trimG: null, brix: null, waterC: null });
  const draft = await draftBatch(ctx, ask);
  if ('refused' in draft) throw new Error(draft.refused);
  expect([draft.sheet.jars.value, draft.sheet.clock?.loads.value]).toEqual([36, 4]);
  const { codes } = doneOf(await startBatches(ctx, 'start-sauce', ask));
  const filling = {
    code: codes[0] as string,
    jars: 36,
    partialG: 0,
    skimmingsG: 0,
    panLossG: 0,
    trimG: 5390,
    keepTrim: true,
  };
  expect(refusalOf(await fillBatch(ctx, { ...filling, id: 'fill-brown-core', brownCore: true }))).toMatch(
    /hens or compost/,
  );
  const { said } = doneOf(await fillBatch(ctx, { ...filling, id: 'fill-sauce' }));
  return { ctx, said };
}

/** The trim dried, conditioned and in the cupboard; 17 January. */
async function january(db: Db): Promise<Context> {
  const { ctx } = await sauceDay(db);
  doneOf(await startDrying(ctx, { id: 'dry-trim', code: TRIM, trays: 10, centiC: 5700, seedsOut: true, waxed: false }));
  const dry = await on(db, '2025-09-27', '2025-09-29');
  const told = doneOf(await weighDrying(dry, { id: 'weigh-trim', code: TRIM, grams: 1172, out: true }));
  expect(told.said).toContain('more than the 1.05 kg reckoned, inside the band');
  doneOf(await endConditioning(await on(db, '2025-09-29', '2025-10-06'), { id: 'ready-trim', code: TRIM }));
  return on(db, '2025-10-06', '2026-01-17', '18:00');
}

/** 1.30 kg from the oldest packs of sour cherries. */
async function cherryAsk(ctx: Context, change: Partial<BatchAsk> = {}): Promise<BatchAsk> {
  const packs = (await readChooser(ctx, [])).fruit.filter((f) => f.label === 'Frozen sour cherries 500 g');
  const draws = [{ lotId: packs[0]?.id ?? '', grams: 1300 }];
  return damsonAsk({ recipeId: 'sour-cherry-powder-jam', draws, trimG: null, brix: null, ...change });
}

describe('sauce day and the jam of January', () => {
  const demo = demoOn('2025-09-25');

  it('keeps the trim with its questions, expects 1.05 kg dry, and takes 1172 g inside the band of its moisture', async () => {
    const db = await demo();
    const { ctx, said } = await sauceDay(db);
    expect(said).toBe(
      `36 jars filled. 5.39 kg of trim kept as ${TRIM}: about 1.05 kg dry. Take the seeds out before it is dried.`,
    );
    const page = await readSetAside(ctx, TRIM);
    expect(page).toMatchObject({ grade: 'blemished', strength: 'untested', amount: 5390 });
    expect(page?.ways[0]?.gives).toContain('About 1.05 kg dry (937 g to 1.17 kg), from 82 % to 8 % water');
    const day = { id: 'dry-with-seeds', code: TRIM, trays: 10, centiC: 5700, waxed: false };
    expect(refusalOf(await startDrying(ctx, { ...day, seedsOut: false }))).toMatch(/take the seeds out first/);
    doneOf(await startDrying(ctx, { ...day, id: 'dry-no-seeds', seedsOut: true }));
    const out = { code: TRIM, out: true };
    // A gram over what 80 % of water leaves is not dry yet.
    expect(doneOf(await weighDrying(ctx, { ...out, id: 'weigh-too-much', grams: 1173 })).said).toContain(
      'stays on the trays',
    );
    expect(doneOf(await weighDrying(ctx, { ...out, id: 'weigh-in-band', grams: 1172 })).said).toContain('in its jar');
  });

  it('warns before it cooks, keeps what was accepted with the batch, traces through both, and learns from the set', async () => {
    const db = await demo();
    const ctx = await january(db);
    // The person's sauce stands for the script's, on whatever day the season is played on.
    const sauces = (await loadLots(db, ctx.place.id, { kinds: ['jars'] })).filter((l) => l.recipeId === 'apple-sauce');
    expect(sauces.filter((l) => l.madeOn > '2025-09-15' && l.madeOn < '2025-10-18').map((l) => l.madeOn)).toEqual([
      '2025-09-27',
    ]);
    const ask = await cherryAsk(ctx);
    const draft = await draftBatch(ctx, ask);
    if ('refused' in draft) throw new Error(draft.refused);
    const pan = draft.sheet.pans[0];
    expect(pan?.doses.map((d) => d.grams.value)).toEqual([1040, 160, 40, 33]);
    expect(Math.round(pan?.balance.finalG.value ?? 0)).toBe(1911);
    expect(draft.sheet.set?.sugarByPowder).toMatchObject({ value: 181.5, band: { low: 99, high: 297 } });
    const warned = draft.sheet.set?.softSet ?? '';
    expect(warned).toBe(
      `33 g of untested powder ${TRIM} carries about 0.18 kg (0.10-0.30) of the sugar. There is 1.24 kg of it, and the fruit is low in pectin: expect a soft set.`,
    );
    expect(draft.sheet.set?.offers.map((o) => o.split(':')[0])).toEqual([
      'more powder',
      'frozen pectin stock',
      'call it a sauce',
    ]);
    expect(refusalOf(await startBatches(ctx, 'start-unasked', ask))).toContain(warned);
    const { codes } = doneOf(await startBatches(ctx, 'start-cherries', { ...ask, softSet: 'accept' }));
    expect(codes).toEqual(['26017-SCH-A']);
    const batch = await batchOfCode(db, ctx.place.id, codes[0] as string);
    expect(batch?.inputs.softSet).toEqual({ warned, answer: 'accept' });
    expect(batch?.log[0]?.what).toContain('warned: 33 g of untested powder');
    expect((await lotOfCode(db, ctx.place.id, TRIM))?.onHand).toBe(1139);
    const [opened] = (await loadLots(db, ctx.place.id, { kinds: ['frozen'] })).filter((l) => l.unit === 'g');
    expect([opened?.label, opened?.onHand]).toEqual(['Frozen sour cherries 500 g, opened pack', 200]);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);

    const code = codes[0] as string;
    const filling = { code, jars: 6, partialG: 42, skimmingsG: 0, panLossG: 0, trimG: null, keepTrim: false };
    doneOf(await fillBatch(ctx, { ...filling, id: 'fill-cherries' }));
    const trace = await readTrace(ctx, code);
    expect(trace?.lot.household).toBe(true);
    const rows = new Set(trace?.trees.map((t) => t.slice(0, 2)));
    expect([rows.has('D1'), rows.has('A2'), trace?.parents.some((p) => p.code === TRIM)]).toEqual([true, true, true]);
    const set = { code, set: 1 as const };
    expect(refusalOf(await reportSet(ctx, { ...set, id: 'set-too-soon' }))).toMatch(
      /leave the jars untouched for 12 h/,
    );
    const next = await on(db, '2026-01-17', '2026-01-18', '18:00');
    expect(refusalOf(await reportSet(next, { ...set, id: 'set-at-a-day' }))).toMatch(
      /it may yet set. Judge it at 48 h/,
    );
    const strength = async () =>
      (await readLearnt(await demoContext(db))).rows.find((r) => r.id === `apple-powder-${TRIM}`);
    expect(await strength()).toBeUndefined();
    const second = await on(db, '2026-01-18', '2026-01-19', '19:00');
    doneOf(await reportSet(second, { ...set, id: 'set-on-the-19th' }));
    const learnt = await strength();
    expect([learnt?.learnt.n, learnt?.codes]).toEqual([1, [code]]);
    expect(learnt?.learnt.middle).not.toBeCloseTo(learnt?.before.middle ?? 0, 2);
    expect((await readSetAside(second, TRIM))?.known).toMatchObject({ word: 'learnt', batches: [code] });
  });

  it('draws pectin stock by weight from its packs, beside the powder, and adds up what both carry', async () => {
    const db = await demo();
    const ctx = await on(db, '2025-09-25', '2025-10-02', '18:00');
    const ask = await cherryAsk(ctx, { amounts: { 'pectin-stock': 700, 'apple-powder': 1200 }, softSet: 'sauce' });
    const draft = await draftBatch(ctx, ask);
    if ('refused' in draft) throw new Error(draft.refused);
    // The season's own 1172 g are all there is of powder.
    expect(draft.short).toEqual(['apple powder: 1200 asked for, 1172 left']);
    const less = { ...ask, amounts: { 'pectin-stock': 700, 'apple-powder': 60 } };
    const mixed = await draftBatch(ctx, less);
    if ('refused' in mixed) throw new Error(mixed.refused);
    expect(mixed.sheet.set?.parts.map((p) => [p.item, p.grams])).toEqual([
      ['apple-powder', 60],
      ['pectin-stock', 700],
    ]);
    // 60 g × 5.5 and 700 g × 0.6 % × 130.
    expect(mixed.sheet.set?.sugarByPowder?.value).toBeCloseTo(330 + 546, 6);
    const { codes } = doneOf(await startBatches(ctx, 'start-mixed', less));
    expect((await batchOfCode(db, ctx.place.id, codes[0] as string))?.label).toBe('Sour cherry sauce');
    const stock = (await loadLots(db, ctx.place.id, { kinds: ['set-aside'] })).filter((l) => l.item === 'pectin-stock');
    expect(stock.map((l) => [l.unit, l.onHand])).toEqual([
      ['pack', 7],
      ['g', 300],
    ]);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
  });
});
