/**
 * The demo's own season: the trim of sauce day, dried to powder in autumn, is in a jam of 17 January 2026 (180 g to 1.30 kg of sour cherries
 * weighed out of frozen packs), and the set seen on 19 January is what its strength is learnt from.
 */
import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { openContext } from '#lib/usecases/context.ts';
import { readLearnt } from '#lib/usecases/learn-figures.ts';
import { DEMO_LAST_DAY, DEMO_PLACE, moveDemoDay } from '#lib/usecases/open-demo.ts';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { readRecall } from '#lib/usecases/read-recall.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { DEMO_INSTANT, demoContext, demoOn } from '#test/support/demo-database.ts';

const POWDER = 'S-25270-APC-1';
const JAM = '26017-SCH-A';

describe('the powder of autumn in the jam of January', () => {
  const open = demoOn('2026-01-19');

  const strengths = async (ctx: Awaited<ReturnType<typeof demoContext>>) => {
    const { rows } = await readLearnt(ctx);
    return {
      own: rows.find((r) => r.id === `apple-powder-${POWDER}`),
      untried: rows.find((r) => r.id === 'apple-powder'),
    };
  };

  it('is weighed out of frozen packs to the gram: 2.6 packs, one opened, and 992 g of powder left', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const batch = await readBatch(ctx, JAM);
    expect(batch?.sheet).toMatchObject({ preparedG: 1300, mixG: 2720, jars: 6, shelf: true, household: true });
    expect(batch?.sheet?.doses.map((d) => d.grams)).toEqual([1040, 160, 40, 180]);
    expect(batch?.jars.map((j) => [j.code, j.onHand, j.process, j.seal])).toEqual([[JAM, 6, 'as tested', 'sealed']]);
    const packs = (await loadLots(db, DEMO_PLACE, { kinds: ['frozen'], emptied: true })).filter(
      (l) => l.recipeId === 'frozen-sour-cherries',
    );
    const opened = packs.filter((l) => l.unit === 'g');
    expect(opened.map((l) => [l.code, l.onHand])).toEqual([[`${batch?.inputs[0]?.code}/opened-1`, 200]]);
    // Ten packs stood there; two and an opened one left.
    expect(packs.filter((l) => l.unit === 'pack').reduce((n, l) => n + l.onHand, 0)).toBe(7);
    expect((await lotOfCode(db, DEMO_PLACE, POWDER))?.onHand).toBe(1172 - 180);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('traces back to the cherry trees of D1 and, through the powder, to the apple rows, and forward from the powder to the six jars', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const trace = await readTrace(ctx, JAM);
    expect(trace?.parents.map((p) => p.code)).toContain(POWDER);
    const rows = new Set(trace?.trees.map((t) => t.slice(0, 2)));
    expect(rows.has('D1')).toBe(true);
    expect(rows.has('A2')).toBe(true);
    const recall = await readRecall(ctx, POWDER);
    expect(recall?.jars.map((j) => j.code)).toEqual([1, 2, 3, 4, 5, 6].map((n) => `${JAM}/0${n}`));
    // And from the cherries: the packs that are left, and the same six jars.
    const cherries = (await batchOfCode(db, DEMO_PLACE, JAM))?.inputs.lots as { code: string }[];
    expect((await readRecall(ctx, cherries[0]?.code ?? ''))?.jars.map((j) => j.code)).toEqual(
      expect.arrayContaining([`${JAM}/01`, `${JAM}/06`]),
    );
  });

  it('has its strength learnt from the set that was seen: untested on the 19th, learnt on the 20th', async () => {
    const db = await open();
    const before = await strengths(await demoContext(db));
    expect(before.own).toBeUndefined();
    expect(before.untried?.learnt.middle).toBeCloseTo(5.5, 1);
    await moveDemoDay(db, plainDate('2026-01-19'), DEMO_LAST_DAY, DEMO_INSTANT);
    const ctx = await openContext(db, DEMO_PLACE, DEMO_INSTANT);
    if (!ctx) throw new Error('the demo is not open');
    const after = await strengths(ctx);
    expect([after.own?.learnt.n, after.own?.codes]).toEqual([1, [JAM]]);
    expect(after.own?.learnt.middle).toBeGreaterThan((before.untried?.learnt.middle ?? 0) + 0.05);
    expect(after.untried?.learnt.middle).toBeLessThan(after.own?.learnt.middle ?? 0);
    expect((await readBatch(ctx, JAM))?.set).toEqual({ said: 'set' });
  });
});
