import { describe, expect, it } from 'vitest';
import { learnUse } from '#lib/forecast/use-rate.ts';
import type { CountReason } from '#lib/ledger/acts/settle-count.ts';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import type { Context } from '#lib/usecases/context.ts';
import { jarsBack } from '#lib/usecases/jars-back.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readLine, readPantry } from '#lib/usecases/read-pantry.ts';
import { readWall } from '#lib/usecases/read-wall.ts';
import { seasonLines, spreadEaten } from '#lib/usecases/season-lines.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { countPlaces, readCount, recordCount, settle } from '#lib/usecases/stock-take.ts';
import { demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');
const CRAB = 'crabapple-jelly|HP';

async function counted(ctx: Context, place: string, counts: [string, number][], unlabelled: [string, number][] = []) {
  const done = doneOf(
    await recordCount(ctx, {
      id: `count-${place}-1`,
      place,
      counts: counts.map(([key, n]) => ({ key, counted: n })),
      unlabelled: unlabelled.map(([item, count]) => ({ item, count })),
    }),
  );
  return done.countId;
}
const settled = (
  ctx: Context,
  countId: string,
  reasons: [string, CountReason][],
  lots: [string, string | null][] = [],
) =>
  settle(ctx, {
    id: `settle-${countId}`,
    countId,
    reasons: reasons.map(([key, reason]) => ({ key, reason })),
    takenFor: lots.map(([item, lot]) => ({ item, lot })),
  });
const shelfOf = async (ctx: Context, key: string) =>
  (await countPlaces(ctx)).find((p) => p.lines.some((l) => l.key === key))?.place ?? '';

describe('jars eaten and not written down', () => {
  const week = (there: boolean) => ({ there, recorded: true, eaten: 0, sold: 0, given: 0 });

  it('left evenly over the weeks since the last count in which there were any', () => {
    const weeks = [true, true, false, true, true, true].map(week);
    spreadEaten(weeks, { jars: 3, from: 1, to: 5 });
    expect(weeks.map((w) => w.eaten)).toEqual([0, 1, 0, 0, 1, 1]);
    const many = [true, true].map(week);
    spreadEaten(many, { jars: 5, from: 0, to: 1 });
    expect(many.map((w) => w.eaten)).toEqual([2, 3]);
  });

  it('raise the use rate as the same jars taken one by one would have, not as eight in one week', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lineOf = async () =>
      seasonLines(await seasonSnapshot(ctx)).find((l) => l.slug === 'crabapple-jelly' && l.item === 'HP');
    const before = (await lineOf())?.weeks.map((w) => w.eaten) ?? [];
    const place = await shelfOf(ctx, CRAB);
    const id = await counted(ctx, place, [[CRAB, 6]]);
    doneOf(await settled(ctx, id, [[CRAB, 'eaten']]));
    const added = (await lineOf())?.weeks.map((w, i) => w.eaten - (before[i] ?? 0)) ?? [];
    expect(added.reduce((a, b) => a + b, 0)).toBe(8);
    expect(Math.max(...added)).toBe(1);
    const learnt = (weeks: number[]) => learnUse(weeks, { mean: 0.15, shape: 1 });
    const spread = learnt(before.map((n, i) => n + (added[i] ?? 0)));
    const lump = learnt(before.map((n, i) => n + (i === before.length - 1 ? 8 : 0)));
    expect(spread.dispersion).toBeLessThan(lump.dispersion);
  });
});

