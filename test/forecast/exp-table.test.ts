import assert from 'node:assert/strict';
import fc from 'fast-check';
import { test } from 'vitest';
import { expNegative } from '#lib/forecast/exp-table.ts';

test('e^-x by table and series is the exponential to 1e-9', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 63.999, noNaN: true }),
      (x) => Math.abs(expNegative(x) / Math.exp(-x) - 1) < 1e-9,
    ),
  );
  assert.ok(Math.abs(expNegative(80) / Math.exp(-64) - 1) < 1e-9, 'held at its last value beyond 64');
});
