import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { fruitOf } from '#lib/reference/fruits.ts';
import { NEVER_SHELF, type NeverShelfRow, neverShelfFor } from '#lib/reference/never-shelf.ts';

const ids = (rows: readonly NeverShelfRow[]) => rows.map((r) => r.id);

describe('the never-shelf list', () => {
  it('holds 12 rows, the first five read and the rest from memory', () => {
    assert.equal(NEVER_SHELF.length, 12);
    assert.deepEqual(NEVER_SHELF.map((r) => r.status).indexOf('memory'), 5);
    assert.ok(NEVER_SHELF.slice(5).every((r) => r.status === 'memory'));
  });

  it('names fruits of the table', () => {
    for (const row of NEVER_SHELF as readonly NeverShelfRow[])
      for (const id of row.excludes?.fruitIds ?? []) fruitOf(id);
  });

  it('excludes white peaches whatever is made of them', () => {
    for (const kind of ['anything', 'butter', 'puree', 'juice', 'syrup', 'ordinary jam'] as const) {
      assert.deepEqual(ids(neverShelfFor('peach-white', kind)), ['white-peach'], kind);
    }
  });

  it('excludes fig puree but not every fig', () => {
    assert.deepEqual(ids(neverShelfFor('fig', 'puree')), ['low-acid-puree']);
    assert.deepEqual(ids(neverShelfFor('fig', 'ordinary jam')), []);
    assert.deepEqual(ids(neverShelfFor('apple-cooking', 'puree')), []);
  });

  it('excludes dark elderberry syrup and ordinary jam (Univ. Minnesota Extension 2020)', () => {
    for (const kind of ['syrup', 'juice', 'ordinary jam'] as const) {
      assert.deepEqual(ids(neverShelfFor('elderberry-american', kind)), ['dark-elderberry']);
    }
  });
});
