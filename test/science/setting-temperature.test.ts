import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { SETTING_ELEVATION, settingTemperature } from '#lib/science/setting-temperature.ts';
import { waterBoilingPoint } from '#lib/science/water-boiling-point.ts';
import { fahrenheit } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('the setting temperature', () => {
  it('is 220 °F at sea level, and a difference of 8 °F, not 8 °F as a temperature', () => {
    assert.ok(Math.abs(fahrenheit(settingTemperature(celsius(100))) - 220) < 1e-9);
    assert.equal(SETTING_ELEVATION.toFixed(2), '4.44');
  });

  it('follows the printed jelly table, whole °F, within 0.6', () => {
    const printed = { 0: 220, 1000: 218, 2000: 216, 4000: 212, 6000: 209, 8000: 205 };
    for (const [ft, f] of Object.entries(printed)) {
      const { t } = waterBoilingPoint({ altitudeM: Number(ft) * 0.3048 });
      assert.ok(Math.abs(fahrenheit(settingTemperature(t)) - f) < 0.7, `${ft} ft`);
    }
  });
});
