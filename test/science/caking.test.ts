import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { cakes, glassTransition } from '#lib/science/caking.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('caking of fruit powder', () => {
  it('follows the two published ends and the line between (4.5, -7.0, -18.4, -29.9 °C)', () => {
    for (const [aw, t] of [
      [0, 4.5],
      [0.1, -7],
      [0.2, -18.4],
      [0.3, -29.9],
    ] as const)
      assert.ok(Math.abs(glassTransition(aw) - t) < 0.06, `${aw}`);
    assert.equal(glassTransition(0.75).toFixed(1), '-81.4');
  });

  it('happens in every pantry and not in the deep freezer while it is dry', () => {
    assert.equal(cakes({ activity: 0.05, t: celsius(14) }), true);
    assert.equal(cakes({ activity: 0.15, t: celsius(-18) }), false);
  });

  it('is refused off the figures', () => {
    assert.throws(() => glassTransition(0.8), RangeError);
  });
});
