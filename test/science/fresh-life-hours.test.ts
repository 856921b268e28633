import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { FRESH_LIFE } from '#lib/reference/fresh-life.ts';
import { freshLifeHours } from '#lib/science/fresh-life-hours.ts';

const foods = [...new Set(FRESH_LIFE.flatMap((row) => [...row.foodIds]))];

describe('fresh life', () => {
  it('meets both of its anchors', () => {
    for (const foodId of foods) {
      const row = FRESH_LIFE.find((r) => (r.foodIds as readonly string[]).includes(foodId));
      assert.ok(row);
      const at = (storeTempC: number): number => freshLifeHours({ foodId, grade: 'perfect', storeTempC }).hours;
      assert.ok(Math.abs(at(20) / 24 / row.daysAt20C - 1) < 1e-9, foodId);
      assert.ok(Math.abs(at(row.storeTempC) / 24 / Math.sqrt(row.daysLow * row.daysHigh) - 1) < 1e-9, foodId);
    }
  });

  it('follows the pace that the two anchors imply: damson 2.1 times in ten degrees (over 20)', () => {
    const at = (storeTempC: number): number => freshLifeHours({ foodId: 'damson', grade: 'perfect', storeTempC }).hours;
    assert.ok(Math.abs((at(0) / at(20)) ** 0.5 - 2.1) < 0.05);
  });

  it('is never longer in a warmer store, and no longer than the cold store gives', () => {
    fc.assert(
      fc.property(fc.constantFrom(...foods), fc.double({ min: -2, max: 39, noNaN: true }), (foodId, storeTempC) => {
        const here = freshLifeHours({ foodId, grade: 'perfect', storeTempC });
        const warmer = freshLifeHours({ foodId, grade: 'perfect', storeTempC: storeTempC + 1 });
        assert.ok(warmer.hours <= here.hours + 1e-9);
        assert.ok(here.low <= here.hours && here.hours <= here.high);
      }),
    );
  });

  it('is none for a cull, and half for the blemished', () => {
    const at = (grade: 'perfect' | 'blemished' | 'cull'): number =>
      freshLifeHours({ foodId: 'damson', grade, storeTempC: 15 }).hours;
    assert.equal(at('cull'), 0);
    assert.ok(Math.abs(at('blemished') / at('perfect') - 0.5) < 1e-9);
  });

  it('is refused for a food without a printed life and a store that is none', () => {
    assert.throws(() => freshLifeHours({ foodId: 'sloe', grade: 'perfect', storeTempC: 5 }), RangeError);
    assert.throws(() => freshLifeHours({ foodId: 'damson', grade: 'perfect', storeTempC: 60 }), RangeError);
    assert.throws(() => freshLifeHours({ foodId: 'damson', grade: 'perfect', storeTempC: -18 }), RangeError);
  });
});
