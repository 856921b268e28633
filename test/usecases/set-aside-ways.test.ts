/**
 * Ways out of a set-aside, all or part of it, to packs that stand in the pantry. Herbs: 85 to 8 % water leave 15/92 of the weight; zest 74 to 8 %
 * leaves 26/92 (dryer manuals and the estimates of the material table).
 */
import { describe, expect, it } from 'vitest';
import { isLot } from '#lib/ledger/movement.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from '#lib/usecases/context.ts';
import { contentsOf } from '#lib/usecases/jar-contents.ts';
import { packDried } from '#lib/usecases/pack-dried.ts';
import { readLabel } from '#lib/usecases/read-label.ts';
import { readPantry } from '#lib/usecases/read-pantry.ts';
import { readSetAsideSeason } from '#lib/usecases/read-set-aside-season.ts';
import { readBlend, readSetAside } from '#lib/usecases/read-set-asides.ts';
import { receiveFruit } from '#lib/usecases/receive-fruit.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { endConditioning, startDrying, takeWayOut, weighDrying } from '#lib/usecases/set-aside-acts.ts';
import { bringHerbs, cutForDrying, zestFruit } from '#lib/usecases/set-aside-makes.ts';
import { startVinegar, strainVinegar, sweetenPeel, TABLE_ONLY } from '#lib/usecases/set-aside-sweets.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const DAY = '2025-10-18' as PlainDate;

