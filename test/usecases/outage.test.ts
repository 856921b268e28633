import { describe, expect, it } from 'vitest';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from '#lib/usecases/context.ts';
import { dueList } from '#lib/usecases/due-list.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { type RescueInput, rescue, startOutage } from '#lib/usecases/outage-acts.ts';
import { outagesNow, readOutage } from '#lib/usecases/read-outage.ts';
import { readPantry } from '#lib/usecases/read-pantry.ts';
import { readRecall } from '#lib/usecases/read-recall.ts';
import { readToday } from '#lib/usecases/read-today.ts';
import { demoAt, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');
const DAY = '2026-01-15' as PlainDate;
const ID = 'outage-0001';
const STOPPED = { id: ID, room: 'chest', failedDay: DAY, failedTime: '02:10', foundTime: '19:40' };
const RASPBERRIES = 'frozen-raspberries-500-g';
const BLACKCURRANTS = 'frozen-blackcurrants-500-g';

/** The story's evening; the demo's last day stands for its Saturday, with the same stock. */
async function stopped(): Promise<Context> {
  const ctx = await demoAt(await open(), DAY, '19:40');
  doneOf(await startOutage(ctx, STOPPED));
  return ctx;
}

let n = 0;
const asked = (what: Pick<RescueInput, 'did' | 'lines'> & Partial<RescueInput>): RescueInput => ({
  id: `rescue-${++n}-00`,
  outage: ID,
  kg: null,
  to: null,
  ...what,
});

describe('a freezer that has stopped (story B4)', () => {
  it('is 38 % full, keeps about 24 h from 02:10, and lists what is in it by what the shelf lacks', async () => {
    const ctx = await stopped();
    const view = await readOutage(ctx, ID);
    expect(view).toMatchObject({
      lasted: '17 h 30 min',
      load: '64.28 kg · 141.7 lb',
      roomLb: '168.19 kg · 370.8 lb',
      percent: 38,
      fullness: 'half full or less',
      hours: 24,
      until: '02:10 Fri 16 Jan',
    });
    expect(view?.items.map((i) => i.line)).toEqual([
      'Frozen raspberries 500 g',
      'Frozen blackcurrants 500 g',
      'Frozen apple slices 1 kg',
      'Frozen sour cherries 500 g',
      'Frozen plum halves 1 kg',
      'Raspberry freezer jam',
    ]);
    expect(view?.items[0]).toMatchObject({ becomes: 'Raspberry jam', left: '2 jars left', weeks: 2 });
    expect(view?.items.at(-1)).toMatchObject({ rule: 'freezer-jam', fridgeUntil: 'Thu 5 Feb' });
    expect(view?.rules[0]?.text).toContain('smells and tastes sound may be frozen again');
  });

  it('is cooked from within the lids, the sugar, the burners and the hours there are', async () => {
    const { tonight } = (await readOutage(await stopped(), ID)) as NonNullable<Awaited<ReturnType<typeof readOutage>>>;
    expect(tonight.lids.there).toBe(148);
    expect(tonight.sugar.thereG).toBe(18_000);
    expect(tonight.batches[0]).toMatchObject({ title: 'Raspberry jam', batches: 10, of: 10, jars: 60, fruitG: 13_000 });
    expect(tonight.batches.reduce((j, b) => j + b.jars, 0)).toBe(tonight.lids.used);
    expect(tonight.batches.reduce((g, b) => g + b.sugarG, 0)).toBe(tonight.sugar.usedG);
    expect(tonight.sugar.usedG).toBeLessThanOrEqual(18_000);
    expect(tonight.hours).toBeLessThanOrEqual(6.5);
    expect(tonight.limit).toBe('hours');
  });

  it('stands on Today, in the calendar and in the pantry until the last thing in it is decided on', async () => {
    const ctx = await stopped();
    const href = `/outage/${ID}`;
    expect((await dueList(ctx)).find((d) => d.id === ID)).toMatchObject({
      href,
      when: { at: new Date('2026-01-16T02:10:00Z') },
    });
    expect((await readToday(ctx)).due.find((d) => d.href === href)?.text).toContain('Chest freezer stands still');
    const lines = (await readOutage(ctx, ID))?.items.map((i) => i.slug) ?? [];
    doneOf(await rescue(ctx, asked({ did: 'kept', lines })));
    expect(await outagesNow(ctx)).toEqual([]);
    expect((await dueList(ctx)).some((d) => d.id === ID)).toBe(false);
    expect((await readOutage(ctx, ID))?.items).toEqual([]);
    expect((await lotOfCode(ctx.db, DEMO_PLACE, '25201-RFZ-A'))?.flags ?? []).toContain(
      'thawed in part and frozen again Thu 15 Jan 2026',
    );
    const jam = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['frozen'] })).find((l) =>
      l.label.includes('freezer jam'),
    );
    expect(jam?.flags).toEqual(['stayed frozen through a failure Thu 15 Jan 2026']);
  });

  it('of which 40 kg go to the neighbour stands there, by whole packs, and the rest is planned again', async () => {
    const ctx = await stopped();
    const lines = ['frozen-plum-halves-1-kg', BLACKCURRANTS, 'frozen-apple-slices-1-kg'];
    const said = doneOf(await rescue(ctx, asked({ did: 'moved', lines, kg: 40_000, to: 'the mill' }))).said;
    expect(said).toBe('40.00 kg · 88.2 lb moved: it stands with the mill.');
    const there = (await loadLots(ctx.db, DEMO_PLACE)).filter((l) => l.address === 'with the mill');
    expect(there.reduce((g, l) => g + l.onHand * Number(l.details.netG), 0)).toBe(40_000);
    expect(there.every((l) => l.roomId === null)).toBe(true);
    expect((await readPantry(ctx)).cold.filter((c) => c.room === 'with the mill').length).toBe(3);
    const view = await readOutage(ctx, ID);
    expect(view?.leftG).toBe(24_280);
    expect(view?.percent).toBe(38);
    expect(view?.tonight.batches.map((b) => b.line)).toEqual(['Frozen raspberries 500 g', 'Frozen apple slices 1 kg']);
    expect(view?.done[0]?.how).toBe('moved, with the mill');
    expect(view?.away).toEqual([{ to: 'the mill', mass: '40.00 kg · 88.2 lb' }]);
    const home = doneOf(await rescue(ctx, asked({ did: 'back', lines: ['all'], to: 'the mill' })));
    expect(home.said).toBe('40.00 kg · 88.2 lb back in the chest freezer.');
    const after = await readOutage(ctx, ID);
    expect(after).toMatchObject({ away: [], leftG: 24_280 });
    expect(refusalOf(await rescue(ctx, asked({ did: 'back', lines: ['all'], to: 'the mill' })))).toContain(
      'nothing stands',
    );
    expect(await rebuildBalances(ctx.db, DEMO_PLACE)).toEqual([]);
  });

  it('a part of a lot is moved as a lot of its own: its packs keep their numbers and their origin', async () => {
    const ctx = await stopped();
    doneOf(await rescue(ctx, asked({ did: 'moved', lines: [RASPBERRIES], kg: 500, to: 'the mill' })));
    const [part] = (await loadLots(ctx.db, DEMO_PLACE)).filter((l) => l.address === 'with the mill');
    expect(part?.code).toMatch(/-RFZ-A\/part$/);
    expect(part?.onHand).toBe(1);
    const circle = await readRecall(ctx, part?.code.replace('/part', '') ?? '');
    expect(circle?.total).toBe(circle?.made);
  });

  it('thawed to be cooked is soft fruit with a clock, and goes into a batch as prepared', async () => {
    const ctx = await stopped();
    doneOf(await rescue(ctx, asked({ did: 'thawed', lines: [RASPBERRIES], kg: 1_500 })));
    const fruit = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['fruit'] })).find((l) => l.code.endsWith('/thawed'));
    expect(fruit).toMatchObject({ onHand: 1_500, grade: 'soft', foodId: 'raspberry-red', details: { prepared: true } });
    const turning = (await readToday(ctx)).turning.find((t) => t.lotIds.includes(fruit?.id ?? ''));
    expect(turning?.hours).toBeLessThanOrEqual(24);
    expect(refusalOf(await rescue(ctx, asked({ did: 'thawed', lines: [RASPBERRIES, BLACKCURRANTS] })))).toContain(
      'one kind of fruit at a time',
    );
  });

  it('its freezer jam is eaten from the fridge within three weeks; fruit has no time there; thrown is spoiled', async () => {
    const ctx = await stopped();
    const jam = ['raspberry-freezer-jam'];
    expect(doneOf(await rescue(ctx, asked({ did: 'fridge', lines: jam }))).said).toContain('to be used by Thu 5 Feb');
    const lots = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['frozen'] })).filter((l) =>
      l.label.includes('freezer jam'),
    );
    expect(lots.every((l) => l.bestBefore === '2026-02-05')).toBe(true);
    expect(refusalOf(await rescue(ctx, asked({ did: 'fridge', lines: [RASPBERRIES] })))).toContain(
      'no time in the fridge',
    );
    doneOf(await rescue(ctx, asked({ did: 'thrown', lines: [BLACKCURRANTS] })));
    const left = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['frozen'] })).filter((l) =>
      l.label.includes('blackcurrants'),
    );
    expect(left).toEqual([]);
  });

  it('refuses what cannot be: more than there is, no neighbour, a failure after it was found', async () => {
    const ctx = await stopped();
    expect(refusalOf(await rescue(ctx, asked({ did: 'moved', lines: [RASPBERRIES], kg: 14_000, to: 'x' })))).toBe(
      '14.00 kg · 30.9 lb asked for, 13.00 kg · 28.7 lb left',
    );
    expect(refusalOf(await rescue(ctx, asked({ did: 'moved', lines: [RASPBERRIES] })))).toContain('say where');
    const late = { ...STOPPED, id: 'outage-0002', failedTime: '19:50' };
    expect(refusalOf(await startOutage(ctx, late))).toContain('after it was found at 19:40');
    expect(refusalOf(await startOutage(ctx, { ...STOPPED, id: 'outage-0003', room: 'stillroom' }))).toContain(
      'no freezer',
    );
  });

  it('of which nobody knows when it failed promises no hours', async () => {
    const ctx = await demoAt(await open(), DAY, '19:40');
    doneOf(await startOutage(ctx, { ...STOPPED, failedTime: null }));
    const view = await readOutage(ctx, ID);
    expect(view).toMatchObject({ until: null, endsInMs: null, lasted: null, hours: 24 });
  });
});

describe('a fridge that has stopped', () => {
  it('keeps about 4 h; what only the cold keeps is looked at', async () => {
    const ctx = await demoAt(await open(), DAY, '19:40');
    doneOf(await startOutage(ctx, { ...STOPPED, room: 'kitchen-fridge', failedTime: '18:00' }));
    const view = await readOutage(ctx, ID);
    expect(view).toMatchObject({ kind: 'fridge', hours: 4, until: '22:00 Thu 15 Jan', percent: null });
    expect(view?.items.every((i) => i.rule === 'fridge')).toBe(true);
    expect(view?.items.length).toBeGreaterThan(0);
    expect(view?.tonight.batches).toEqual([]);
  });
});
