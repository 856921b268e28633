import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { powderStrength } from '#lib/science/learn-powder.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

describe('the strength of a powder', () => {
  const prior = { low: 3, high: 9 };

  it('is the table’s before any plate was read', () => {
    const none = powderStrength(prior, []);
    assert.ok(Math.abs(none.low - 3) < 0.1 && Math.abs(none.high - 9) < 0.25, JSON.stringify(none));
  });

  it('rises with plates that set and falls with plates that ran', () => {
    const batch = { ownEq150G: 5, needEq150G: 10, powderG: 130 };
    const plain = powderStrength(prior, []).middle;
    assert.ok(powderStrength(prior, [{ ...batch, plate: 2 }]).middle > plain);
    assert.ok(powderStrength(prior, [{ ...batch, plate: 0 }]).middle < plain);
  });

  it('holds the true strength in about four of five generated households', () => {
    let inside = 0;
    let narrower = 0;
    const runs = 300;
    for (let run = 0; run < runs; run++) {
      const normal = normalDraws(run * 104_729 + 5);
      const truth = Math.exp(Math.log(27) / 2 + (Math.log(3) / 2.5631) * normal());
      const ownFactor = Math.exp(Math.log(1.4) * normal());
      const seen = Array.from({ length: 10 }, (_, i) => {
        const b = { ownEq150G: 3 + (i % 3), needEq150G: 10, powderG: 100 + 30 * (i % 5) };
        const has = Math.log((b.ownEq150G * ownFactor + (truth * b.powderG) / 150) / b.needEq150G) + 0.2 * normal();
        return { ...b, plate: has >= 0 ? (2 as const) : has >= Math.log(0.7) ? (1 as const) : (0 as const) };
      });
      const { low, high } = powderStrength(prior, seen);
      if (low <= truth && truth <= high) inside++;
      if (high / low < 3) narrower++;
    }
    assert.ok(Math.abs(inside / runs - 0.8) < 0.07, `covered ${inside / runs}`);
    assert.ok(narrower / runs > 0.9, `narrower than the table in ${narrower / runs}`);
  });
});
