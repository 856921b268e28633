import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { syrup } from '#lib/science/composition.ts';
import { brixFrozenAt, freezingPoint, iceActivity } from '#lib/science/freezing-point.ts';
import { bisection } from '#lib/science/root.ts';
import { waterActivity } from '#lib/science/water-activity.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('the freezing point', () => {
  it('is the same found by halving', () => {
    for (const b of [5, 20, 45, 62]) {
      const c = syrup(b, 0.35);
      const f = (t: number): number => waterActivity(c, celsius(t)) - iceActivity(celsius(t));
      assert.ok(Math.abs(freezingPoint(c) - bisection(f, { low: -45, high: 0 })) < 1e-8);
    }
  });

  it('falls as the dilute law has it: 1.86 K kg/mol (cryoscopic constant of water)', () => {
    const molal = 1 / 342.2965 / 0.099;
    assert.ok(Math.abs(-freezingPoint(syrup(1, 0)) / molal - 1.86) < 0.03);
  });

  it('gives the °Bx of the unfrozen part back', () => {
    for (const b of [12, 40, 60]) {
      assert.ok(Math.abs(brixFrozenAt(freezingPoint(syrup(b, 0.35)), 0.35) - b) < 1e-6);
    }
  });

  it('of freezer jam, 35 % inverted, is -5.6, -8.9, -11.3, -14.5, -18.8 °C at 40 to 65 °Bx', () => {
    const points = [40, 50, 55, 60, 65].map((b) => freezingPoint(syrup(b, 0.35)).toFixed(1));
    assert.deepEqual(points, ['-5.6', '-8.9', '-11.3', '-14.5', '-18.8']);
  });

  it('is refused where nothing freezes above -45 °C', () => {
    assert.throws(() => freezingPoint(syrup(84, 1)), RangeError);
  });

  it('has ice at -10 °C at the handbook activity of 0.907 (ratio of vapour pressures, 259.9 / 286.5 Pa)', () => {
    assert.ok(Math.abs(iceActivity(celsius(-10)) - 259.9 / 286.5) < 0.001);
  });
});
