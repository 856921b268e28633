import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { cases, jarsToOrder, lidsToOrder } from '#lib/forecast/order-count.ts';

/** Worked by hand from the household's own constants (breakage 2 %, reserve 10 %, lids 3 %). */
describe('how many to order', () => {
  const need = { fillsByDate: 500, fills: 530, empties: 214, back: 176, breakage: 0.02, reserve: 0.1, perCase: 12 };
  test('500 fills by the date, 214 empty, 176 back: 110 short, 11 broken, 53 in reserve, 174, 15 dozen', () =>
    assert.deepEqual(jarsToOrder(need), { short: 110, broken: 11, reserve: 53, order: 174, cases: 15 }));
  test('530 fills want 546 lids; 148 are usable: 398, 34 boxes of 12', () =>
    assert.deepEqual(lidsToOrder({ fills: 530, margin: 0.03, usable: 148, perBox: 12 }), {
      needed: 546,
      order: 398,
      boxes: 34,
    }));
  test('jars that stand empty and are not needed by the date count against the spare ones', () => {
    assert.equal(jarsToOrder({ ...need, fillsByDate: 380 }).order, 54);
    assert.equal(jarsToOrder({ ...need, fillsByDate: 100 }).order, 0);
  });
  test('cases cover the order and the last one is not for nothing', () => {
    fc.assert(
      fc.property(fc.nat(5000), fc.integer({ min: 1, max: 144 }), (order, perCase) => {
        const n = cases(order, perCase);
        assert.ok(n * perCase >= order && (n - 1) * perCase < Math.max(order, 1));
      }),
    );
    assert.throws(() => cases(5, 0), RangeError);
  });
});