describe('a stock-take (story C5)', () => {
  it('is blind until counted; then 12 of 14 crabapple are two eaten, not logged', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const place = await shelfOf(ctx, CRAB);
    expect(JSON.stringify((await countPlaces(ctx)).find((p) => p.place === place))).not.toMatch(/14/);
    const id = await counted(ctx, place, [[CRAB, 12]]);
    expect((await readCount(ctx, id))?.rows).toMatchObject([{ counted: 12, expected: 14, difference: -2 }]);
    const told = doneOf(await settled(ctx, id, [[CRAB, 'eaten']]));
    expect(told.said).toContain('Crabapple jelly −2 (eaten), 8 eaten in a year');
    expect((await readLine(ctx, 'crabapple-jelly'))?.onHand).toBe(12);
    expect((await readPantry(ctx)).lines.find((l) => l.slug === 'crabapple-jelly')?.onHand).toBe(12);
    expect((await readWall(ctx)).left.find((l) => l.line === 'Crabapple jelly')?.count).toBe(12);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
    expect((await readCount(ctx, id))?.settled).toBe(true);
    expect(refusalOf(await settle(ctx, { id: 'settle-again-1', countId: id, reasons: [], takenFor: [] }))).toMatch(
      /is settled already/,
    );
  });

  it('makes candidates for three jars without a label, and takes them in for the household', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const id = await counted(ctx, 'B3-S4', [], [['HP', 3]]);
    const view = await readCount(ctx, id);
    const candidates = view?.unlabelled[0]?.candidates ?? [];
    expect(candidates.length).toBeGreaterThan(0);
    const lots = await loadLots(db, DEMO_PLACE, { kinds: ['jars'], emptied: true });
    for (const c of candidates) expect(lots.find((l) => l.code === c.code)?.item).toBe('HP');
    const here = candidates.map((c) => c.here);
    expect(here).toEqual([...here].sort((a, b) => Number(b) - Number(a)));
    doneOf(await settled(ctx, id, [], [['HP', candidates[0]?.code ?? null]]));
    const taken = (await loadLots(db, DEMO_PLACE)).find((l) => l.code === 'U-26015-HP-1');
    expect(taken).toMatchObject({ onHand: 3, household: true, process: 'unknown', seal: 'unverified', hold: null });
    expect(taken?.label).toBe(candidates[0]?.line);
  });

  it('holds jars of which nobody knows what is in them', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const id = await counted(ctx, 'B3-S4', [], [['PT', 1]]);
    doneOf(await settled(ctx, id, [], [['PT', null]]));
    const taken = (await loadLots(db, DEMO_PLACE)).find((l) => l.code === 'U-26015-PT-1');
    expect(taken?.hold).toBe('unlabelled: nobody knows what is in it');
  });

  it('asks for a reason for every difference, and one that fits', async () => {
    const ctx = await demoContext(await open());
    const place = await shelfOf(ctx, CRAB);
    const id = await counted(ctx, place, [[CRAB, 15]]);
    expect(refusalOf(await settled(ctx, id, []))).toBe('Crabapple jelly: why are there 15 and not 14?');
    expect(refusalOf(await settled(ctx, id, [[CRAB, 'eaten']]))).toBe(
      'Crabapple jelly: 1 more than expected are found, not eaten',
    );
    doneOf(await settled(ctx, id, [[CRAB, 'found']]));
    expect((await readLine(ctx, 'crabapple-jelly'))?.onHand).toBe(15);
  });

  it('that was a slip of the tongue moves nothing', async () => {
    const ctx = await demoContext(await open());
    const id = await counted(ctx, await shelfOf(ctx, CRAB), [[CRAB, 9]]);
    doneOf(await settled(ctx, id, [[CRAB, 'miscounted']]));
    expect((await readLine(ctx, 'crabapple-jelly'))?.onHand).toBe(14);
  });
});

describe('empty jars', () => {
  it('brought back stand with the empties of their kind', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    expect(doneOf(await jarsBack(ctx, { id: 'jars-back-1', jar: 'HP', count: 5 })).said).toBe(
      '5 half-pint jars back: 219 empty now.',
    );
    expect(refusalOf(await jarsBack(ctx, { id: 'jars-back-2', jar: 'FZ', count: 5 }))).toBe(
      '"FZ" is no jar of this place',
    );
  });
});

describe('the wall sheet (story C6)', () => {
  it('agrees with the pantry to the jar', async () => {
    const ctx = await demoContext(await open());
    const [wall, pantry] = await Promise.all([readWall(ctx), readPantry(ctx)]);
    expect(wall.left.map((l) => [l.line, l.count])).toEqual(pantry.lines.map((l) => [l.line, l.onHand]));
    expect(wall.eatFirst).toHaveLength(3);
  });
});
