import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { syrup } from '#lib/science/composition.ts';
import { jamDensity, sucroseDensity, waterDensity } from '#lib/science/density.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('density', () => {
  it('of water is that of the tables: 999.84, 999.97, 998.20, 988.03, 971.78, 958.34 kg/m³', () => {
    const printed = [
      [0, 999.84],
      [4, 999.97],
      [20, 998.2],
      [50, 988.03],
      [80, 971.78],
      [100, 958.34],
    ] as const;
    for (const [t, rho] of printed) assert.ok(Math.abs(waterDensity(celsius(t)) - rho) < 0.03, `${t} °C`);
  });

  it('of syrup without sugar is that of water', () => {
    assert.equal(sucroseDensity(0, celsius(60)), waterDensity(celsius(60)));
  });

  it('of a 65 °Bx jam is 1316.6 kg/m³ cold', () => {
    assert.equal(sucroseDensity(65, celsius(20)).toFixed(1), '1316.6');
  });

  it('falls with heat and rises with sugar', () => {
    for (let b = 5; b < 85; b += 5) {
      assert.ok(sucroseDensity(b + 1, celsius(20)) > sucroseDensity(b, celsius(20)));
      assert.ok(sucroseDensity(b, celsius(80)) < sucroseDensity(b, celsius(20)));
    }
  });

  it('of a jam with 2 % pulp moves by less than half a per cent, and air takes its share', () => {
    const t = celsius(20);
    const plain = sucroseDensity(65, t);
    const jam = jamDensity({ ...syrup(65, 0), insoluble: 2 }, t);
    assert.ok(jam > plain && jam / plain < 1.005);
    assert.equal(jamDensity(syrup(65, 0), t, 0.02).toFixed(6), (plain * 0.98).toFixed(6));
  });

  it('is refused off the polynomial', () => {
    assert.throws(() => sucroseDensity(86, celsius(20)), RangeError);
    assert.throws(() => sucroseDensity(50, celsius(120)), RangeError);
    assert.throws(() => waterDensity(celsius(-1)), RangeError);
  });
});
