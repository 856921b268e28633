import { describe, expect, it } from 'vitest';
import { hoursLeft } from '#lib/science/perish-clock.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { fillBatch, processLoad } from '#lib/usecases/batch-flow.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readSheet } from '#lib/usecases/read-sheet.ts';
import { lotClock, readToday } from '#lib/usecases/read-today.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, damsons, filling, lit, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');

describe('today', () => {
  it('lists what turns, the soonest first, and adds up to all the fruit there is', async () => {
    const db = await open();
    const ctx = await demoAt(db, '2025-09-12', '18:10');
    doneOf(await recordHarvest(ctx, damsons()));
    const view = await readToday(ctx);
    const hours = view.turning.map((t) => t.hours);
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
    const fruit = await loadLots(db, DEMO_PLACE, { kinds: ['fruit'] });
    const there = fruit.reduce((g, l) => g + l.onHand, 0);
    expect(view.totalG + view.pastG + view.cullG).toBe(there);
    const shown = view.turning.filter(
      (t) => t.name === 'Damson' && t.lotIds.some((id) => id.startsWith('harvest-damsons')),
    );
    expect(shown.map((t) => t.grade).sort()).toEqual(['blemished', 'perfect', 'soft']);
  });

  it('gives a lot the hours its table gives at the middle of its store’s range, less its age', async () => {
    const db = await open();
    doneOf(await recordHarvest(await demoAt(db, '2025-09-12', '18:10'), damsons()));
    const later = await demoAt(db, '2025-09-13', '06:10');
    const [lot] = await loadLots(db, DEMO_PLACE, { ids: ['harvest-damsons.blemished'] });
    if (!lot) throw new Error('no lot');
    const fresh = hoursLeft({ foodId: 'damson', grade: 'blemished', storeTempC: 5.5, ageHours: 0 }).hours;
    expect(lotClock(later, lot)?.hours).toBeCloseTo(fresh - 12, 6);
    expect(lotClock(later, { ...lot, foodId: 'no-such-fruit' })).toBeNull();
  });

  it('says of each batch what it asks for next', async () => {
    const db = await open();
    const ctx = await lit(db);
    const due = async (day: string, time: string) =>
      (await readToday(await demoAt(db, day, time))).due.find((d) => d.href === `/batches/${CODES[0]}`);
    expect((await due('2025-09-13', '18:00'))?.text).toBe('Damson jam 25256-DAM-A: on the stove');
    doneOf(await fillBatch(ctx, filling(CODES[0])));
    expect((await due('2025-09-13', '18:30'))?.text).toContain('to be processed');
    doneOf(
      await processLoad(await demoAt(db, '2025-09-13', '19:30'), {
        id: 'out',
        codes: [CODES[0]],
        step: 'out',
        minutes: 10,
        deviation: null,
      }),
    );
    expect((await due('2025-09-13', '22:30'))?.text).toContain('check the seals in 9 h');
    expect(await due('2025-09-14', '08:00')).toMatchObject({
      late: false,
      text: expect.stringContaining('check the seals now (12 h'),
    });
    expect(await due('2025-09-14', '16:00')).toMatchObject({ late: true });
    expect(await due('2025-09-14', '20:00')).toMatchObject({
      late: true,
      text: expect.stringContaining('nobody checked'),
    });
  });
});

describe('the sheet from what was typed', () => {
  const typed = {
    recipe: 'damson-jam',
    lot: ['harvest-damsons.soft', 'harvest-damsons.blemished'],
    kg: ['1,04', '1.96'],
    trim: '0.24',
    brix: '14',
    water: '98.6',
  };

  it('answers in one line', async () => {
    const ctx = await weighedIn(await open());
    const sheet = await readSheet(ctx, typed);
    if ('refused' in sheet) throw new Error(sheet.refused);
    expect(sheet.answer).toBe('Damson jam: 2 batches, 12 jars in all');
    expect(sheet.sub).toContain('Cook each to 2.14 kg, then 10 minutes in the canner.');
    expect(sheet.props.typed.lots.map((l) => [l.kg, l.onHandKg])).toEqual([
      ['1.04', '1.040'],
      ['1.96', '3.700'],
    ]);
  });

  it('refuses in the same place what cannot be', async () => {
    const ctx = await weighedIn(await open());
    expect(refusalOf(await readSheet(ctx, { ...typed, recipe: 'no-such-jam' }))).toBe(
      '"no-such-jam" is not a recipe of this place',
    );
    expect(refusalOf(await readSheet(ctx, { ...typed, lot: [] }))).toBe('choose the fruit first');
    // What may stay empty is left out when it cannot be: the sheet stands, and the typed text with it.
    expect(await readSheet(ctx, { ...typed, water: '212' })).toMatchObject({
      problem: expect.stringContaining('it must lie between 80 and 103'),
      props: { typed: { water: '212' } },
    });
    expect(refusalOf(await readSheet(ctx, { ...typed, kg: ['9', '1.96'] }))).toBe(
      'Damson, soft: 9000 g asked for, 1040 g left (H-25255-D3-DAM-1/S)',
    );
  });
});
