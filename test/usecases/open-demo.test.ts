import { describe, expect, it } from 'vitest';
import { loadActs } from '#lib/store/act-store.ts';
import { batchOfCode } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { listPlaces, loadPlace } from '#lib/store/place-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { plantCrop, receive } from '#lib/usecases/change-place.ts';
import { openContext } from '#lib/usecases/context.ts';
import { DEMO_PLACE, moveDemoDay, openDemo } from '#lib/usecases/open-demo.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { readLine } from '#lib/usecases/read-pantry.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { checkSeals } from '#lib/usecases/seal-check.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { DEMO_INSTANT, demoAt, demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, CODES, cooling, damsons } from './damson-day.ts';

const open = demoOn('2025-09-12');
const day = plainDate;
const LATER = new Date(DEMO_INSTANT.getTime() + 60_000);
const one = { slug: 'damson-jam', count: 1, to: 'eaten' as const, who: null, person: null, at: null };

describe('the demo moved on', () => {
  it('keeps what a person picked that day and leaves the script’s own picking of it out', async () => {
    const db = await open();
    doneOf(await recordHarvest(await demoContext(db), damsons()));
    await moveDemoDay(db, day('2025-09-12'), day('2025-09-14'), LATER);
    const picks = (
      await loadActs(db, DEMO_PLACE, { kinds: ['harvest'], from: day('2025-09-12'), to: day('2025-09-13') })
    ).filter((a) => a.id === 'harvest-damsons' || a.payload.crop === 'damson');
    expect(picks.map((a) => [a.day, a.id])).toEqual([
      ['2025-09-13', 'wrenlatch:season:pick-damson-2025-09-13'],
      ['2025-09-12', 'harvest-damsons'],
    ]);
    expect((await demoContext(db)).today).toBe('2025-09-14');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('takes the script’s picking where nobody recorded one, and another fruit’s in any case', async () => {
    const db = await open();
    doneOf(await recordHarvest(await demoContext(db), damsons({ rowId: 'D3|plum-prune' })));
    await moveDemoDay(db, day('2025-09-12'), day('2025-09-13'), LATER);
    const crops = (
      await loadActs(db, DEMO_PLACE, { kinds: ['harvest'], from: day('2025-09-12'), to: day('2025-09-12') })
    ).map((a) => a.payload.crop);
    expect(crops).toContain('damson');
    expect(crops).not.toContain('plum-prune');
  });

  it('brings in what the script had coming beside what the person brought in that day', async () => {
    const db = await open();
    await moveDemoDay(db, day('2025-09-12'), day('2025-09-15'), LATER);
    const ctx = await demoContext(db);
    const lids = { item: 'lid-regular', qty: 12, supplier: 'a shop' };
    expect(doneOf(await receive(ctx, { id: 'our-own-lids', ...lids })).code).toBe('R-25258-LID-1');
    await moveDemoDay(db, day('2025-09-15'), day('2025-09-16'), LATER);
    expect((await lotOfCode(db, DEMO_PLACE, 'R-25258-LID-2'))?.parentActId).toBe('wrenlatch:season:receive-lids-09-15');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('in small steps comes to the same stock as in one', async () => {
    const [steps, jump] = [await open(), await open()];
    await moveDemoDay(steps, day('2025-09-12'), day('2025-09-20'), LATER);
    await moveDemoDay(steps, day('2025-09-20'), day('2025-10-20'), LATER);
    await moveDemoDay(jump, day('2025-09-12'), day('2025-10-20'), LATER);
    const stock = async (db: typeof steps) =>
      (await loadLots(db, DEMO_PLACE)).map((l) => [l.code, l.onHand, l.address, l.seal]);
    expect(await stock(steps)).toEqual(await stock(jump));
    expect(await rebuildBalances(steps, DEMO_PLACE)).toEqual([]);
  });

  it('pressed twice plays the days once', async () => {
    const db = await open();
    await Promise.all([1, 2].map(() => moveDemoDay(db, day('2025-09-12'), day('2025-09-16'), LATER)));
    const once = await open();
    await moveDemoDay(once, day('2025-09-12'), day('2025-09-16'), LATER);
    expect(await db.act.count()).toBe(await once.act.count());
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('to November has the person’s own damson jam as the oldest, and the jar of it that is taken is their first', async () => {
    const db = await open();
    await cooling(db);
    const morning = await demoAt(db, '2025-09-14', '07:30');
    for (const code of CODES) doneOf(await checkSeals(morning, { id: `seal-${code}`, code, address: 'B2-S1' }));
    await moveDemoDay(db, day('2025-09-12'), day('2025-11-20'), LATER);
    expect(doneOf(await takeJars(await demoContext(db), { id: 'take-a-damson', ...one })).jars).toEqual([
      '25256-DAM-A/01',
    ]);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('over the last of the year ends with the person’s jars beside the season’s', async () => {
    const db = await open();
    doneOf(await recordHarvest(await demoContext(db), damsons({ readings: [bucket(1120)], grades: { perfect: 500 } })));
    await moveDemoDay(db, day('2025-09-12'), day('2026-01-15'), LATER);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
    expect(await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/P')).not.toBeNull();
    expect((await readLine(await demoContext(db), 'apple-sauce'))?.onHand).toBe(39);
  });
});

describe('the demo moved back', () => {
  it('is begun again at that day, without the person’s own entries', async () => {
    const db = await open();
    doneOf(await recordHarvest(await demoContext(db), damsons()));
    await moveDemoDay(db, day('2025-09-12'), day('2025-09-01'), LATER);
    expect((await demoContext(db)).today).toBe('2025-09-01');
    expect(await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/P')).toBeNull();
    const fresh = await open();
    await openDemo(fresh, day('2025-09-01'), DEMO_INSTANT);
    expect((await loadLots(db, DEMO_PLACE)).map((l) => [l.code, l.onHand])).toEqual(
      (await loadLots(fresh, DEMO_PLACE)).map((l) => [l.code, l.onHand]),
    );
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });
});

describe('the demo’s clock', () => {
  it('runs on from the time its day was set to and stops at the end of that day', async () => {
    const db = await open();
    const at = async (minutes: number) =>
      (await demoContext(db, new Date(DEMO_INSTANT.getTime() + minutes * 60_000))).now.toISOString();
    // 07:30 British summer time.
    expect(await at(0)).toBe('2025-09-12T06:30:00.000Z');
    expect(await at(90)).toBe('2025-09-12T08:00:00.000Z');
    expect(await at(-30)).toBe('2025-09-12T06:30:00.000Z');
    expect(await at(60 * 48)).toBe('2025-09-12T22:59:00.000Z');
  });

  it('is not that of another place', async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'our-garden', name: 'Our garden', timeZone: 'America/Los_Angeles', altitudeM: 30 });
    const ours = await openContext(db, 'our-garden', new Date('2026-01-15T02:00:00Z'));
    expect([ours?.today, ours?.now.toISOString()]).toEqual(['2026-01-14', '2026-01-15T02:00:00.000Z']);
    expect(await openContext(db, 'nowhere', DEMO_INSTANT)).toBeNull();
  });
});

describe('a place of one’s own beside the demo', () => {
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'our-garden', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 30 });
    const context = async () => {
      const ctx = await openContext(db, 'our-garden', new Date('2025-09-12T18:00:00Z'));
      if (!ctx) throw new Error('our garden is not there');
      return ctx;
    };
    await plantCrop(await context(), {
      foodId: 'damson',
      label: 'Damson',
      row: 'D3',
      count: 2,
      unit: 'tree',
      kgPerUnit: 15,
      windowFrom: '09-01',
      windowTo: '09-30',
    });
    const ctx = await context();
    const cropCode = ctx.place.crops[0]?.code ?? '';
    doneOf(
      await recordHarvest(
        ctx,
        damsons({
          id: 'our-own-damsons',
          rowId: `D3|${cropCode}`,
          readings: [bucket(5620)],
          grades: { perfect: 5000 },
        }),
      ),
    );
    doneOf(await receive(ctx, { id: 'our-own-sugar', item: 'sugar', qty: 5, supplier: 'a shop' }));
    return { db, ctx };
  };

  it('has its own rows, lots and codes and sees none of the demo’s', async () => {
    const { db, ctx } = await ours();
    expect((await listPlaces(db)).map((p) => [p.id, p.demo])).toEqual([
      [DEMO_PLACE, true],
      ['our-garden', false],
    ]);
    const lots = await loadLots(db, 'our-garden', { emptied: true });
    expect(lots.map((l) => [l.code, l.onHand]).sort()).toEqual([
      ['H-25255-D3-DAM-1/P', 5000],
      ['R-25255-SUG-1', 5000],
    ]);
    expect(await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/P')).toBeNull();
    expect(refusalOf(await takeJars(ctx, { id: 'take-theirs', ...one }))).toBe('there is no "damson jam" on hand');
    expect(refusalOf(await recordHarvest(ctx, damsons({ rowId: 'D3|damson' })))).toContain('there is no row');
    expect(await batchOfCode(db, 'our-garden', '25249-CRB-A')).toBeNull();
  });

  it('is left alone when the demo moves on, is begun again, or a code is the same in both', async () => {
    const { db } = await ours();
    const snapshot = async () => [
      await loadPlace(db, 'our-garden'),
      await loadLots(db, 'our-garden', { emptied: true }),
      await loadActs(db, 'our-garden', {}),
    ];
    const before = await snapshot();
    doneOf(await recordHarvest(await demoContext(db), damsons()));
    await moveDemoDay(db, day('2025-09-12'), day('2025-09-20'), LATER);
    await moveDemoDay(db, day('2025-09-20'), day('2025-08-01'), LATER);
    expect(await snapshot()).toEqual(before);
    expect(await rebuildBalances(db, 'our-garden')).toEqual([]);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });
});
