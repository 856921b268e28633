import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { equilibriumStop } from '#lib/science/equilibrium-stop.ts';
import { celsius } from '#lib/units/quantity.ts';

const sill = (t: number, humidity: number, target: number) =>
  equilibriumStop({ t: celsius(t), humidity, target, food: 'apple' });

describe('where a windowsill stops', () => {
  it.each([
    [22, 0.45, '0.110'],
    [20, 0.6, '0.159'],
    [18, 0.7, '0.210'],
  ])('at %i °C and humidity %f is %s of the weight', (t, humidity, stop) => {
    assert.equal(sill(t, humidity, 0.2).stopsAt.typ.toFixed(3), stop);
  });

  it('says whether 15 or 20 % can be had there', () => {
    assert.equal(sill(22, 0.45, 0.15).reaches, 'yes');
    assert.equal(sill(20, 0.6, 0.15).reaches, 'no');
    assert.equal(sill(20, 0.6, 0.18).reaches, 'doubtful');
    assert.equal(sill(18, 0.7, 0.2).reaches, 'no');
  });
});
