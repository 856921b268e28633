import assert from 'node:assert/strict';
import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import { bisection } from '#lib/science/root.ts';
import { saturationPressure, saturationTemperature } from '#lib/science/saturation.ts';
import { standardPressure } from '#lib/science/standard-pressure.ts';
import { celsius, pascal } from '#lib/units/quantity.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

describe('saturation', () => {
  it('pressure agrees with psychrolib 1.1.1 at the boiling points of 0-3000 m to 2 Pa in 70 000', () => {
    for (let h = 0; h <= 3000; h += 250) {
      const t = saturationTemperature(standardPressure(h));
      const other = psychrolib.GetSatVapPres(t);
      assert.ok(Math.abs(saturationPressure(t) - other) < 3, `${t} °C: ${saturationPressure(t)} against ${other}`);
    }
  });

  it('pressure agrees with psychrolib 1.1.1 to 0.1 % from 1 to 120 °C', () => {
    for (let t = 1; t <= 120; t += 7) {
      assert.ok(Math.abs(saturationPressure(celsius(t)) / psychrolib.GetSatVapPres(t) - 1) < 1e-3, `${t} °C`);
    }
  });

  it('temperature is the same as the pressure equation solved by halving', () => {
    for (const p of [1000, 20_000, 60_000, 96_470, 101_325, 400_000]) {
      const halved = bisection((t) => saturationPressure(celsius(t)) - p, { low: 0, high: 300 });
      assert.ok(Math.abs(saturationTemperature(pascal(p)) - halved) < 1e-6, `${p} Pa`);
    }
  });

  it('is refused off the curve', () => {
    for (const t of [-0.1, 374]) assert.throws(() => saturationPressure(celsius(t)), RangeError);
    for (const p of [611, 22.1e6]) assert.throws(() => saturationTemperature(pascal(p)), RangeError);
  });
});
