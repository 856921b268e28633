import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { DEMO_LINES, leftAtEnd } from '#lib/demo/lines.ts';
import { dailyPicks, splitPick } from '#lib/demo/picking.ts';
import { playOpening } from '#lib/demo/play-opening.ts';
import { playSeason } from '#lib/demo/play-season.ts';
import { AT_END } from '#lib/demo/season-events.ts';
import type { SeasonState } from '#lib/demo/season-state.ts';
import { DEMO_CROPS } from '#lib/demo/wrenlatch.ts';
import { batchMass } from '#lib/ledger/batch-mass.ts';
import { emptyBook } from '#lib/ledger/book.ts';
import { mondayOf, plainDate } from '#lib/units/plain-date.ts';

const year = (to: string): SeasonState => {
  const s: SeasonState = {
    placeId: 'w',
    book: emptyBook(),
    pieces: new Map(),
    personsPicks: new Set(),
    personsBatches: new Set(),
    written: [],
  };
  playOpening(s, plainDate('2025-01-01'));
  playSeason(s, plainDate('2025-01-01'), plainDate(to));
  return s;
};
const onHand = (s: SeasonState, fits: (l: { label: string; item: string | null; kind: string }) => boolean) =>
  [...s.book.lots.values()].filter(fits).reduce((n, l) => n + l.onHand, 0);

describe('the demo season', () => {
  const end = year('2026-01-15');

  it('ends with every line at what the year’s table says is on hand', () => {
    const got = Object.fromEntries(DEMO_LINES.map((l) => [l.label, onHand(end, (x) => x.label === l.label)]));
    const want = Object.fromEntries(DEMO_LINES.map((l) => [l.label, leftAtEnd(l)]));
    assert.deepEqual(got, want);
  });

  it('ends with 320 glass jars and the supplies of 15 January 2026', () => {
    assert.equal(
      onHand(end, (l) => l.kind === 'jars' || l.kind === 'cold-jars'),
      320,
    );
    assert.equal(
      onHand(end, (l) => l.item === 'sugar'),
      AT_END.sugarG,
    );
    assert.equal(
      onHand(end, (l) => l.item === 'lid-regular'),
      AT_END.lids,
    );
    for (const [jar, n] of Object.entries(AT_END.empties))
      assert.equal(
        onHand(end, (l) => l.kind === 'empties' && l.item === jar),
        n,
        jar,
      );
    assert.equal(
      onHand(end, (l) => l.item === 'apple-powder'),
      1172,
    );
    assert.equal(
      onHand(end, (l) => l.item === 'pectin-stock'),
      9,
    );
    assert.equal(
      onHand(end, (l) => l.item === 'citrus-rind'),
      420,
    );
  });

  it('conserves mass through every batch', () => {
    const movements = end.book.entries.flatMap((e) => e.movements);
    const pans = [...end.book.lots.values()].filter((l) => l.kind === 'batch');
    assert.ok(pans.length > 80, `${pans.length} batches`);
    for (const pan of pans) {
      const mass = batchMass(pan.id, movements, (id) => end.book.lots.get(id)?.kind !== 'set-aside');
      assert.equal(mass.openG, 0, pan.code);
      assert.equal(pan.onHand, 0, pan.code);
    }
  });

  it('picks the kilograms of the season table in its weeks', () => {
    // Kilograms picked / left to preserve in the week of that Monday (demo season table, rounded to the kilogram).
    const table: [string, number, number][] = [
      ['2025-06-09', 8, 2],
      ['2025-06-30', 51, 13],
      ['2025-07-07', 84, 38],
      ['2025-07-14', 94, 50],
      ['2025-08-25', 169, 52],
      ['2025-09-01', 291, 76],
      ['2025-09-08', 186, 46],
      ['2025-09-22', 176, 47],
      ['2025-10-06', 327, 114],
      ['2025-10-13', 459, 257],
      ['2025-10-27', 31, 6],
    ];
    const picked = new Map<string, [number, number]>();
    for (const crop of DEMO_CROPS)
      for (const p of dailyPicks(crop, 2025)) {
        const week = mondayOf(p.day);
        const [all, kept] = picked.get(week) ?? [0, 0];
        const split = splitPick(crop, p.grams);
        picked.set(week, [all + p.grams, kept + split.perfect + split.blemished + split.soft]);
      }
    for (const [week, kg, keep] of table) {
      const [all, kept] = picked.get(week) as [number, number];
      assert.ok(Math.abs(all / 1000 - kg) <= 1, `${week}: ${all / 1000} kg picked, table ${kg}`);
      assert.ok(Math.abs(kept / 1000 - keep) <= 1.5, `${week}: ${kept / 1000} kg to preserve, table ${keep}`);
    }
  });

  it('comes out the same played in one go or day by day', () => {
    const steps = year('2025-09-12');
    playSeason(steps, plainDate('2025-09-12'), plainDate('2025-11-01'));
    playSeason(steps, plainDate('2025-11-01'), plainDate('2026-01-15'));
    for (const l of DEMO_LINES)
      assert.equal(
        onHand(steps, (x) => x.label === l.label),
        leftAtEnd(l),
        l.label,
      );
  });

  it('leaves the picking of a day to the person who recorded it', () => {
    const s = year('2025-09-12');
    s.personsPicks.add('2025-09-12 damson');
    const before = s.book.entries.length;
    playSeason(s, plainDate('2025-09-12'), plainDate('2025-09-13'));
    const day = s.book.entries.slice(before).filter((e) => e.act.kind === 'harvest');
    assert.ok(day.length > 3);
    assert.ok(day.every((e) => e.act.payload.crop !== 'damson'));
  });
});
