import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { panLossRate } from '#lib/science/learn-evaporation.ts';
import { learntFigure } from '#lib/science/learn-factor.ts';
import { knownPan } from '#lib/science/learn-priors.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

describe('what a pan boils off', () => {
  it('is the slope of its weights, whatever the pan itself weighs', () => {
    for (const tare of [0, 1850]) {
      const rate = panLossRate([0, 5, 10].map((minutes) => ({ minutes, grams: tare + 2700 - 45 * minutes })));
      assert.ok(rate && Math.abs(rate.value - 45) < 1e-9);
    }
  });

  it('is not told by one weighing, by two within 3 minutes, or by a pan that gained', () => {
    assert.equal(panLossRate([{ minutes: 0, grams: 2700 }]), null);
    assert.equal(
      panLossRate([
        { minutes: 0, grams: 2700 },
        { minutes: 2, grams: 2600 },
      ]),
      null,
    );
    assert.equal(
      panLossRate([
        { minutes: 0, grams: 2700 },
        { minutes: 9, grams: 2710 },
      ]),
      null,
    );
  });

  it('is recovered from generated batches weighed to 10 g: a pan that boils 62 where 45 was stated', () => {
    const normal = normalDraws(3);
    const seen = Array.from({ length: 12 }, () => {
      const own = 62 * Math.exp(0.1 * normal());
      const weighings = [0, 6, 12].map((minutes) => ({
        minutes,
        grams: Math.round((2700 - own * minutes + 7 * normal()) / 10) * 10,
      }));
      const rate = panLossRate(weighings);
      assert.ok(rate);
      return rate;
    });
    const learnt = learntFigure(knownPan(45), seen);
    assert.ok(learnt.low < 62 && 62 < learnt.high, JSON.stringify(learnt));
    assert.ok(learnt.high / learnt.low < 1.2, 'to about a tenth');
  });
});
