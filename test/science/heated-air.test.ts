import assert from 'node:assert/strict';
import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import { heatedAirHumidity } from '#lib/science/heated-air.ts';
import { celsius } from '#lib/units/quantity.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

describe('heated air', () => {
  it('agrees with psychrolib 1.1.1: room air of 20 °C and 50 % is 5.9 % at 60 °C', () => {
    for (const [room, rh, dryer] of [
      [20, 0.5, 57],
      [20, 0.5, 60],
      [20, 0.5, 63],
      [25, 0.7, 60],
    ] as const) {
      const ratio = psychrolib.GetHumRatioFromRelHum(room, rh, 101_325);
      const other = psychrolib.GetRelHumFromHumRatio(dryer, ratio, 101_325);
      const own = heatedAirHumidity({ humidity: rh, roomT: celsius(room), dryerT: celsius(dryer) });
      assert.ok(Math.abs(own - other) < 2e-4, `${own} against ${other}`);
    }
  });

  it('refuses a humidity in per cent', () => {
    assert.throws(() => heatedAirHumidity({ humidity: 50, roomT: celsius(20), dryerT: celsius(60) }), RangeError);
  });
});
