import assert from 'node:assert/strict';
import { test } from 'vitest';
import { bearingIndex, offYearAhead } from '#lib/science/bearing.ts';

const years = (...kg: number[]) => kg.map((x, i) => ({ year: 2020 + i, kg: x }));

test('the index is 0 for years alike, 1 for every other year, and 0.5 for three to one', () => {
  assert.equal(bearingIndex(40, 40), 0);
  assert.equal(bearingIndex(0, 40), 1);
  assert.equal(bearingIndex(10, 30), 0.5);
  assert.equal(bearingIndex(0, 0), 0);
});

test('an off-year is named after heavy and light by turns only', () => {
  assert.deepEqual(offYearAhead(years(30, 10, 30)), { index: 0.5, next: 'light' });
  assert.deepEqual(offYearAhead(years(10, 30, 10)), { index: 0.5, next: 'heavy' });
  assert.equal(offYearAhead(years(10, 30)), null);
  assert.equal(offYearAhead(years(10, 30, 60)), null);
  assert.equal(offYearAhead(years(20, 24, 20)), null);
});
