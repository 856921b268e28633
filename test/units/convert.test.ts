import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import {
  fahrenheit,
  feet,
  fromFahrenheit,
  fromPounds,
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  kelvinFromFahrenheitDifference,
  LITRES_PER_CUBIC_FOOT,
  METRES_PER_FOOT,
  ML_PER_US_CUP,
  ML_PER_US_FLUID_OUNCE,
  ML_PER_US_GALLON,
  ML_PER_US_PINT,
  ML_PER_US_QUART,
  ML_PER_US_TABLESPOON,
  ML_PER_US_TEASPOON,
  MM_PER_INCH,
  pounds,
} from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';

const near = (got: number, want: number, within = 1e-9) =>
  assert.ok(Math.abs(got - want) <= within, `${got}, not ${want}`);

describe('the factors', () => {
  it('give the pound as 7000 grains of 64.79891 mg and sixteen ounces (yard and pound agreement, 1959)', () => {
    near(GRAMS_PER_POUND, 7000 * 0.06479891);
    near(GRAMS_PER_OUNCE * 16, GRAMS_PER_POUND);
  });

  it('give the US gallon as 231 cubic inches and its parts as quarters, eighths and so on (NIST Handbook 44, appendix C)', () => {
    const cubicInchMl = 2.54 ** 3;
    near(ML_PER_US_GALLON, 231 * cubicInchMl);
    for (const [ml, parts] of [
      [ML_PER_US_QUART, 4],
      [ML_PER_US_PINT, 8],
      [ML_PER_US_CUP, 16],
      [ML_PER_US_FLUID_OUNCE, 128],
      [ML_PER_US_TABLESPOON, 256],
      [ML_PER_US_TEASPOON, 768],
    ] as const)
      near(ml * parts, ML_PER_US_GALLON);
  });

  it('give the foot as 12 inches of 25.4 mm and the cubic foot from it', () => {
    near(METRES_PER_FOOT * 1000, 12 * MM_PER_INCH);
    near(LITRES_PER_CUBIC_FOOT, (12 * 2.54) ** 3 / 1000);
  });

  it('take 410 m for 1345 ft', () => assert.equal(Math.round(feet(410)), 1345));
});

describe('temperatures', () => {
  it('meet at the fixed points of both scales', () => {
    for (const [c, f] of [
      [0, 32],
      [100, 212],
      [-40, -40],
      [37, 98.6],
    ] as const) {
      near(fahrenheit(celsius(c)), f);
      near(fromFahrenheit(f), c);
    }
  });

  it('turn a difference of 8 °F into 4.44 K, without the 32', () =>
    near(kelvinFromFahrenheitDifference(8), 4.444, 0.001));

  it('come back as they went', () =>
    fc.assert(
      fc.property(fc.double({ min: -100, max: 400, noNaN: true }), (c) =>
        near(fromFahrenheit(fahrenheit(celsius(c))), c, 1e-9),
      ),
    ));
});

describe('a mass', () => {
  it('of whole grams comes back from pounds as the same whole grams', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000 }), (g) => assert.equal(Math.round(fromPounds(pounds(g))), g)),
    ));

  it('read in pounds and kept in whole grams is off by no more than half a gram', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400_000 }), (hundredths) => {
        const lb = hundredths / 100;
        const kept = Math.round(fromPounds(lb));
        assert.ok(Math.abs(fromPounds(pounds(kept)) - fromPounds(lb)) <= 0.5);
      }),
    ));

  it('of 27.3 lb is 12.38 kg and of 13.74 kg is 30.3 lb', () => {
    assert.equal(Math.round(fromPounds(27.3)), 12_383);
    near(pounds(13_740), 30.3, 0.05);
  });
});
