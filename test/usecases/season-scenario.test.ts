import assert from 'node:assert/strict';
import { it } from 'vitest';
import { checkScenario } from '#lib/forecast/check-scenario.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { forecastHash } from '#lib/usecases/forecast-hash.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';
import { seasonInput } from '#lib/usecases/season-scenario.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { LENT_JARS } from '#lib/usecases/season-stores.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { onSqlite } from '#test/support/database.ts';

const INSTANT = new Date('2026-01-20T10:00:00Z');

async function demoAt(db: Db, day: string): Promise<Context> {
  await openDemo(db, plainDate(day), INSTANT);
  return (await openContext(db, 'wrenlatch', INSTANT)) as Context;
}
const inputOf = async (ctx: Context) => seasonInput(await seasonSnapshot(ctx));

/** Balance of every lot as the sum of its rows in the movement table: nothing of the program's own reading. */
async function balances(db: Db): Promise<Map<string, number>> {
  const sums = new Map<string, number>();
  const add = (lot: string | null, n: number) => {
    if (lot) sums.set(lot, (sums.get(lot) ?? 0) + n);
  };
  for (const m of await db.movement.findMany()) {
    add(m.toLotId, m.qty);
    add(m.fromLotId, -m.qty);
  }
  return sums;
}

onSqlite((open) => {
  for (const day of ['2025-09-12', '2026-01-15']) {
    it(`starts from the ledger's own balances on ${day}, the same each time`, async () => {
      const db = await open();
      const ctx = await demoAt(db, day);
      const input = await inputOf(ctx);
      checkScenario(input.scenario);
      const sums = await balances(db);
      const rows = await db.lot.findMany({ where: { unit: { not: 'g' } } });
      const held = (fits: (l: (typeof rows)[number]) => boolean) =>
        rows.filter(fits).reduce((n, l) => n + (sums.get(l.id) ?? 0), 0);
      for (const [p, line] of input.lines.entries()) {
        const jars = input.scenario.lots.filter((l) => l.product === p).reduce((n, l) => n + l.jars, 0);
        assert.equal(
          jars,
          held((l) => l.label === line.line && l.item === line.item && !['empties', 'lids'].includes(l.kind)),
          line.line,
        );
      }
      const jarLots = held((l) => ['jars', 'frozen', 'dried', 'cold-jars'].includes(l.kind));
      assert.equal(
        input.scenario.lots.reduce((n, l) => n + l.jars, 0),
        jarLots,
      );
      const half = input.scenario.containers.find((c) => c.id === 'HP');
      assert.equal(
        (half?.empties ?? 0) - LENT_JARS,
        held((l) => l.kind === 'empties' && l.item === 'HP'),
      );
      assert.equal(
        input.scenario.lids[0]?.stock,
        held((l) => l.kind === 'lids' && l.item === 'lid-regular'),
      );
      assert.deepEqual(await inputOf(ctx), input);
    });
  }

  it('counts what left as the demo’s yearly ledger has it, and sells only in stall weeks', async () => {
    const db = await open();
    const input = await inputOf(await demoAt(db, '2026-01-15'));
    // Raspberry jam of the demo's ledger for 2025: eaten 19, given 8, sold 21; none of it before 16 January 2025.
    const p = input.lines.findIndex((l) => l.line === 'Raspberry jam');
    const learnt = input.lines[p]?.learnt;
    assert.deepEqual([learnt?.eaten.count, learnt?.given.count, learnt?.sold.count], [19, 8, 21]);
    // The stall ran on Saturdays from 15 March to 20 December: in the first eight weeks after 15 January only eating counts.
    const profile = input.scenario.products[p]?.profile ?? [];
    const [winter, june] = [profile[2] ?? 0, profile[22] ?? 0];
    assert.ok(june > winter * 1.5, `June ${june}, January ${winter}`);
    assert.ok(profile.slice(0, 8).every((x) => x === winter));
    assert.ok(Math.abs(profile.reduce((a, b) => a + b, 0) / 52 - 1) < 1e-9);
    // A line nobody ever sold is not expected to be sold.
    assert.equal(input.lines.find((l) => l.line === 'Apple sauce')?.learnt.sold.perWeek, 0);
  });

  it('has another name when one jar is taken or one look is recorded', async () => {
    const db = await open();
    const ctx = await demoAt(db, '2025-09-12');
    const before = await inputOf(ctx);
    const hash = forecastHash(before);
    assert.equal(forecastHash(structuredClone(before)), hash);
    const taken = await takeJars(ctx, {
      id: 'take-1',
      slug: 'strawberry-jam',
      count: 1,
      to: 'eaten',
      who: null,
      person: null,
      at: null,
    });
    assert.ok('done' in taken, JSON.stringify(taken));
    const after = await inputOf(ctx);
    assert.notEqual(forecastHash(after), hash);
    const at = before.lines.findIndex((l) => l.line === 'Strawberry jam');
    assert.equal(after.lines[at]?.onHand, (before.lines[at]?.onHand ?? 0) - 1);

    const looked = await recordHarvest(ctx, {
      id: 'look-1',
      rowId: 'C3|quince',
      day: '2025-09-12',
      at: null,
      readings: [],
      grades: {},
      groundFall: false,
      nothing: 'nothing ripe',
      person: null,
      device: null,
    });
    assert.ok('done' in looked, JSON.stringify(looked));
    const quince = (await inputOf(ctx)).crops.find((c) => c.code === 'quince');
    assert.deepEqual(
      quince?.seasons[0]?.records.map((r) => r.kg),
      [0],
    );
  });

  it('keeps the crops’ seasons apart: what is over is a past season, what is open has its pickings', async () => {
    const db = await open();
    const { crops } = await inputOf(await demoAt(db, '2025-09-12'));
    const strawberry = crops.find((c) => c.code === 'strawberry');
    assert.deepEqual(
      strawberry?.pastSeasons.map((p) => [p.year, Math.round(p.kg)]),
      [[2025, 36]],
    );
    assert.deepEqual(
      strawberry?.seasons.map((x) => x.year),
      [2026],
    );
    const damson = crops.find((c) => c.code === 'damson');
    assert.deepEqual(
      damson?.seasons.map((x) => x.year),
      [2025, 2026],
    );
    // 60 kg in a tent over 5 to 25 September: 1 + 2 + … + 7 of 121 parts by the 11th.
    const picked = damson?.seasons[0]?.records.reduce((kg, r) => kg + r.kg, 0) ?? 0;
    assert.ok(Math.abs(picked - (60 * 28) / 121) < 0.01, `${picked}`);
  });
});
