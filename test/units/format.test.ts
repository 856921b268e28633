import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import {
  bothMasses,
  bothTemperatures,
  celsiusText,
  counted,
  duration,
  fahrenheitText,
  kilograms,
  mass,
  poundsText,
  timeLeft,
} from '#lib/units/format.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('what people read', () => {
  it('shows kilograms to 10 g with trailing zeros, and pounds to a tenth', () => {
    assert.equal(kilograms(5000), '5.00 kg');
    assert.equal(kilograms(4), '0.00 kg');
    assert.equal(poundsText(5000), '11.0 lb');
    assert.equal(bothMasses(13_740), '13.74 kg · 30.3 lb');
  });

  it('shows grams below a kilogram, also when something is short', () => {
    assert.equal(mass(274.4), '274 g');
    assert.equal(mass(999), '999 g');
    assert.equal(mass(1000), '1.00 kg');
    assert.equal(mass(-12), '-12 g');
  });

  it('shows the setting point of the story in both scales', () => {
    assert.equal(celsiusText(celsius(103.04)), '103.0 °C');
    assert.equal(fahrenheitText(celsius(103.04)), '217.5 °F');
    assert.equal(bothTemperatures(celsius(98.6)), '98.6 °C · 209.5 °F');
  });

  it('shows minutes up to an hour and hours above', () => {
    assert.deepEqual([13.04, 59.4, 59.6, 60, 85, 120].map(duration), [
      '13 min',
      '59 min',
      '1 h',
      '1 h',
      '1 h 25 min',
      '2 h',
    ]);
  });

  it('counts one jar and several jars', () => {
    assert.deepEqual(
      [0, 1, 2].map((n) => counted(n, 'jar')),
      ['0 jars', '1 jar', '2 jars'],
    );
    assert.equal(counted(2, 'batch', 'batches'), '2 batches');
  });

  it('shows what is left in hours below two days, in whole days above, and says when it is past', () => {
    assert.deepEqual([-1, 0, 0.2, 11.9, 47.9, 48, 71, 72].map(timeLeft), [
      'past its time',
      'past its time',
      '1 h',
      '11 h',
      '47 h',
      '2 days',
      '2 days',
      '3 days',
    ]);
  });
});
