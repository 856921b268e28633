import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { normalCdf } from '#lib/science/normal-cdf.ts';

describe('the normal distribution function', () => {
  it('has the values of the printed tables', () => {
    const printed = [
      [0, 0.5],
      [1, 0.8413447],
      [1.281552, 0.9],
      [1.96, 0.9750021],
      [-1.644854, 0.05],
      [3, 0.9986501],
    ] as const;
    for (const [z, p] of printed) assert.ok(Math.abs(normalCdf(z) - p) < 2e-7, `${z}`);
  });

  it('is symmetric and rises', () => {
    for (let z = -4; z < 4; z += 0.1) {
      assert.ok(Math.abs(normalCdf(z) + normalCdf(-z) - 1) < 1e-12 || Math.abs(z) < 1e-9);
      assert.ok(normalCdf(z + 0.1) > normalCdf(z));
    }
  });
});
