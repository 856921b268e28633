import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { learntFigure } from '#lib/science/learn-factor.ts';
import { INVERSION_FACTOR, knownPan, LOSSES, UNKNOWN_PAN } from '#lib/science/learn-priors.ts';

/** Ranges as stated beside the models (estimates); each has to come back as the band before any batch. */
describe('the figures before any batch', () => {
  for (const [name, prior, low, high] of [
    ['a pan without a figure, g/min', UNKNOWN_PAN, 16, 42],
    ['film 60-150 g and skimmings 12-50 g', LOSSES, 72, 200],
    ['inversion times the rate equation', INVERSION_FACTOR, 0.3, 1],
  ] as const)
    it(`hold four cases of five between the stated ends: ${name}`, () => {
      const band = learntFigure(prior, []);
      assert.ok(Math.abs(band.low / low - 1) < 1e-6 && Math.abs(band.high / high - 1) < 1e-6, JSON.stringify(band));
    });

  it('take 30 % of a pan’s own figure for one standard deviation', () => {
    const { middle, low, high } = learntFigure(knownPan(45), []);
    assert.ok(Math.abs(middle - 45) < 1e-9);
    assert.ok(low < 45 / 1.3 && high > 45 * 1.3, 'wider than one standard deviation either way');
  });
});