describe('ways out of a set-aside', () => {
  const demo = demoOn(DAY);

  const received = async (ctx: Context, id: string, foodId: string, grams: number) => {
    const asked = { id, day: DAY, foodId, grade: 'perfect' as const, groundFall: false, grams, typed: `${grams} g` };
    return doneOf(await receiveFruit(ctx, { ...asked, supplier: 'a neighbour', boxLot: null })).lotId;
  };
  const peelOf = async (ctx: Context, key: string) => {
    const lotId = await received(ctx, `apples-${key}-1`, 'apple-dessert', 9100);
    const cut = { id: `cut-${key}-1`, lotId, rawG: 9100, cutG: 7000, keepPeel: true };
    return doneOf(await cutForDrying(ctx, cut)).codes as [rings: string, peel: string];
  };
  /** From fresh to its cupboard, by its own target. */
  const dried = async (ctx: Context, code: string) => {
    const lay = { id: `dry-${code}`, code, trays: 4, centiC: 5000, seedsOut: true, waxed: false };
    doneOf(await startDrying(ctx, lay));
    const target = Math.floor((await readSetAside(ctx, code))?.drying?.targetG ?? 0);
    doneOf(await weighDrying(ctx, { id: `weigh-${code}`, code, grams: target, out: true }));
    const later = await demoAt(ctx.db, addDays(DAY, 8), '07:30');
    doneOf(await endConditioning(later, { id: `ready-${code}`, code }));
    return { later, target };
  };
  const held = async (ctx: Context, code: string) => lotOfCode(ctx.db, ctx.place.id, code);

  it('takes a part to the freezer, to the hens and to the trays, and leaves the rest as it was', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const [, peel] = await peelOf(ctx, 'part');
    const way = { code: peel, waterG: null, stockG: null };
    expect(refusalOf(await takeWayOut(ctx, { ...way, id: 'way-part-0', way: 'freeze', partG: 2200 }))).toMatch(
      /2\.20 kg of .* asked for, 2\.10 kg left/,
    );
    const told = doneOf(await takeWayOut(ctx, { ...way, id: 'way-part-1', way: 'freeze', partG: 600 }));
    expect(told.said).toBe(`0.60 kg is in the freezer. 1.50 kg stays as ${peel}.`);
    doneOf(await takeWayOut(ctx, { ...way, id: 'way-part-2', way: 'hens', partG: 500 }));
    const lay = { code: peel, trays: 2, centiC: 5700, seedsOut: true, waxed: false };
    doneOf(await startDrying(ctx, { ...lay, id: 'dry-part-1', partG: 400 }));
    const lots = (await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'], madeFrom: DAY })).filter(
      (l) => l.details.material === 'apple-peel-core',
    );
    expect(lots.map((l) => [l.details.state, l.onHand]).sort()).toEqual([
      ['drying', 400],
      ['fresh', 600],
      ['frozen', 600],
    ]);
    expect(lots.every((l) => l.grade === 'perfect')).toBe(true);
    expect(await rebuildBalances(ctx.db, ctx.place.id)).toEqual([]);
    // 2.10 kg of peel came off the board; what was split off is not counted twice.
    const { flow } = await readSetAsideSeason(ctx);
    expect(flow.links.find((l) => l.from === 'from apple-peel-core' && l.to === 'feed')?.grams).toBe(500);
    expect(flow.links.find((l) => l.from === 'board' && l.to === 'from apple-peel-core')?.grams).toBe(2100);
  });

  it('packs rings that ended their conditioning for the pantry', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const [rings] = await peelOf(ctx, 'pack');
    const { later, target } = await dried(ctx, rings);
    expect(target).toBe(1166);
    const pack = { id: 'pack-rings-1', name: null, parts: [{ code: rings, parts: 1 }] };
    expect(refusalOf(await packDried(later, { ...pack, packs: 12, gramsEach: 100 }))).toMatch(
      /1200 g asked for, 1166 g left/,
    );
    const { code } = doneOf(await packDried(later, { ...pack, packs: 11, gramsEach: 100 }));
    expect(code).toBe('D-25299-RNG-1');
    const lot = await held(later, code);
    expect(lot).toMatchObject({ kind: 'dried', unit: 'pack', onHand: 11, label: 'Dried apple rings' });
    expect(lot?.bestBefore).toBe((await held(later, rings))?.bestBefore);
    expect((await readPantry(later)).cold.find((c) => c.line === 'Dried apple rings')?.count).toBeGreaterThanOrEqual(
      11,
    );
    expect(await rebuildBalances(later.db, later.place.id)).toEqual([]);
  });

  it('blends herb and peel by weight, with a label that names them, the heaviest first', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const mint = doneOf(await bringHerbs(ctx, { id: 'herbs-act-1', name: 'Mint', grams: 400 })).codes[0] ?? '';
    const [, peel] = await peelOf(ctx, 'blend');
    const { target } = await dried(ctx, mint);
    expect(target).toBe(Math.floor((400 * 0.15) / 0.92));
    const { later } = await dried(await demoAt(ctx.db, DAY, '07:30'), peel);
    expect((await held(later, mint))?.label).toBe('Dried mint');
    expect((await readBlend(later)).lots.map((l) => l.code)).toEqual(expect.arrayContaining([mint, peel]));
    const blend = {
      id: 'blend-act-1',
      parts: [
        { code: peel, parts: 3 },
        { code: mint, parts: 1 },
      ],
      packs: 4,
      gramsEach: 50,
    };
    expect(refusalOf(await packDried(later, { ...blend, name: null }))).toMatch(/needs a name/);
    expect(refusalOf(await packDried(later, { ...blend, name: 'Tea', packs: 8 }))).toMatch(
      /100 g asked for, 65 g left/,
    );
    const { code } = doneOf(await packDried(later, { ...blend, name: 'Apple and mint tea' }));
    const lot = await held(later, code);
    expect([lot?.onHand, lot?.details.netG, (await held(later, mint))?.onHand]).toEqual([4, 50, 65 - 50]);
    const contents = lot && (await contentsOf(later, [lot])).get(lot.id);
    expect(contents?.ingredients?.map((i) => [i.name, i.grams])).toEqual([
      ['dried apple peel and core powder', 150],
      ['dried mint', 50],
    ]);
    const label = await readLabel(later, code, 'gift');
    expect(label?.label).toMatchObject({
      name: 'Apple and mint tea',
      ingredients: 'dried apple peel and core powder, dried mint',
      keep: 'Keep dry, dark and closed.',
      lot: code,
    });
    expect(label?.pieces).toHaveLength(4);
    expect(await rebuildBalances(later.db, later.place.id)).toEqual([]);
  });

  it('keeps zest of citrus, marks what has pith in it, and hangs only herbs', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const lemons = await received(ctx, 'lemons-act-1', 'lemon-whole', 2000);
    const zest = doneOf(await zestFruit(ctx, { id: 'zest-act-1', lotId: lemons, rawG: 1000, zestG: 50 }));
    expect((await held(ctx, zest.codes[0] ?? ''))?.flags).toEqual([]);
    const pithy = doneOf(await zestFruit(ctx, { id: 'zest-act-2', lotId: lemons, rawG: 1000, zestG: 200 }));
    expect(pithy.said).toMatch(/20 % of the fruit is much for zest/);
    const apples = await received(ctx, 'apples-zest-1', 'apple-dessert', 1000);
    expect(refusalOf(await zestFruit(ctx, { id: 'zest-act-3', lotId: apples, rawG: 500, zestG: 5 }))).toMatch(
      /no zest/,
    );
    const page = await readSetAside(ctx, zest.codes[0] ?? '');
    expect(page?.dryings.map((d) => d.way)).toEqual(['dryer', 'oven', 'windowsill']);
    expect(page?.ways.map((w) => w.id)).toEqual(['dry', 'freeze', 'candy', 'peel-sugar', 'hens', 'compost']);
    const herb = doneOf(await bringHerbs(ctx, { id: 'herbs-act-2', name: 'Sage', grams: 200 }));
    expect((await readSetAside(ctx, herb.codes[0] ?? ''))?.dryings.map((d) => d.way)).toContain('hung');
  });

  it('candies rind with sugar of the house, to the gram, and refuses waxed rind and more than went in', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const lemons = await received(ctx, 'lemons-act-2', 'lemon-whole', 2000);
    const code =
      doneOf(await zestFruit(ctx, { id: 'zest-act-4', lotId: lemons, rawG: 2000, zestG: 100 })).codes[0] ?? '';
    const sugarG = async () =>
      (await loadLots(ctx.db, ctx.place.id, { kinds: ['supply'], item: 'sugar' })).reduce((g, l) => g + l.onHand, 0);
    const before = await sugarG();
    const candy = { code, way: 'candy' as const, sugarG: 90, waterG: 50, waxed: false, packs: 2, gramsEach: 70 };
    expect(refusalOf(await sweetenPeel(ctx, { ...candy, id: 'candy-act-0', gramsEach: 121 }))).toMatch(/2 g too much/);
    expect(refusalOf(await sweetenPeel(ctx, { ...candy, id: 'candy-act-1', waxed: true }))).toMatch(/waxed/);
    doneOf(await sweetenPeel(ctx, { ...candy, id: 'candy-act-2' }));
    expect(before - (await sugarG())).toBe(90);
    expect((await held(ctx, code))?.onHand).toBe(0);
    const packs = (await loadLots(ctx.db, ctx.place.id, { kinds: ['dried'], madeFrom: DAY })).find((l) =>
      l.code.includes('CND'),
    );
    expect(packs).toMatchObject({ onHand: 2, label: 'Candied citrus peel', kind: 'dried' });
    expect(await rebuildBalances(ctx.db, ctx.place.id)).toEqual([]);
  });

  it('turns peel to vinegar that is marked as no acid to preserve with', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const [rings, peel] = await peelOf(ctx, 'vin');
    expect((await readSetAside(ctx, rings))?.ways.map((w) => w.id)).not.toContain('vinegar');
    doneOf(await startVinegar(ctx, { id: 'vinegar-act-1', code: peel, waterG: 3000, sugarG: 100 }));
    const later = await demoAt(ctx.db, addDays(DAY, 28), '07:30');
    expect((await readSetAside(later, peel))?.next).toBe('vinegar, day 28: stir it, strain it when it is sour');
    const strain = { id: 'strain-act-1', code: peel, packs: 4, gramsEach: 700 };
    expect(refusalOf(await strainVinegar(later, { ...strain, packs: 8 }))).toMatch(/400 g too much/);
    doneOf(await strainVinegar(later, strain));
    const bottles = (await loadLots(ctx.db, ctx.place.id, { kinds: ['cold-jars'] })).find((l) =>
      l.code.includes('VIN'),
    );
    expect(bottles).toMatchObject({ onHand: 4, flags: [TABLE_ONLY] });
    expect((await held(later, peel))?.onHand).toBe(0);
    expect(await rebuildBalances(ctx.db, ctx.place.id)).toEqual([]);
  });

  /** The demo's year: 5.39 kg of core and peel kept on sauce day dry to 1172 g, and 420 g of rind; 300 g of last autumn's powder went into two batches. */
  it('of the year come from the pans, dry to powder, and stand in for bought pectin within the band of the table', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const view = await readSetAsideSeason(ctx);
    expect(view.answer).toBe('5.81\u00a0kg kept from the compost, 11\u00a0g of bought pectin not needed');
    expect([view.keptG, view.fromCompostG]).toEqual([5386 + 420, 5386 + 420]);
    // 300 g x 5.5 (3 to 9) g of sugar a gram / 150
    expect(view.pectin).toEqual({ typ: 11, low: 6, high: 18 });
    expect(view.used.map((u) => [u.code, u.usedG])).toEqual([['S-24275-APC-1', 300]]);
    expect(view.used[0]?.strength).toMatch(/5\.5 g sugar a gram \(3\.0 to 9\.0\): estimate, review on value-added/);
    const grams = (from: string, to: string) => view.flow.links.find((l) => l.from === from && l.to === to)?.grams;
    expect(grams('pans', 'from apple-peel-core')).toBe(5386);
    expect(grams('from apple-peel-core', 'vapour')).toBe(5386 - 1172);
    expect(grams('now powder', 'left')).toBe(1172);
    expect(grams('now powder', 'used')).toBe(300);
  });

  it('of the year count as come off every gram of trim that left a pan or was set aside from fruit, kept or thrown', async () => {
    const ctx = await demoAt(await demo(), DAY, '07:30');
    const { lots, movements } = await seasonSnapshot(ctx);
    const kind = new Map(lots.map((l) => [l.id, l.kind]));
    const offPans = movements.filter(
      (m) =>
        isLot(m.from) &&
        (isLot(m.to) ? kind.get(m.to.lot) === 'set-aside' : m.to.sink === 'trim' && kind.get(m.from.lot) === 'batch'),
    );
    const view = await readSetAsideSeason(ctx);
    expect(view.cameOffG).toBe(offPans.reduce((g, m) => g + (m.grams ?? 0), 0));
  });
});
