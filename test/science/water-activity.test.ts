import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { syrup } from '#lib/science/composition.ts';
import { waterActivity } from '#lib/science/water-activity.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('water activity', () => {
  it('of sucrose at 65 °Bx lies among three older equations (Grover .870, Money-Born .872, Norrish .865; from memory)', () => {
    const own = waterActivity(syrup(65, 0));
    const moles = 65 / 342.3 / (35 / 100);
    const moneyBorn = 1 / (1 + 0.27 * moles);
    assert.ok(Math.abs(own - moneyBorn) < 0.01, `${own} against ${moneyBorn}`);
    assert.ok(Math.abs(own - 0.865) < 0.002, String(own));
  });

  it('approaches the dilute limit: the mole fraction of water', () => {
    const own = waterActivity(syrup(0.5, 0));
    const water = 99.5 / 18.015268;
    const raoult = water / (water + 0.5 / 342.2965);
    assert.ok(Math.abs(own - raoult) < 1e-6);
  });

  it('falls with more sugar, and with inversion', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 80, noNaN: true }), fc.double({ min: 0, max: 0.9, noNaN: true }), (b, i) => {
        const here = waterActivity(syrup(b, i));
        assert.ok(waterActivity(syrup(b + 1, i)) < here);
        assert.ok(waterActivity(syrup(b, i + 0.1)) < here);
        assert.ok(here > 0 && here < 1);
      }),
    );
  });

  it('falls with acid and with loose ions', () => {
    const plain = waterActivity(syrup(60, 0.2));
    assert.ok(waterActivity({ ...syrup(60, 0.2), citric: 1 }) < plain);
    assert.ok(waterActivity({ ...syrup(60, 0.2), ionsMmol: 20 }) < plain);
  });

  it('of pure water is 1 at any temperature, and needs water', () => {
    assert.equal(waterActivity(syrup(0, 0), celsius(80)), 1);
    assert.throws(() => waterActivity({ water: 0, sucrose: 1, glucose: 0, fructose: 0 }), RangeError);
  });
});
