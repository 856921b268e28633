import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { iceFraction } from '#lib/science/ice-fraction.ts';
import { celsius } from '#lib/units/quantity.ts';

const at = (brix: number, t = -18): number => iceFraction({ brix, inverted: 0.35, t: celsius(t) });

describe('ice in a freezer at -18 °C', () => {
  it('is .63, .44, .32, .16 and none of the water at 40, 50, 55, 60, 65 °Bx', () => {
    assert.deepEqual(
      [40, 50, 55, 60, 65].map((b) => at(b).toFixed(2)),
      ['0.63', '0.44', '0.32', '0.16', '0.00'],
    );
  });

  it('leaves a liquid of the °Bx that freezes there', () => {
    const ice = at(30) * 70;
    const left = (100 * 30) / (100 - ice);
    assert.ok(Math.abs(left - 64.1) < 0.05, `${left}`);
  });

  it('grows in the cold and shrinks with sugar', () => {
    assert.ok(at(40, -25) > at(40) && at(40) > at(40, -10));
    for (let b = 10; b < 64; b += 2) assert.ok(at(b + 1) <= at(b));
  });
});
