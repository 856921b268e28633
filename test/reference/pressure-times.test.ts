/** Dial 6/7/8/9 psi to 2,000/4,000/6,000/8,000 ft, weighted 5 psi to 1,000 ft and 10 above (MSU rhubarb, EDIS FCS8297). */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { PRESSURE_TABLE } from '#lib/reference/pressure-table.ts';
import { gaugePressure, pressureTime } from '#lib/reference/pressure-times.ts';

const psi = (gauge: 'dial' | 'weighted', ft: number) => {
  const found = gaugePressure(gauge, ft);
  return found.ok ? found.psi : found.reason;
};

describe('pressure for acid fruit', () => {
  it('steps up at each printed edge and not before', () => {
    assert.deepEqual(
      [0, 2000, 2001, 4000, 4001, 6000, 6001, 8000].map((ft) => psi('dial', ft)),
      [6, 6, 7, 7, 8, 8, 9, 9],
    );
    assert.deepEqual(
      [0, 1000, 1001, 9000].map((ft) => psi('weighted', ft)),
      [5, 5, 10, 10],
    );
  });

  it('refuses above the dial table and below 0 ft', () => {
    assert.match(String(psi('dial', 8001)), /above 8000 ft/);
    assert.match(String(psi('weighted', -1)), /below 0 ft/);
    assert.equal(gaugePressure('weighted', Number.NaN).ok, false);
    assert.equal(gaugePressure('weighted', Number.POSITIVE_INFINITY).ok, false);
  });

  it('holds the 15 printed rows, 8 or 10 minutes each', () => {
    assert.equal(PRESSURE_TABLE.length, 15);
    assert.deepEqual(
      [...new Set(PRESSURE_TABLE.map((r) => r.minutes))].sort((a, b) => a - b),
      [8, 10],
    );
  });

  it('keeps the minutes of a product at every altitude', () => {
    for (const altitudeFt of [0, 3000, 7999]) {
      const t = pressureTime({ product: 'plums', pack: 'raw', jar: 'quart', altitudeFt, gauge: 'dial' });
      assert.equal(t.ok && t.minutes, 10);
    }
    const sauce = pressureTime({ product: 'applesauce', pack: 'hot', jar: 'pint', altitudeFt: 0, gauge: 'dial' });
    assert.equal(sauce.ok && sauce.minutes, 8);
  });

  it('refuses jam, a half-gallon and an untested pack', () => {
    const q = { pack: 'hot', altitudeFt: 0, gauge: 'dial' } as const;
    assert.equal(pressureTime({ ...q, product: 'marmalade', jar: 'pint' }).ok, false);
    const big = pressureTime({ ...q, product: 'plums', jar: 'half-gallon' });
    assert.equal(!big.ok && big.nextSizeDown, 'quart');
    assert.equal(pressureTime({ ...q, pack: 'raw', product: 'pears', jar: 'pint' }).ok, false);
  });
});
