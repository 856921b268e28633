import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { acidAs, EQUIVALENT_MASS, PKA } from '#lib/science/acid-constants.ts';
import { MOLAR_MASS } from '#lib/science/physical-constants.ts';

describe('acids', () => {
  it('have equivalent masses of their molar mass over their protons', () => {
    for (const name of Object.keys(EQUIVALENT_MASS) as (keyof typeof EQUIVALENT_MASS)[]) {
      assert.ok(Math.abs(EQUIVALENT_MASS[name] - MOLAR_MASS[name] / PKA[name].length) < 0.03, name);
    }
  });

  it('give up their protons one after another', () => {
    for (const steps of Object.values(PKA))
      assert.deepEqual(
        [...steps].sort((a, b) => a - b),
        steps,
      );
  });

  it('are counted as one another by equivalents, there and back', () => {
    assert.equal(acidAs(1, 'citric', 'tartaric').toFixed(2), '1.17');
    assert.equal(acidAs(acidAs(7, 'malic', 'citric'), 'citric', 'malic').toFixed(9), '7.000000000');
  });
});
