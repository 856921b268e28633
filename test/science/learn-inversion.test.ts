import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { brixOf, type Composition } from '#lib/science/composition.ts';
import { inversionRate, invert } from '#lib/science/inversion.ts';
import { learntFigure } from '#lib/science/learn-factor.ts';
import { inversionSeen, splitShare } from '#lib/science/learn-inversion.ts';
import { INVERSION_FACTOR } from '#lib/science/learn-priors.ts';
import { saturationPressure } from '#lib/science/saturation.ts';
import { boilingPoint } from '#lib/science/solution-boiling-point.ts';
import { celsius } from '#lib/units/quantity.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

/** A pan cooked forward in steps of a second, apart from the formula under test: sugar splits, water leaves, °Bx rises. */
function cooked(o: { factor: number; pH: number; waterC: number; minutes: number }): { brix: number; stopC: number } {
  const p = saturationPressure(celsius(o.waterC));
  let c: Composition = { water: 1290, sucrose: 1200, glucose: 95, fructose: 95 };
  const end = 1393 / 0.65 - 1393;
  const perStep = (1290 - end) / (o.minutes * 10);
  for (let i = 0; i < o.minutes * 10; i++) {
    const t = boilingPoint(c, p);
    c = invert(c, 1 - Math.exp((-o.factor * inversionRate({ composition: c, t, pH: o.pH })) / 10));
    c = { ...c, water: c.water - perStep };
  }
  return { brix: brixOf(c), stopC: boilingPoint(c, p) };
}

describe('the inversion factor', () => {
  const startBrix = (100 * 1390) / (1390 + 1290);
  const seenOf = (factor: number, noise: () => number) => {
    const { brix, stopC } = cooked({ factor, pH: 3.1, waterC: 98.6, minutes: 15 });
    return inversionSeen({
      brix: Math.round((brix + 0.15 * noise()) * 10) / 10,
      stopC: Math.round((stopC + 0.05 * noise()) * 10) / 10,
      waterC: 98.6,
      pH: 3.1,
      boiledMin: 15,
      startBrix,
      addedShare: 1200 / 1390,
    });
  };

  it('comes back from a pan cooked forward in small steps, within a seventh', () => {
    for (const factor of [0.4, 0.7, 1]) {
      const { brix, stopC } = cooked({ factor, pH: 3.1, waterC: 98.6, minutes: 15 });
      const seen = inversionSeen({
        brix,
        stopC,
        waterC: 98.6,
        pH: 3.1,
        boiledMin: 15,
        startBrix,
        addedShare: 1200 / 1390,
      });
      assert.ok(seen && Math.abs(Math.log(seen.value / factor)) < 0.15, `${factor}: ${seen?.value}`);
    }
  });

  it('is recovered from generated batches with a thermometer to 0.1 K and a refractometer to 0.1 °Bx', () => {
    for (const factor of [0.45, 0.9]) {
      const normal = normalDraws(17);
      const seen = Array.from({ length: 14 }, () => seenOf(factor * Math.exp(0.2 * normal()), normal)).filter(
        (s) => s !== null,
      );
      assert.ok(seen.length >= 10);
      const learnt = learntFigure(INVERSION_FACTOR, seen);
      assert.ok(learnt.low / 1.15 < factor && factor < learnt.high * 1.15, `${factor}: ${JSON.stringify(learnt)}`);
    }
  });

  it('says nothing where the readings cannot be met by any share', () => {
    const at = { brix: 65, waterC: 98.6, addedShare: 0.86 };
    assert.equal(splitShare({ ...at, stopC: 100 }), null);
    assert.equal(splitShare({ ...at, stopC: 110 }), null);
  });
});
