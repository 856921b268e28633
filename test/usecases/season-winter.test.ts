import assert from 'node:assert/strict';
import { describe, it, test, vi } from 'vitest';
import { readOrderAsk } from '#lib/forms/order-ask.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { ordersCsv } from '#lib/usecases/orders-csv.ts';
import { yearFlow } from '#lib/usecases/read-year-flow.ts';
import { seasonChecks } from '#lib/usecases/season-checks.ts';
import { seasonLists } from '#lib/usecases/season-lists.ts';
import { seasonOrders } from '#lib/usecases/season-orders.ts';
import { pastLooks, snapshotOn } from '#lib/usecases/season-past.ts';
import { seasonInput } from '#lib/usecases/season-scenario.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { onSqlite } from '#test/support/database.ts';

// Whole seasons are worked out in place here.
vi.setConfig({ testTimeout: 120_000 });

const INSTANT = new Date('2026-01-20T10:00:00Z');
const CODES = ['Q4', 'HP', 'PT', 'QT'];

onSqlite((open) => {
  it('in January: lists, orders, the year’s flow and a look back agree with the ledger', async () => {
    const db = await open();
    await openDemo(db, plainDate('2026-01-15'), INSTANT);
    const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
    const s = await seasonSnapshot(ctx);
    const input = seasonInput(s);

    const line = (view: ReturnType<typeof seasonLists>, name: string) => {
      const found = view.lines.find((l) => l.line === name);
      assert.ok(found, name);
      return found;
    };
    const usual = seasonLists(s, input, null);
    const juice = line(usual, 'Apple juice, canned');
    assert.deepEqual([juice.onHand, juice.usedYear, juice.on, juice.left], [66, 32, '2026-10-18', 42]);
    assert.deepEqual([juice.standing, juice.make.jars, juice.lastYear.jars], ['much', 0, 84]);
    const sauce = line(seasonLists(s, input, plainDate('2026-09-05')), 'Apple sauce');
    assert.deepEqual([sauce.onHand, sauce.usedYear, Math.round(sauce.used), sauce.left], [39, 25, 16, 23]);
    assert.match(sauce.makeSays, /about half of last year’s 54/);
    assert.ok(sauce.band.p10 < 23 && sauce.band.p90 > 23);
    assert.equal(line(usual, 'Raspberry jam').standing, 'short');
    assert.ok(usual.openFirst.every((r) => r.past || r.leftThen > 0));
    assert.ok(usual.openFirst.some((r) => r.line === 'Apple juice, canned' && r.bestBefore.startsWith('2026-10')));
    for (const f of usual.freezer) {
      assert.ok(f.takesPacks <= f.spare && f.spare <= f.packs - f.needed);
      assert.equal(line(usual, f.into).standing, 'short');
    }

    const { ask, problems } = readOrderAsk(
      {
        by: '2026-11-01',
        'fills-HP': '530',
        'before-HP': '500',
        'back-HP': '176',
        'fills-Q4': '0',
        'fills-PT': '0',
        'fills-QT': '0',
      },
      CODES,
    );
    assert.deepEqual(problems, []);
    const order = seasonOrders(s, ask);
    const text = (id: string) => order.rows.find((r) => r.id === id)?.text;
    assert.equal(text('jars HP'), '174 → 15 dozen');
    assert.equal(text('lids'), '398 → 34 boxes of 12');
    const lids = order.rows.find((r) => r.id === 'lids')?.why.inputs ?? [];
    assert.ok(lids.some((i) => i.label === 'Not counted' && i.value === '22'));
    assert.ok(order.rows.every((r) => r.why.source !== '' && r.why.formula !== ''));
    const csv = ordersCsv(order).split('\r\n');
    assert.equal(csv[0], 'what,order,unit,packs,pack,by,reckoned from,source');
    assert.equal(csv.length, order.rows.length + 2);

    const untouched = seasonOrders(s, { by: null, jars: {} });
    const made = untouched.plan.reduce((n, p) => n + p.jars, 0);
    assert.ok(untouched.jars.reduce((n, j) => n + j.fills, 0) <= made);
    assert.ok(untouched.jars.every((j) => j.before <= j.fills && j.back >= 0));

    const flow = yearFlow(s);
    const out = (id: string) => flow.links.reduce((g, l) => g + (l.from === id ? l.grams : 0), 0);
    const into = (id: string) => flow.links.reduce((g, l) => g + (l.to === id ? l.grams : 0), 0);
    // Every pan is empty at the end: what went in is what came out, to the grams of links too small to draw.
    assert.ok(Math.abs(into('pans') - out('pans')) < 200, `${into('pans')} in, ${out('pans')} out`);

    const then = snapshotOn(s, plainDate('2025-10-01'));
    assert.ok(then.movements.every((m) => m.day <= '2025-10-01') && then.lots.every((l) => l.madeOn <= '2025-10-01'));
    // Apple sauce on 1 October as the demo's script has it: 11 carried, 9 and 36 made, less what was used by then.
    const had = then.lots
      .filter((l) => l.kind === 'jars' && l.label === 'Apple sauce')
      .reduce((n, l) => n + l.onHand, 0);
    const gone = s.movements.filter(
      (m) =>
        m.day > '2025-10-01' &&
        'lot' in m.from &&
        !('lot' in m.to) &&
        s.lots.some((l) => 'lot' in m.from && l.id === m.from.lot && l.kind === 'jars' && l.label === 'Apple sauce'),
    );
    assert.equal(had, 39 + gone.reduce((n, m) => n + m.qty, 0) - 9);

    const checks = seasonChecks(pastLooks(s), 1);
    assert.ok(checks.length > 50);
    assert.ok(checks.every((c) => c.p10 <= c.p50 && c.p50 <= c.p90 && (!c.held.five || c.held.nineteen)));
    assert.ok(checks.every((c) => c.held.eight === (c.came >= c.p10 - 1e-9 && c.came <= c.p90 + 1e-9)));
    assert.ok(
      checks.some((c) => !c.held.eight),
      'some did not hold, and they are shown',
    );
  });
});

describe('what an order is asked with', () => {
  test('text that is no count is named and left aside', () => {
    const { ask, problems } = readOrderAsk({ 'fills-HP': 'many', by: 'soon', box: '0', 'per-HP': '24' }, CODES);
    assert.equal(problems.length, 3);
    assert.match(problems.join(' '), /“many”.*“soon”.*“0”/);
    assert.deepEqual(ask.jars.HP, { per: 24 });
    assert.equal(ask.by, null);
  });
});
