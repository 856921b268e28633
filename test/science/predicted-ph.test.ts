import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { acidEquivalents } from '#lib/science/acid-balance.ts';
import { mineralCation, predictedPh } from '#lib/science/predicted-ph.ts';

describe('the pH without a meter', () => {
  it('of lemon juice from its minerals is within the published 2.0-2.6', () => {
    const pH = predictedPh({
      taEqPerKg: acidEquivalents(5, 'citric'),
      shares: { citric: 1 },
      waterPct: 92.31,
      minerals: { K: 103, Na: 1, Mg: 6, Ca: 6, P: 8 },
    });
    assert.ok(pH > 2 && pH < 2.6, `${pH}`);
  });

  it('counts potassium of 39.1 mg per 100 g as 10 meq per kg', () => {
    assert.ok(Math.abs(mineralCation({ K: 39.1 }) - 0.01) < 1e-12);
    assert.ok(mineralCation({ K: 100, P: 20 }) < mineralCation({ K: 100 }));
  });

  it('is refused where the minerals exceed the acid, as for melon', () => {
    const melon = {
      taEqPerKg: acidEquivalents(0.1, 'citric'),
      shares: { citric: 1 },
      waterPct: 90.15,
      minerals: { K: 267 },
    };
    assert.throws(() => predictedPh(melon), RangeError);
  });
});
