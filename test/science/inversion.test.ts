import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { dissolvedG, massOf, syrup } from '#lib/science/composition.ts';
import { inversionGain, inversionHalfLife, inversionRate, invert } from '#lib/science/inversion.ts';
import { celsius } from '#lib/units/quantity.ts';

const rate = (t: number, pH: number): number => inversionRate({ composition: syrup(60, 0), t: celsius(t), pH });

describe('inversion', () => {
  it('halves sucrose at 102 °C and 60 °Bx in 14, 22, 35 and 71 minutes at pH 2.8, 3.0, 3.2, 3.5', () => {
    const halves = [2.8, 3, 3.2, 3.5].map((pH) => Math.round(inversionHalfLife(rate(102, pH))));
    assert.deepEqual(halves, [14, 22, 35, 71]);
  });

  it('has an activation energy within 1 kJ/mol of 109.2 (Tombari 2007), density apart', () => {
    const [cold, hot] = [celsius(100), celsius(105)];
    const ea = (Math.log(rate(hot, 3) / rate(cold, 3)) * 8.314462618e-3) / (1 / (cold + 273.15) - 1 / (hot + 273.15));
    assert.ok(Math.abs(ea - 109.2) < 1, `${ea}`);
  });

  it('is ten times faster one pH lower', () => {
    assert.ok(Math.abs(rate(100, 2.5) / rate(100, 3.5) - 10) < 1e-9);
  });

  it('keeps the mass and takes up 5.26 % of the sucrose as water', () => {
    const before = syrup(65, 0);
    const after = invert(before, 0.3);
    assert.ok(Math.abs(massOf(after) - massOf(before)) < 1e-9);
    assert.ok(Math.abs((dissolvedG(after) - 65) / (65 * 0.3) - 0.0526) < 1e-4);
  });

  it('adds 1.6 % to the solids at 30 %', () => {
    const gain = inversionGain({ sucroseG: 1000, solidsG: 1000, invertedShare: 0.3 });
    assert.equal((100 * gain).toFixed(1), '1.6');
  });
});
