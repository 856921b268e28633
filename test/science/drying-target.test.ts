import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { driedMass, freshMoisture } from '#lib/science/drying-target.ts';

const share = fc.double({ min: 0, max: 0.98, noNaN: true });

describe('the weight of a dried lot', () => {
  it('keeps the dry matter', () => {
    fc.assert(
      fc.property(share, share, fc.integer({ min: 1, max: 50_000 }), (w0, wt, freshG) => {
        const driedG = driedMass({ freshG, w0, wt });
        assert.ok(Math.abs(driedG * (1 - wt) - freshG * (1 - w0)) < 1e-6);
        assert.ok(Math.abs(freshMoisture({ freshG, driedG, wt }) - w0) < 1e-9);
      }),
    );
  });

  it('refuses a moisture that is none', () => {
    assert.throws(() => driedMass({ freshG: 1, w0: 1, wt: 0.2 }), RangeError);
    assert.throws(() => driedMass({ freshG: 1, w0: 86, wt: 0.2 }), RangeError);
    assert.throws(() => driedMass({ freshG: -1, w0: 0.8, wt: 0.2 }), RangeError);
  });
});
