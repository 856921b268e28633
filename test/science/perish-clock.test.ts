import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { hoursLeft, lifeUsed, usableShare } from '#lib/science/perish-clock.ts';

describe('the perish clock', () => {
  it('gives soft raspberries at 20 °C a fifth of a day', () => {
    const left = hoursLeft({ foodId: 'raspberry-red', grade: 'soft', storeTempC: 20, ageHours: 0 });
    assert.ok(Math.abs(left.hours - 4.8) < 1e-9);
    assert.equal(left.capped, false);
  });

  it('never shows soft fruit more than 24 hours', () => {
    const left = hoursLeft({ foodId: 'apple-dessert', grade: 'soft', storeTempC: 2, ageHours: 0 });
    assert.deepEqual([left.hours, left.capped], [24, true]);
  });

  it('counts down hour by hour to 0 and no further', () => {
    const at = (ageHours: number): number =>
      hoursLeft({ foodId: 'damson', grade: 'perfect', storeTempC: 20, ageHours }).hours;
    assert.equal(at(0) - at(10), 10);
    assert.equal(at(500), 0);
  });

  it('used by stays adds up, and a move keeps what was spent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (a, b) => {
        const lot = { foodId: 'damson', grade: 'perfect' } as const;
        const shed = { storeTempC: 18, hours: a };
        const cold = { storeTempC: 2, hours: b };
        const both = lifeUsed({ ...lot, stays: [shed, cold] });
        assert.ok(Math.abs(both - lifeUsed({ ...lot, stays: [shed] }) - lifeUsed({ ...lot, stays: [cold] })) < 1e-12);
      }),
    );
    assert.equal(
      lifeUsed({ foodId: 'damson', grade: 'cull', stays: [{ storeTempC: 2, hours: 1 }] }),
      Number.POSITIVE_INFINITY,
    );
  });

  it('leaves the shares of its curve usable: .997, .958, .803, .500, .184, .030', () => {
    const shares = [0.25, 0.5, 0.75, 1, 1.25, 1.5].map((u) => usableShare(u).toFixed(3));
    assert.deepEqual(shares, ['0.997', '0.958', '0.803', '0.500', '0.184', '0.030']);
  });

  it('refuses an age or a stay below 0', () => {
    assert.throws(() => hoursLeft({ foodId: 'damson', grade: 'soft', storeTempC: 5, ageHours: -1 }), RangeError);
    assert.throws(
      () => lifeUsed({ foodId: 'damson', grade: 'soft', stays: [{ storeTempC: 5, hours: -1 }] }),
      RangeError,
    );
  });
});
