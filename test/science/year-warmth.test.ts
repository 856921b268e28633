import assert from 'node:assert/strict';
import { test } from 'vitest';
import { yearWarmth } from '#lib/science/year-warmth.ts';

const spring = (year: number, days: number) =>
  Array.from({ length: days }, (_, i) => ({
    day: new Date(Date.UTC(year, 0, 1 + i)).toISOString().slice(0, 10),
    low: 10,
    high: 20,
  }));

test('a year is summed to the day asked, and left out when more than 3 days in 100 are missing', () => {
  const days = [...spring(2023, 120), ...spring(2024, 120).slice(5), ...spring(2025, 100)];
  assert.deepEqual(
    yearWarmth(days, '04-10', 5).map((y) => [y.year, y.sum, y.days]),
    [
      [2023, 1000, 100],
      [2025, 1000, 100],
    ],
  );
});
