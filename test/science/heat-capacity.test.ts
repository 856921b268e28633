import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import {
  drySucroseHeatCapacity,
  evaporationHeat,
  heatCapacity,
  mixedHeatCapacity,
} from '#lib/science/heat-capacity.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('heat capacity', () => {
  it('of a 40 °Bx syrup is 3.09 at 20 °C and 3.37 kJ/(kg K) at 100 °C by the polynomial read', () => {
    assert.equal(heatCapacity(40, celsius(20)).toFixed(2), '3.09');
    assert.equal(heatCapacity(40, celsius(100)).toFixed(2), '3.37');
  });

  it('of hot water is near 4.2 (steam tables)', () => {
    assert.ok(Math.abs(heatCapacity(0, celsius(80)) - 4.2) < 0.02);
  });

  it('by mixing is 8 % low at 40 °Bx and 100 °C', () => {
    const low = 1 - mixedHeatCapacity(600, 400) / heatCapacity(40, celsius(100));
    assert.ok(low > 0.07 && low < 0.1, `${low}`);
  });

  it('of dry sucrose at 60 °C is the printed 1.394', () => {
    assert.equal(drySucroseHeatCapacity(celsius(60)).toFixed(3), '1.394');
  });

  it('is refused off the polynomial', () => {
    assert.throws(() => heatCapacity(90, celsius(50)), RangeError);
  });
});

describe('the heat of evaporation', () => {
  it('is 2257 kJ/kg at 100 °C and 2245 at 105 (steam tables: 2243)', () => {
    assert.equal(evaporationHeat(celsius(100)), 2257);
    assert.ok(Math.abs(evaporationHeat(celsius(105)) - 2243) < 3);
  });
});
