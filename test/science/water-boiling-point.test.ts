import assert from 'node:assert/strict';
import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import { bisection } from '#lib/science/root.ts';
import { waterBoilingPoint } from '#lib/science/water-boiling-point.ts';
import { fahrenheit } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('water', () => {
  it('boils where the printed table of the standard atmosphere says, °F at 0 to 10 000 ft', () => {
    const printed = [212, 210.1, 208.3, 206.5, 204.7, 202.8, 201, 199.2, 197.3, 195.5, 193.7];
    for (const [thousand, f] of printed.entries()) {
      const own = fahrenheit(waterBoilingPoint({ altitudeM: thousand * 304.8 }).t);
      assert.ok(Math.abs(own - f) < 0.06, `${thousand}000 ft: ${own}`);
    }
  });

  it('lies up to 1 °F under the extension table, which assumes one temperature for the whole atmosphere', () => {
    const extension = { 5000: 203.2, 10000: 194.7 };
    for (const [ft, f] of Object.entries(extension)) {
      const under = f - fahrenheit(waterBoilingPoint({ altitudeM: Number(ft) * 0.3048 }).t);
      assert.ok(under > 0.3 && under < 1.05, `${ft} ft: ${under}`);
    }
  });

  it('boils at 410 m where psychrolib 1.1.1, solved by halving, has it', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    const p = psychrolib.GetStandardAtmPressure(410);
    const other = bisection((t) => psychrolib.GetSatVapPres(t) - p, { low: 90, high: 105 });
    assert.ok(Math.abs(waterBoilingPoint({ altitudeM: 410 }).t - other) < 0.002, `${other}`);
  });

  it("is taken from today's reading when there is one", () => {
    assert.deepEqual(waterBoilingPoint({ altitudeM: 410, measured: celsius(98.6) }), { t: 98.6, from: 'reading' });
    assert.equal(waterBoilingPoint({ altitudeM: 410 }).from, 'standard atmosphere');
  });

  it('never boils at 209.5 °C: a Fahrenheit reading is refused', () => {
    assert.throws(() => waterBoilingPoint({ measured: celsius(209.5) }), /thermometer/);
    assert.throws(() => waterBoilingPoint({ measured: celsius(79) }), RangeError);
    assert.throws(() => waterBoilingPoint({}), RangeError);
  });
});
