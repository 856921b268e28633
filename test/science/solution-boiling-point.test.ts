import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { syrup } from '#lib/science/composition.ts';
import { bisection } from '#lib/science/root.ts';
import { saturationPressure, saturationTemperature } from '#lib/science/saturation.ts';
import { boilingPoint, boilingPointElevation, brixAtBoilingTemperature } from '#lib/science/solution-boiling-point.ts';
import { standardPressure } from '#lib/science/standard-pressure.ts';
import { waterActivity } from '#lib/science/water-activity.ts';
import { celsius, pascal } from '#lib/units/quantity.ts';

const SEA = pascal(101_325);

describe('the boiling point of a syrup', () => {
  it('is the same found by halving', () => {
    for (const b of [10, 45, 65, 80]) {
      const c = syrup(b, 0.3);
      const f = (t: number): number => saturationPressure(celsius(t)) * waterActivity(c, celsius(t)) - SEA;
      assert.ok(Math.abs(boilingPoint(c, SEA) - bisection(f, { low: 60, high: 160 })) < 1e-8);
    }
  });

  it('of water alone is its saturation temperature', () => {
    assert.ok(Math.abs(boilingPoint(syrup(0, 0), SEA) - saturationTemperature(SEA)) < 1e-8);
  });

  it('rises as the dilute law has it: 0.513 K kg/mol (ebullioscopic constant of water)', () => {
    const molal = 2 / 342.2965 / 0.098;
    assert.ok(Math.abs(boilingPointElevation(syrup(2, 0), SEA) / molal - 0.513) < 0.02);
  });

  it('rises with inversion: 3.79, 4.53 and 6.10 K at 65 °Bx', () => {
    const rises = [0, 0.3, 1].map((i) => boilingPointElevation(syrup(65, i), SEA).toFixed(2));
    assert.deepEqual(rises, ['3.79', '4.53', '6.10']);
  });

  it('is raised slightly less on a mountain', () => {
    assert.equal(boilingPointElevation(syrup(65, 0), standardPressure(3000)).toFixed(2), '3.59');
  });

  it('read backwards gives the °Bx, and at 8 °F over water 67.9 for sucrose, 64.6 for 30 % inverted', () => {
    const t = celsius(saturationTemperature(SEA) + 4.44);
    assert.equal(brixAtBoilingTemperature({ t, p: SEA, inverted: 0 }).toFixed(1), '67.9');
    assert.equal(brixAtBoilingTemperature({ t, p: SEA, inverted: 0.3 }).toFixed(1), '64.6');
    for (const b of [5, 30, 62, 78]) {
      const back = brixAtBoilingTemperature({ t: boilingPoint(syrup(b, 0.4), SEA), p: SEA, inverted: 0.4 });
      assert.ok(Math.abs(back - b) < 1e-6);
    }
  });

  it('is refused where nothing boils between 60 and 160 °C', () => {
    assert.throws(() => boilingPoint(syrup(10, 0), pascal(5000)), RangeError);
    assert.throws(() => brixAtBoilingTemperature({ t: celsius(90), p: SEA, inverted: 0 }), RangeError);
  });
});
