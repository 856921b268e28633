/**
 * FDA/CFSAN, Approximate pH of Foods and Food Products, 2003.
 * Taken from this project's notes of the publications, not a fresh copy: guards the transcription, not the reading.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUITS } from '#lib/reference/fruits.ts';
import { PH_LIST, type PhRow, phRowsOf } from '#lib/reference/ph-list.ts';

const ROWS: readonly PhRow[] = PH_LIST;
const range = (id: string) => {
  const row = ROWS.find((r) => r.id === id);
  return row && [row.low, row.high];
};

describe('the pH list', () => {
  it('holds 72 rows, 15 of them from memory, each id once', () => {
    assert.equal(ROWS.length, 72);
    assert.equal(ROWS.filter((r) => r.status === 'memory').length, 15);
    assert.equal(new Set(ROWS.map((r) => r.id)).size, 72);
  });

  it('orders every range within the scale of foods', () => {
    for (const r of ROWS) assert.ok(r.low <= r.high && r.low >= 2 && r.high < 7, r.id);
  });

  it('gives the printed figures', () => {
    assert.deepEqual(range('apricot'), [3.3, 4.8]);
    assert.deepEqual(range('fig.calimyrna'), [5.05, 5.98]);
    assert.deepEqual(range('blackberry'), [3.85, 4.5]);
    assert.deepEqual(range('tomato'), [4.3, 4.9]);
    assert.deepEqual(range('apple-dessert.mcintosh'), [3.34, 3.34]);
    assert.deepEqual(range('melon.cantaloupe'), [6.13, 6.58]);
  });

  it('carries the fruit id before the dot where the food is that fruit', () => {
    const ids = new Set<string>(FRUITS.map((f) => f.id));
    for (const r of ROWS) {
      for (const id of r.fruitIds) assert.ok(ids.has(id), id);
      const stem = r.id.split('.')[0] ?? '';
      if (ids.has(stem)) assert.ok(r.fruitIds.includes(stem), r.id);
    }
  });

  it('finds the rows of a fruit, none for a fruit the lists do not name', () => {
    assert.deepEqual(
      phRowsOf('cherry-sweet').map((r) => r.id),
      ['cherry-sweet', 'cherry-sweet.royal-ann'],
    );
    assert.deepEqual(phRowsOf('sloe'), []);
  });
});
