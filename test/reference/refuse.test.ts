/** USDA SR26, food descriptions: refuse per cent. */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUITS } from '#lib/reference/fruits.ts';
import { REFUSE, refuseOf } from '#lib/reference/refuse.ts';

describe('refuse', () => {
  it('holds 39 rows between 0 and 60 per cent', () => {
    assert.equal(REFUSE.length, 39);
    for (const r of REFUSE) assert.ok(r.pct > 0 && r.pct < 60, r.item);
  });

  it('adds the peel of an apple to its core: 10 and 13 make 23', () => {
    assert.deepEqual(
      refuseOf('apple-dessert').map((r) => r.pct),
      [10, 23],
    );
  });

  it('agrees with the fruit table within 1 point where both cite the same parts', () => {
    for (const f of FRUITS.filter((x) => x.status.waste.source === 'USDA')) {
      const [first] = refuseOf(f.id);
      if (first) assert.ok(Math.abs(first.pct - f.wastePct) <= 1, `${f.id}: ${first.pct} and ${f.wastePct}`);
    }
  });

  it('has no rows for a food the data base does not describe', () => {
    assert.deepEqual(refuseOf('sloe'), []);
  });
});
