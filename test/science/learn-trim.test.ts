/** Published: apple core, stem and peel 23 % (USDA SR26). Two weighings by hand: the mean of logs, each weighing 1/0.15², the table 1/0.2². */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { trimShare } from '#lib/science/learn-trim.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

describe('the trim a household takes off', () => {
  it('starts from the published share with its 20 %', () => {
    const { n, middle, low, high } = trimShare(0.23, []);
    assert.equal(n, 0);
    assert.ok(Math.abs(middle - 0.23) < 1e-12);
    assert.ok(Math.abs(high / low - Math.exp(2 * 1.2815515655446 * 0.2)) < 1e-9);
  });

  it('moves to its own weighings by their number', () => {
    const one = trimShare(0.23, [0.18]);
    const byHand = Math.exp((Math.log(0.23) / 0.2 ** 2 + Math.log(0.18) / 0.15 ** 2) / (1 / 0.2 ** 2 + 1 / 0.15 ** 2));
    assert.ok(Math.abs(one.middle - byHand) < 1e-12);
    const eight = trimShare(
      0.23,
      Array.from({ length: 8 }, () => 0.18),
    );
    assert.ok(eight.middle < one.middle && eight.middle > 0.18);
    assert.ok(eight.high / eight.low < one.high / one.low);
  });

  it('holds 75 to 85 % of households that vary as stated, after three weighings', () => {
    const normal = normalDraws(4242);
    const households = 600;
    let inside = 0;
    for (let i = 0; i < households; i++) {
      const own = 0.23 * Math.exp(0.2 * normal());
      const { low, high } = trimShare(
        0.23,
        [0, 1, 2].map(() => own * Math.exp(0.15 * normal())),
      );
      if (low <= own && own <= high) inside++;
    }
    const share = inside / households;
    assert.ok(share >= 0.75 && share <= 0.85, `${share}`);
  });

  it('refuses a published share of nothing', () => {
    assert.throws(() => trimShare(0, [0.1]), RangeError);
    assert.throws(() => trimShare(0.1, [0]), RangeError);
  });
});
