/**
 * Published beside each: Elenga et al. 2011, Lippia leaves 3 h at 60 °C against 7 days in the shade (56 times); LEATHER2, leather up to 18 h in an
 * oven against 4-10 h in a dryer; HANG, herbs hung a week or more. Vapour pressures: psychrolib (ASHRAE).
 */
import assert from 'node:assert/strict';
import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import { mouldWatch } from '#lib/science/apple-drying-law.ts';
import { dryerStartOf } from '#lib/science/dryer-start.ts';
import { dryingEnd } from '#lib/science/drying-posterior.ts';
import { dryingGuess, isRoomAir, mouldLooms, slowerInRoom, vapourDeficit } from '#lib/science/drying-way.ts';
import { celsius } from '#lib/units/quantity.ts';

const hoursOf = (id: string, by: Omit<Parameters<typeof dryingGuess>[1], 't'> & { t: number }) => {
  const start = dryerStartOf(id);
  const { rate, leftX } = dryingGuess(start, { ...by, t: celsius(by.t) });
  return dryingEnd({ freshG: 1000, w0: start.w0, wt: start.wt, prior: rate, leftX, weighings: [] });
};

describe('the first guess by the way of drying', () => {
  it('takes vapour pressure deficits as an independent library gives them', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (const [t, h] of [
      [22, 0.45],
      [20, 0.6],
      [25, 0.4],
    ] as const) {
      const own = vapourDeficit(celsius(t), h);
      const other = (1 - h) * psychrolib.GetSatVapPres(t);
      assert.ok(Math.abs(own / other - 1) < 1e-3, `${own} against ${other}`);
    }
  });

  it('is 48 times slower in shade of 28 °C and 75 %, where one leaf was published as 56', () => {
    const slower = slowerInRoom({ t: celsius(28), humidity: 0.75 });
    assert.ok(Math.abs(slower / 47.6 - 1) < 0.02, `${slower}`);
    assert.ok(slower / 56 > 0.7 && slower / 56 < 1.3, `${slower}`);
  });

  it('in an oven is twice the dryer: leather 4-10 h becomes 8-20, round the published 18', () => {
    const dryer = hoursOf('leather', { way: 'dryer', t: 60, humidity: 0.5, food: 'apple' });
    const oven = hoursOf('leather', { way: 'oven', t: 60, humidity: 0.5, food: 'apple' });
    assert.ok(Math.abs((oven?.p50 ?? 0) / (dryer?.p50 ?? 1) - 2) < 1e-6);
    assert.ok(oven && oven.p10 < 18 && 18 < oven.p90 * 1.05, `${oven?.p10} ${oven?.p90}`);
  });

  it('of apple rings on a sill lies between the law’s 3 and 6 mm: 47.7 and 75.4 h to 20 % at 22 °C and 45 %', () => {
    const end = hoursOf('apple-slices', { way: 'windowsill', t: 22, humidity: 0.45, food: 'apple' });
    assert.ok(end && end.p50 > 47.7 && end.p50 < 75.4, `${end?.p50}`);
    assert.ok(end && end.p10 < 47.7 && end.p90 > 75.4);
  });

  it('has no end where the air is too damp, and never one for peel to 8 % in common room air', () => {
    assert.equal(hoursOf('apple-slices', { way: 'windowsill', t: 18, humidity: 0.7, food: 'apple' }), null);
    assert.equal(hoursOf('apple-peel-core', { way: 'windowsill', t: 20, humidity: 0.6, food: 'peel-core' }), null);
  });

  it('of hung herbs is a week', () => {
    const end = hoursOf('herb-leaf', { way: 'hung', t: 22, humidity: 0.2, food: 'herb' });
    assert.ok(end && Math.abs(end.p50 / 168 - 1) < 0.05, `${end?.p50}`);
  });

  it('asks for a look at mould in a damp warm room, as the law of apple slices does, and not in a cool one', () => {
    const start = dryerStartOf('apple-slices');
    const looms = (t: number, humidity: number) => {
      const air = { t: celsius(t), humidity, food: 'apple' as const };
      return mouldLooms(dryingGuess(start, { way: 'windowsill', ...air }), { w0: start.w0, t: air.t });
    };
    assert.equal(looms(24, 0.85), mouldWatch({ t: celsius(24), humidity: 0.85, metresPerSecond: 0.1 }, 4.24));
    assert.equal(looms(24, 0.85), true);
    assert.equal(looms(25, 0.4), mouldWatch({ t: celsius(25), humidity: 0.4, metresPerSecond: 0.1 }, 4.24));
    assert.equal(looms(25, 0.4), false);
    assert.equal(looms(18, 0.85), false);
  });

  it('knows room air', () => {
    assert.deepEqual((['dryer', 'oven', 'windowsill', 'hung'] as const).map(isRoomAir), [false, false, true, true]);
  });
});
