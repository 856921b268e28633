import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { massBalance } from '#lib/science/mass-balance.ts';

const input = fc.record({
  grams: fc.double({ min: 0, max: 20_000, noNaN: true }),
  solublePct: fc.double({ min: 0, max: 100, noNaN: true }),
});

describe('the mass balance', () => {
  it('keeps every gram: charge = pan target + boiled off, and solids = target share of the pan', () => {
    fc.assert(
      fc.property(
        fc.array(input, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 20, max: 80, noNaN: true }),
        (inputs, targetBrix) => {
          const b = massBalance({ inputs, targetBrix });
          assert.ok(Math.abs(b.chargeG - b.panTargetG - b.evaporateG) < 1e-6);
          assert.ok(Math.abs((b.panTargetG * targetBrix) / 100 - b.solidsG) < 1e-6);
        },
      ),
    );
  });

  it('asks for water where the charge is already above its target', () => {
    const { evaporateG } = massBalance({ inputs: [{ grams: 100, solublePct: 80 }], targetBrix: 65 });
    assert.ok(Math.abs(evaporateG - (100 - 80 / 0.65)) < 1e-9 && evaporateG < 0);
  });

  it('adds pulp on top when the target is read on the liquid', () => {
    const b = massBalance({ inputs: [{ grams: 1000, solublePct: 50, insolublePct: 3 }], targetBrix: 50 });
    assert.equal(b.panTargetG, 1030);
  });

  it('grows by the water that inversion takes up', () => {
    const b = massBalance({ inputs: [{ grams: 1000, solublePct: 65 }], targetBrix: 65, invertedShareGain: 0.016 });
    assert.ok(Math.abs(b.panTargetG - 1016) < 1e-9);
  });

  it('refuses a target of nothing and a mass below nothing', () => {
    assert.throws(() => massBalance({ inputs: [], targetBrix: 0 }), RangeError);
    assert.throws(() => massBalance({ inputs: [{ grams: -1, solublePct: 1 }], targetBrix: 65 }), RangeError);
    assert.throws(() => massBalance({ inputs: [{ grams: Number.NaN, solublePct: 1 }], targetBrix: 65 }), RangeError);
  });
});
