import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { silicaGel } from '#lib/science/desiccant.ts';

describe('silica gel for a jar', () => {
  it.each([
    [300, 0.15, 0.4, 18.6, 94],
    [300, 0.1, 0.3, 8.7, 60],
    [100, 0.08, 0.25, 1.8, 15],
  ])('%i g of apple at %f brought to %f: %f g of water, %i g of gel (worked elsewhere)', (foodG, wet, target, w, g) => {
    const { waterG, gelG } = silicaGel({ foodG, wet, target, food: 'apple' });
    assert.ok(Math.abs(waterG - w) < 0.06, `${waterG}`);
    assert.ok(Math.abs(gelG - g) < 0.6, `${gelG}`);
  });

  it('is none for food that is dry enough', () => {
    assert.deepEqual(silicaGel({ foodG: 300, wet: 0.05, target: 0.4, food: 'apple' }), { waterG: 0, gelG: 0 });
  });

  it('is refused off the weighings', () => {
    for (const target of [0, 0.01, 0.7])
      assert.throws(() => silicaGel({ foodG: 300, wet: 0.15, target, food: 'apple' }), RangeError);
  });
});
