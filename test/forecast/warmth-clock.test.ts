import assert from 'node:assert/strict';
import { test } from 'vitest';
import { clockErrors } from '#lib/forecast/warmth-clock.ts';

/** A year in which `a` degree-days fall every day. */
const sums = (a: number) => Array.from({ length: 365 }, (_, d) => a * (d + 1));
const warmths = [4, 5, 6, 7, 8];

test('where fruit ripens at a sum of warmth, the sum is closer; where it ripens on a date, the date is', () => {
  const bySum = clockErrors(warmths.map((a) => ({ mid: Math.round(1200 / a) - 1, sums: sums(a) })));
  const byDate = clockErrors(warmths.map((a) => ({ mid: 250, sums: sums(a) })));
  assert.ok(bySum && bySum.warmth < 2 && bySum.calendar > 30, JSON.stringify(bySum));
  assert.ok(byDate && byDate.calendar < 1e-9 && byDate.warmth > 30, JSON.stringify(byDate));
});

test('with four seasons nothing is said', () =>
  assert.equal(clockErrors(warmths.slice(1).map((a) => ({ mid: 200, sums: sums(a) }))), null));
