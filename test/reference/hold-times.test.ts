/** USDA HGB-56 (freezer jam), AIB 410 (frozen fruit 8-12 months), NCHFP answers (opened jam 1 month), leather bulletins. */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { HOLD_TIMES, type HoldItem, type HoldRow, type HoldStore, holdTime } from '#lib/reference/hold-times.ts';

const days = (item: HoldItem, store: HoldStore) => {
  const found = holdTime(item, store);
  return found.ok ? [found.row.days, found.row.upToDays ?? null] : found.reason;
};
const MONTH = 365 / 12;

describe('hold times', () => {
  it('give the printed weeks and months in days', () => {
    assert.deepEqual(days('freezer jam', 'fridge'), [3 * 7, 4 * 7]);
    assert.deepEqual(days('freezer jam', 'freezer'), [365, null]);
    assert.deepEqual(days('frozen fruit', 'freezer'), [Math.round(8 * MONTH), 365]);
    assert.deepEqual(days('frozen citrus', 'freezer'), [Math.round(3 * MONTH), Math.round(4 * MONTH)]);
    assert.deepEqual(days('dried fruit', 'shelf'), [Math.round(6 * MONTH), 365]);
    assert.deepEqual(days('fruit leather', 'shelf'), [30, null]);
    assert.deepEqual(days('opened full-sugar spread', 'fridge'), [30, null]);
    assert.deepEqual(days('raw cider', 'fridge'), [7, null]);
    assert.deepEqual(days('unsealed jar', 'fridge'), [7, null]);
  });

  it('plan with the shorter figure where publications differ', () => {
    for (const r of HOLD_TIMES as readonly HoldRow[])
      assert.ok(r.days > 0 && (r.upToDays ?? Infinity) > r.days, r.item);
  });

  it('have one row per item and store', () => {
    const keys = HOLD_TIMES.map((r) => `${r.item} ${r.store}`);
    assert.equal(new Set(keys).size, keys.length);
  });

  it('refuse freezer jam, unsealed jars and raw cider on the shelf', () => {
    for (const item of [
      'freezer jam',
      'unsealed jar',
      'raw cider',
      'opened full-sugar spread',
      'frozen fruit',
    ] as const) {
      assert.match(String(days(item, 'shelf')), /no time is published/, item);
    }
  });
});
