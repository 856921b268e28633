import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { addDays } from '#lib/units/plain-date.ts';
import { DAY, lotOf } from './ledger-samples.ts';

const held = (id: string, onHand: number, age = 0, code = id): HeldLot => ({
  ...lotOf(id, { madeOn: addDays(DAY, -age), code, label: 'Sugar' }),
  onHand,
});

describe('drawing oldest first', () => {
  it('empties the older lot before it opens the next', () => {
    assert.deepEqual(drawOldest([held('new', 900, 1), held('old', 500, 9)], 700, 'sugar'), [
      { lotId: 'old', count: 500 },
      { lotId: 'new', count: 200 },
    ]);
  });

  it('goes by code among lots of one day', () => {
    assert.deepEqual(drawOldest([held('b', 5, 2, 'R-2'), held('a', 5, 2, 'R-1')], 6, 'sugar'), [
      { lotId: 'a', count: 5 },
      { lotId: 'b', count: 1 },
    ]);
  });

  it('says what is there and what was asked when it is not enough', () => {
    assert.match(
      (drawOldest([held('a', 500), held('b', 200)], 701, 'sugar') as { refused: string }).refused,
      /^700 g left of sugar .*; 701 asked for$/,
    );
    assert.deepEqual(drawOldest([held('a', 0)], 1, 'lids'), { refused: 'no lids left; 1 asked for' });
  });

  it('adds up to what was asked, from no lot more than it holds, and from a younger lot only when the older are empty', () =>
    fc.assert(
      fc.property(
        fc.array(fc.record({ onHand: fc.nat(50), age: fc.nat(5) }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 200 }),
        (rows, qty) => {
          const lots = rows.map((r, i) => held(`l${i}`, r.onHand, r.age));
          const there = lots.reduce((n, l) => n + l.onHand, 0);
          const draws = drawOldest(lots, qty, 'sugar');
          if (isRefusal(draws)) return assert.ok(there < qty);
          assert.equal(
            draws.reduce((n, d) => n + d.count, 0),
            qty,
          );
          const left = new Map(lots.map((l) => [l.id, l.onHand]));
          for (const d of draws) {
            const lot = lots.find((l) => l.id === d.lotId) as HeldLot;
            assert.ok(d.count > 0 && d.count <= lot.onHand);
            for (const older of lots.filter((l) => l.madeOn < lot.madeOn)) assert.equal(left.get(older.id), 0);
            left.set(d.lotId, lot.onHand - d.count);
          }
        },
      ),
    ));
});
