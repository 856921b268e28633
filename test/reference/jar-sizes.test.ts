/** US liquid measure: pint 473.176 mL, quart 946.353 mL (exact by the gallon of 231 cubic inches). */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { JAR_SIZES, jarSizeOf, nextSizeDown, tableSizeFor } from '#lib/reference/jar-sizes.ts';
import { ML_PER_US_FLUID_OUNCE } from '#lib/units/convert.ts';

describe('jar sizes', () => {
  it('hold their nominal ounces to the millilitre', () => {
    const ounces = [4, 8, 12, 16, 32, 64];
    assert.deepEqual(
      JAR_SIZES.map((r) => r.fillMl),
      ounces.map((oz) => Math.round(oz * ML_PER_US_FLUID_OUNCE)),
    );
  });

  it('grow in volume, height and pitch', () => {
    for (const [i, row] of JAR_SIZES.slice(1).entries()) {
      const smaller = JAR_SIZES[i];
      assert.ok(smaller && row.fillMl > smaller.fillMl && row.pitchMm >= smaller.pitchMm);
    }
  });

  it('step down one size at a time and stop at the smallest', () => {
    assert.equal(nextSizeDown('quart'), 'pint');
    assert.equal(nextSizeDown('half-gallon'), 'quart');
    assert.equal(nextSizeDown('quarter-pint'), null);
  });

  it('look 4 oz up as a half-pint and 12 oz as a pint, the rest as themselves', () => {
    assert.deepEqual(
      JAR_SIZES.map((r) => tableSizeFor(r.size)),
      ['half-pint', 'half-pint', 'pint', 'pint', 'quart', 'half-gallon'],
    );
  });

  it('refuse a size that is none of the six', () => {
    assert.throws(() => jarSizeOf('litre'), RangeError);
  });
});
