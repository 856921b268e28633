import assert from 'node:assert/strict';
import { it } from 'vitest';
import { plainDate } from '#lib/units/plain-date.ts';
import { plantCrop } from '#lib/usecases/change-place.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { runSeason, seasonForecast } from '#lib/usecases/forecast-season.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { readSeason, type SeasonView } from '#lib/usecases/season-view.ts';
import { parts, seasons } from '#lib/usecases/season-words.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { onSqlite } from '#test/support/database.ts';

const INSTANT = new Date('2026-01-20T10:00:00Z');

/** Everything a person would read on the page. */
function texts(view: SeasonView): string[] {
  const found: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value === 'string') found.push(value);
    else if (value && typeof value === 'object') for (const v of Object.values(value)) walk(v);
  };
  walk(view);
  return found;
}

onSqlite((open) => {
  for (const day of ['2025-09-12', '2026-01-15']) {
    it(`answers with a number on ${day} once it is worked out, and reading alone writes nothing`, async () => {
      const db = await open();
      await openDemo(db, plainDate(day), INSTANT);
      const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
      const acts = await db.act.count();
      const waiting = await readSeason(ctx);
      assert.equal(waiting.state, 'waiting');
      assert.match(waiting.answer, /52 weeks/);
      assert.equal(await db.forecast.count(), 0);

      const shares: number[] = [];
      const [one, two] = await Promise.all([
        runSeason(ctx, (p) => shares.push(p.share)),
        runSeason(ctx, () => undefined),
      ]);
      assert.equal(one?.n, 4000);
      assert.deepEqual(two, one);
      assert.deepEqual(
        [...shares].sort((a, b) => a - b),
        shares,
      );
      assert.equal(await db.forecast.count(), 1);
      assert.equal(await db.act.count(), acts);

      const view = await readSeason(ctx);
      assert.equal(view.state, 'ready');
      assert.equal(view.whole, true);
      assert.match(
        view.answer,
        /(fills up|will be gone before the next harvest) (in about \d+ seasons? in \d+|in all the seasons tried|almost always)/,
      );
      assert.equal(view.weeks.length, 52);
      assert.equal(view.lines.length, one?.lines.length);
      assert.ok(
        view.fit.some((f) => f.id === 'shelf' && f.capacity?.value === 1800),
        'four bays of five shelves of 90 cm',
      );
      assert.equal(view.picking.length, 29);
      for (const text of texts(view))
        assert.doesNotMatch(text, /%|NaN|undefined|Infinity|\b(safe|probably|likely)\b/i, text);

      const jar = view.lines.find((l) => l.words.startsWith('gone'));
      const taken = await takeJars(ctx, {
        id: 'take-1',
        slug: jar?.href.split('/').at(-1) ?? '',
        count: 1,
        to: 'eaten',
        who: null,
        person: null,
        at: null,
      });
      assert.ok('done' in taken, JSON.stringify(taken));
      assert.equal((await readSeason(ctx)).state, 'waiting');
    }, 120_000);
  }

  it('says what to record first in a place with nothing, and looks ahead from crops alone', async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'own', name: 'Own', timeZone: 'UTC', altitudeM: 100 });
    const empty = (await openContext(db, 'own', INSTANT)) as Context;
    const nothing = await readSeason(empty);
    assert.equal(nothing.state, 'empty');
    assert.ok(nothing.first.length === 2);
    assert.equal(await runSeason(empty, () => undefined), null);

    await plantCrop(empty, {
      foodId: 'quince',
      label: 'Quince',
      row: 'A',
      count: 2,
      unit: 'tree',
      kgPerUnit: 20,
      windowFrom: '10-05',
      windowTo: '10-25',
    });
    const ctx = (await openContext(db, 'own', INSTANT)) as Context;
    await runSeason(ctx, () => undefined);
    const view = await readSeason(ctx);
    assert.equal(view.state, 'ready');
    assert.match(view.answer, /^About \d+ kg of fruit may come/);
    assert.equal(view.first.length, 1);
    assert.equal(view.picking[0]?.label, 'Quince');
    for (const text of texts(view)) assert.doesNotMatch(text, /%|NaN|undefined|Infinity/, text);
  });

  it('keeps one forecast for a plan in force and another without it', async () => {
    const db = await open();
    await openDemo(db, plainDate('2025-09-12'), INSTANT);
    const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
    const { hash, input } = await seasonForecast(ctx);
    assert.equal(input.scenario.planned.length, 0);
    const result = {
      plan: {
        cooked: [{ recipe: 'strawberry-jam', mode: 'pan-10', day: 2, kg: 3, batches: [{ loads: 1, count: 2 }] }],
      },
    };
    await db.plan.create({
      data: {
        id: 'p',
        placeId: 'wrenlatch',
        day: '2025-09-12',
        createdAt: INSTANT,
        state: 'found',
        options: {},
        snapshot: {},
        result,
        chosen: true,
        solver: 'none',
      },
    });
    const withPlan = await seasonForecast(ctx);
    assert.deepEqual(
      withPlan.input.scenario.planned.map((b) => [b.week, b.batches]),
      [[0, 2]],
    );
    assert.notEqual(withPlan.hash, hash);
  });
});

it('names the class of every chance', () => {
  assert.equal(seasons(0.31), 'in about 3 seasons in 10');
  assert.equal(seasons(0.1), 'in about 1 season in 10');
  assert.equal(seasons(1), 'in all the seasons tried');
  assert.equal(seasons(0), 'not in any of the seasons tried');
  assert.equal(seasons(0.005), 'hardly ever (fewer than 1 season in 100)');
  assert.equal(parts(0.42), 'about 4 parts in 10');
  assert.throws(() => seasons(1.2), RangeError);
});
