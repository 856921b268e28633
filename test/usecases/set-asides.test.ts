/**
 * Set-asides from fruit to cupboard. Press: 55-67 % of the weight (growers' reports), 14 °Bx juice weighs 1.055 kg/L. Rings: 86.67 %
 * (USDA SR26) to 20 % water leave 1.17 kg of 7.00 kg. Core and peel: 82 to 8 % leave 1.05 kg of 5.39 kg.
 */
import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, movementsOf, rebuildBalances } from '#lib/store/ledger-store.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from '#lib/usecases/context.ts';
import { dryingOf } from '#lib/usecases/drying-of.ts';
import { dueList } from '#lib/usecases/due-list.ts';
import { pressed } from '#lib/usecases/press-view.ts';
import { readSetAside } from '#lib/usecases/read-set-asides.ts';
import { readToday } from '#lib/usecases/read-today.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import {
  endConditioning,
  moveDrying,
  shakeJar,
  startDrying,
  takeWayOut,
  weighDrying,
} from '#lib/usecases/set-aside-acts.ts';
import { cutForDrying, pressFruit } from '#lib/usecases/set-aside-makes.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, damsons } from './damson-day.ts';

describe('set-asides', () => {
  const demo = demoOn('2025-10-18');

  const pick = async (ctx: Context, id: string, rowId: string, kg: number, groundFall = false) => {
    const grams = Math.round(kg * 1000);
    const day = ctx.today;
    doneOf(
      await recordHarvest(
        ctx,
        damsons({ id, rowId, day, groundFall, readings: [bucket(grams + 620)], grades: { perfect: grams } }),
      ),
    );
    return (await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] })).find((l) => l.parentActId === id);
  };
  const rowOf = (ctx: Context, foodId: string) => {
    const crop = ctx.place.crops.find((c) => c.foodId === foodId && c.plantings.length > 0);
    return `${crop?.plantings[0]?.row}|${crop?.code}`;
  };

  it('expects of 108 kg of cider apples 67 quarts, 59 to 72, 39 kg of pomace, ten loads of ten minutes here', async () => {
    const ctx = await demoAt(await demo(), '2025-10-18', '07:30');
    const e = pressed(ctx, 'apple-cider-sweet', 108);
    expect(e.juiceKg.typ).toBeCloseTo(66.96, 2);
    expect(e.litres).toBeCloseTo(63.5, 1);
    expect(e.brix).toBe(14);
    expect(e.quarts).toEqual({ low: 59, typ: 67, high: 72 });
    expect(e.pomaceKg).toBeCloseTo(38.9, 1);
    expect(e.process).toMatchObject({ minutes: 10, loads: 10 });
    // The row is printed for apple juice: no other fruit borrows its minutes.
    for (const other of ['pear', 'elderberry-european', 'quince']) expect(pressed(ctx, other, 50).process).toBeNull();
  });

  it('presses sound fruit to the gram and refuses what lay on the ground', async () => {
    const db = await demo();
    const ctx = await demoAt(db, '2025-10-18', '07:30');
    const sound = await pick(ctx, 'cider-apples-1', rowOf(ctx, 'apple-cider-sweet'), 108);
    const fallen = await pick(ctx, 'cider-apples-2', rowOf(ctx, 'apple-cider-sweet'), 12, true);
    const ask = { juiceG: 67_000, pomaceG: 39_000, keepPomace: true };
    expect(
      refusalOf(
        await pressFruit(ctx, {
          ...ask,
          id: 'press-act-1',
          draws: [{ lotId: fallen?.id ?? '', grams: 12_000 }],
          juiceG: 7000,
          pomaceG: 4000,
        }),
      ),
    ).toMatch(/picked up from the ground: not for juice, peel or pomace.*Hens or compost/);
    const told = doneOf(
      await pressFruit(ctx, { ...ask, id: 'press-act-2', draws: [{ lotId: sound?.id ?? '', grams: 108_000 }] }),
    );
    const [juice, pomace] = await Promise.all(told.codes.map((c) => lotOfCode(db, ctx.place.id, c)));
    expect([juice?.onHand, pomace?.onHand, pomace?.grade]).toEqual([67_000, 39_000, 'perfect']);
    expect(pomace?.details).toMatchObject({ material: 'apple-pomace', state: 'fresh' });
    const out = (await movementsOf(db, ctx.place.id, [sound?.id ?? ''])).filter((m) => 'lot' in m.from);
    expect(out.reduce((g, m) => g + (m.grams ?? 0), 0)).toBe(108_000);
    expect(
      refusalOf(await pressFruit(ctx, { ...ask, id: 'press-act-3', draws: [{ lotId: fallen?.id ?? '', grams: 1 }] })),
    ).toBeDefined();
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
  });

  it('gives juice and pomace all their parents and the worst grade, a code for each pressing, and no pomace of pears', async () => {
    const db = await demo();
    const ctx = await demoAt(db, '2025-10-18', '07:30');
    const row = rowOf(ctx, 'apple-dessert');
    const [a, b] = [await pick(ctx, 'apples-press-1', row, 40), await pick(ctx, 'apples-press-2', row, 10)];
    const draws = [
      { lotId: a?.id ?? '', grams: 20_000 },
      { lotId: b?.id ?? '', grams: 5000 },
    ];
    const press = (id: string) => pressFruit(ctx, { id, draws, juiceG: 15_000, pomaceG: 9000, keepPomace: true });
    const [first, second] = [doneOf(await press('press-act-4')), doneOf(await press('press-act-5'))];
    expect(new Set([...first.codes, ...second.codes]).size).toBe(4);
    for (const code of first.codes) {
      const lot = await lotOfCode(db, ctx.place.id, code);
      const into = (await movementsOf(db, ctx.place.id, [lot?.id ?? ''])).flatMap((m) =>
        'lot' in m.from ? [m.from.lot] : [],
      );
      expect(new Set(into)).toEqual(new Set([a?.id, b?.id]));
    }
    const pears = await pick(ctx, 'pears-press-1', rowOf(ctx, 'pear'), 20);
    const pear = { draws: [{ lotId: pears?.id ?? '', grams: 20_000 }], juiceG: 12_000, pomaceG: 7000 };
    expect(refusalOf(await pressFruit(ctx, { ...pear, id: 'press-act-6', keepPomace: true }))).toMatch(
      /no material that is known/,
    );
    expect(doneOf(await pressFruit(ctx, { ...pear, id: 'press-act-7', keepPomace: false })).codes).toHaveLength(1);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
  });

  /** Story B5 until the rings are on the trays. */
  const ringsOnTrays = async (db: Db) => {
    const ctx = await demoAt(db, '2025-10-18', '07:30');
    const apples = await pick(ctx, 'apples-for-rings', rowOf(ctx, 'apple-dessert'), 9.1);
    const told = doneOf(
      await cutForDrying(ctx, { id: 'cut-act-1', lotId: apples?.id ?? '', rawG: 9100, cutG: 7000, keepPeel: true }),
    );
    const [rings = '', peel = ''] = told.codes;
    doneOf(
      await startDrying(ctx, { id: 'dry-act-1', code: rings, trays: 10, centiC: 5700, seedsOut: false, waxed: false }),
    );
    return { rings, peel };
  };
  const at = (db: Db, days: number, time: string) => demoAt(db, addDays('2025-10-18' as PlainDate, days), time);

  it('taken out early stay on the trays; drops send them back; the date begins when conditioning ends', async () => {
    const db = await demo();
    const { rings } = await ringsOnTrays(db);
    const evening = await at(db, 0, '16:30');
    const early = doneOf(await weighDrying(evening, { id: 'weigh-act-1', code: rings, grams: 1520, out: true }));
    expect(early.said).toBe(
      '0.35 kg of water still to go: target 1.17 kg. It stays on the trays; conditioning does not start.',
    );
    expect((await lotOfCode(db, evening.place.id, rings))?.onHand).toBe(7000);
    expect(refusalOf(await weighDrying(evening, { id: 'weigh-act-2', code: rings, grams: 1600, out: false }))).toMatch(
      /1600 g is more than the 1520 g/,
    );
    const night = await at(db, 0, '22:00');
    doneOf(await weighDrying(night, { id: 'weigh-act-3', code: rings, grams: 1170, out: true }));
    const jar = await lotOfCode(db, night.place.id, rings);
    expect([jar?.onHand, jar?.details.state, jar?.bestBefore]).toEqual([1170, 'conditioning', null]);
    const day3 = await at(db, 3, '07:30');
    expect(refusalOf(await endConditioning(day3, { id: 'ready-act-1', code: rings }))).toMatch(
      /3 days in the jar; it takes 4/,
    );
    doneOf(await shakeJar(day3, { id: 'shake-act-1', code: rings, drops: true }));
    expect((await lotOfCode(db, day3.place.id, rings))?.details.state).toBe('drying');
    const again = dryingOf((await lotOfCode(db, day3.place.id, rings)) ?? { details: {} });
    expect(again).toMatchObject({ startG: 1170, weighings: [], end: null });
    expect(again?.targetG).toBeCloseTo(1166.4, 1);
    doneOf(await weighDrying(day3, { id: 'weigh-act-9', code: rings, grams: 1172, out: false }));
    doneOf(await weighDrying(await at(db, 3, '18:00'), { id: 'weigh-act-4', code: rings, grams: 1150, out: true }));
    const day10 = await at(db, 10, '07:30');
    doneOf(await shakeJar(day10, { id: 'shake-act-2', code: rings, drops: false }));
    doneOf(await endConditioning(day10, { id: 'ready-act-2', code: rings }));
    const dry = await lotOfCode(db, day10.place.id, rings);
    expect([dry?.onHand, dry?.details.state, dry?.label]).toEqual([1150, 'dry', 'Dried apple rings']);
    expect((dry?.bestBefore ?? '') > addDays('2025-10-28' as PlainDate, 120)).toBe(true);
    expect(await rebuildBalances(db, day10.place.id)).toEqual([]);
  });

  it('of apple core and peel want their seeds out, and become what a recipe draws on', async () => {
    const db = await demo();
    const { peel } = await ringsOnTrays(db);
    const ctx = await at(db, 0, '08:00');
    expect(
      refusalOf(
        await startDrying(ctx, { id: 'dry-act-2', code: peel, trays: 5, centiC: 5700, seedsOut: false, waxed: false }),
      ),
    ).toMatch(/take the seeds out first/);
    doneOf(
      await startDrying(ctx, { id: 'dry-act-3', code: peel, trays: 5, centiC: 5700, seedsOut: true, waxed: false }),
    );
    const target = dryingOf((await lotOfCode(db, ctx.place.id, peel)) ?? { details: {} })?.targetG ?? 0;
    expect(target).toBeCloseTo((2100 * 0.18) / 0.92, 6);
    doneOf(
      await weighDrying(await at(db, 1, '07:30'), {
        id: 'weigh-act-5',
        code: peel,
        grams: Math.floor(target),
        out: true,
      }),
    );
    const later = await at(db, 8, '07:30');
    doneOf(await endConditioning(later, { id: 'ready-act-3', code: peel }));
    expect((await lotOfCode(db, ctx.place.id, peel))?.item).toBe('apple-powder');
  });

  it('on a windowsill say what the room’s air leaves in them, and go on in the dryer to the same weight', async () => {
    const db = await demo();
    const ctx = await at(db, 0, '07:30');
    const apples = await pick(ctx, 'apples-for-sill', rowOf(ctx, 'apple-dessert'), 9.1);
    const cut = await cutForDrying(ctx, {
      id: 'cut-act-5',
      lotId: apples?.id ?? '',
      rawG: 9100,
      cutG: 7000,
      keepPeel: false,
    });
    const code = doneOf(cut).codes[0] ?? '';
    // Apple at 18 °C and 70 % stops at 21.0 %, at 22 °C and 45 % at 11.0 % (byproduct tables, GAB isotherm).
    const asked = async (roomC: string, humidity: string) =>
      (await readSetAside(ctx, code, { roomC, humidity }))?.dryings ?? [];
    expect((await asked('18', '70')).map((d) => [d.way, d.never])).toEqual([
      ['dryer', false],
      ['oven', false],
      ['windowsill', true],
    ]);
    expect((await asked('18', '70'))[2]?.gets).toMatch(/^this air stops at 21 % water \(18 to 24\) and does not get/);
    expect((await asked('22', '45'))[2]).toMatchObject({
      never: false,
      gets: 'this air stops at 11 % water (8 to 14)',
    });
    expect((await asked('22', '45'))[2]?.hours).toMatch(/days$/);
    const lay = { code, trays: 10, centiC: 1800, seedsOut: false, waxed: false };
    expect(refusalOf(await startDrying(ctx, { ...lay, id: 'dry-act-6', way: 'hung', humidityPct: 70 }))).toMatch(
      /cannot be hung/,
    );
    const told = doneOf(await startDrying(ctx, { ...lay, id: 'dry-act-7', way: 'windowsill', humidityPct: 70 }));
    expect(told.said).toBe('7.00 kg is on the windowsill, 18 °C and 70 %.');
    const page = await readSetAside(ctx, code);
    expect(page?.drying).toMatchObject({ end: null, roomAir: true });
    expect(page?.drying?.done).toMatch(/stops at 21 % water/);
    const later = await at(db, 4, '07:30');
    doneOf(await weighDrying(later, { id: 'weigh-act-12', code, grams: 1400, out: false }));
    doneOf(await moveDrying(later, { id: 'move-act-1', code, way: 'dryer', trays: 10, centiC: 5700 }));
    const now = dryingOf((await lotOfCode(db, ctx.place.id, code)) ?? { details: {} });
    expect(now).toMatchObject({ startG: 1400, roomAir: false, stop: null, where: 'on 10 trays at 57 °C' });
    expect(now?.targetG).toBeCloseTo((7000 * (1 - 0.8667)) / 0.8, 6);
    expect(now?.end?.p50).toBeLessThan(8);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
  });

  it('boiled for stock lose no gram, and go to the hens when asked', async () => {
    const db = await demo();
    const { peel } = await ringsOnTrays(db);
    const ctx = await at(db, 0, '08:00');
    const way = { code: peel, waterG: 2000, stockG: 2500 };
    expect(refusalOf(await takeWayOut(ctx, { ...way, id: 'way-act-1', way: 'stock', stockG: 5000 }))).toMatch(
      /900 g too much/,
    );
    doneOf(await takeWayOut(ctx, { ...way, id: 'way-act-2', way: 'stock' }));
    expect((await lotOfCode(db, ctx.place.id, peel))?.onHand).toBe(0);
    expect(refusalOf(await takeWayOut(ctx, { ...way, id: 'way-act-3', way: 'hens' }))).toMatch(/nothing is left/);
    expect(await rebuildBalances(db, ctx.place.id)).toEqual([]);
    expect(await readSetAside(ctx, 'S-00000-XXX-1')).toBeNull();
  });

  it('stand on the list of what is due: on the trays, then each day in the jar', async () => {
    const db = await demo();
    const { rings } = await ringsOnTrays(db);
    const due = async (ctx: Context) => (await dueList(ctx)).filter((d) => d.what.includes(rings));
    const [trays] = await due(await at(db, 0, '08:00'));
    expect(trays?.what).toBe(`Weigh the trays: Peeled apple rings ${rings}`);
    expect(trays && 'at' in trays.when && trays.when.until > trays.when.at).toBe(true);
    doneOf(await weighDrying(await at(db, 0, '22:00'), { id: 'weigh-act-8', code: rings, grams: 1170, out: true }));
    expect((await due(await at(db, 0, '22:30'))).map((d) => 'day' in d.when && d.when.day)).toEqual(
      [19, 20, 21, 22, 23, 24, 25].map((d) => `2025-10-${d}`),
    );
    const day2 = await at(db, 2, '07:30');
    doneOf(await shakeJar(day2, { id: 'shake-act-3', code: rings, drops: false }));
    expect(await due(day2)).toHaveLength(5);
    expect((await readToday(await at(db, 3, '07:30'))).due.map((d) => d.text)).toContain(
      `Shake the jar: Peeled apple rings ${rings}: today`,
    );
  });

  it('are predicted sooner and more narrowly with each weighing', async () => {
    const db = await demo();
    const { rings } = await ringsOnTrays(db);
    const ctx = await at(db, 0, '09:30');
    const width = async () => {
      const end = dryingOf((await lotOfCode(db, ctx.place.id, rings)) ?? { details: {} })?.end;
      return end ? Math.log(end.p90 / end.p10) : Number.NaN;
    };
    const before = await width();
    doneOf(await weighDrying(ctx, { id: 'weigh-act-6', code: rings, grams: 5200, out: false }));
    const once = await width();
    doneOf(await weighDrying(await at(db, 0, '11:30'), { id: 'weigh-act-7', code: rings, grams: 3700, out: false }));
    const twice = await width();
    expect(once).toBeLessThan(before);
    expect(twice).toBeLessThan(once);
  });
});
