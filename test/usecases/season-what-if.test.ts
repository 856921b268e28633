import assert from 'node:assert/strict';
import { it } from 'vitest';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { runSeason } from '#lib/usecases/forecast-season.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { readChecks } from '#lib/usecases/read-checks.ts';
import { readShelfAhead } from '#lib/usecases/read-shelf-ahead.ts';
import { readWhatIf } from '#lib/usecases/read-what-if.ts';
import { onSqlite } from '#test/support/database.ts';

const INSTANT = new Date('2026-01-20T10:00:00Z');

onSqlite((open) => {
  it('six changes on the same seasons, the look back and the shelves ahead come with the forecast', async () => {
    const db = await open();
    await openDemo(db, plainDate('2026-01-15'), INSTANT);
    const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
    assert.equal((await readWhatIf(ctx)).state, 'waiting');
    const summary = await runSeason(ctx, () => undefined);
    const of = (id: string) => {
      const found = summary?.whatIf.find((w) => w.id === id);
      assert.ok(found, id);
      return (name: string) => found.figures.find((f) => f.name === name)?.mean ?? Number.NaN;
    };
    assert.equal(summary?.whatIf.length, 6);
    // 18 kg of sugar on hand in whole batches: no season uses more, and many sweet jars are not made.
    const sugar = of('sugar');
    const used =
      (summary?.whatIf.find((w) => w.id === 'sugar')?.figures.find((f) => f.name === 'sugarKg')?.before ?? 0) +
      sugar('sugarKg');
    assert.ok(used <= 18 && used > 14, `${used} kg used on average`);
    assert.ok(sugar('made') < -100 && sugar('unmet') > 0);
    assert.ok(of('frost')('made') < 0 && of('frost')('unmet') > 0);
    assert.ok(of('trees')('made') > 0);
    // A shelf more changes what fits and nothing that is made or used.
    for (const name of ['made', 'used', 'unmet', 'expired']) assert.equal(of('shelf')(name), 0);
    assert.ok(of('shelf')('over shelf') <= 0);

    const view = await readWhatIf(ctx);
    assert.equal(view.state, 'ready');
    assert.match(view.answer, /^\d of 6 changes would make a clear difference$/);
    const checks = await readChecks(ctx);
    assert.match(checks.answer, /^Of \d+ ranges meant for 8 in 10, \d+ held/);
    assert.equal(
      checks.held.reduce((n, h) => n + h.n, 0),
      summary?.checks.length,
    );
    const shelf = await readShelfAhead(ctx);
    assert.equal(shelf.boards.length, 20);
    assert.ok(shelf.lines.every((l) => l.half.length === 52 && l.half.every((n, w) => n <= (l.tenth[w] ?? -1))));
    const now = shelf.lines.find((l) => l.label === 'Apple juice, canned');
    assert.ok(now && (now.half[0] ?? 0) <= 66 && (now.half[0] ?? 0) >= 62);
  }, 120_000);
});
