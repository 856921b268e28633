import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { finishTargets } from '#lib/science/finish-targets.ts';
import { settingTemperature } from '#lib/science/setting-temperature.ts';
import { celsius } from '#lib/units/quantity.ts';

const water = celsius(98.6);

describe('the finish', () => {
  it('is told in order of trust: weight, refractometer, temperature, clock', () => {
    const targets = finishTargets({ panTargetG: 2143, brix: 65, water, boilMin: 13 });
    assert.deepEqual(
      targets.map((t) => t.by),
      ['pan weight', 'refractometer', 'temperature', 'clock'],
    );
  });

  it('by temperature is the 8 °F rule at 65 °Bx, inside its own band of inversion', () => {
    const t = finishTargets({ panTargetG: 1, brix: 65, water }).find((one) => one.by === 'temperature');
    assert.ok(t?.by === 'temperature');
    assert.ok(Math.abs(t.t - settingTemperature(water)) < 1e-9);
    assert.ok(t.low < t.t && t.t < t.high && t.high - t.low > 0.5 && t.high - t.low < 1.2);
  });

  it('by temperature is not given for a butter of 43 °Bx', () => {
    const targets = finishTargets({ panTargetG: 1, brix: 43, water });
    assert.ok(targets.every((t) => t.by !== 'temperature'));
  });

  it('by temperature rises with the target', () => {
    const at = (brix: number): number => {
      const t = finishTargets({ panTargetG: 1, brix, water }).find((one) => one.by === 'temperature');
      return t?.by === 'temperature' ? t.t : Number.NaN;
    };
    assert.ok(at(60) < at(65) && at(65) < at(68));
  });

  it('by the clock comes with 30 % either way', () => {
    const clock = finishTargets({ panTargetG: 1, brix: 43, water, boilMin: 10 }).at(-1);
    assert.deepEqual(clock, { by: 'clock', minutes: 10, low: 7, high: 13 });
  });
});
