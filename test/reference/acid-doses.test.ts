/** Penn State and Missouri GH1456 (tomato), MSU sheet 01600838 (fig), NCHFP (Asian pear). */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { ACID_DOSES, acidDoses } from '#lib/reference/acid-doses.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { ML_PER_US_TABLESPOON } from '#lib/units/convert.ts';

const printed = (food: string, jar: JarSize) => {
  const found = acidDoses(food, jar);
  return found.ok ? found.doses.map((d) => `${d.amount} ${d.unit} ${d.agent}`) : found.reason;
};

describe('acid doses', () => {
  it('give every alternative of a tomato jar', () => {
    assert.deepEqual(printed('tomato', 'pint'), [
      '15 mL bottled lemon juice',
      '0.25 tsp citric acid',
      '30 mL vinegar of 5 %',
    ]);
    assert.deepEqual(printed('tomato', 'quart'), [
      '30 mL bottled lemon juice',
      '0.5 tsp citric acid',
      '60 mL vinegar of 5 %',
    ]);
  });

  it('give figs juice or citric acid, Asian pears juice only', () => {
    assert.deepEqual(printed('fig', 'quart'), ['30 mL bottled lemon juice', '0.5 tsp citric acid']);
    assert.deepEqual(printed('pear-asian', 'pint'), ['15 mL bottled lemon juice']);
  });

  it('double from the pint to the quart, in the table and in spoons', () => {
    for (const d of ACID_DOSES.filter((x) => x.jar === 'pint')) {
      const quart = ACID_DOSES.find((x) => x.jar === 'quart' && x.foodId === d.foodId && x.agent === d.agent);
      assert.equal(quart?.amount, d.amount * 2, `${d.foodId} ${d.agent}`);
    }
    for (const d of ACID_DOSES.filter((x) => x.unit === 'mL')) {
      assert.ok(Math.abs(Number(d.text[0]) * ML_PER_US_TABLESPOON - d.amount) < 1, d.text);
    }
  });

  it('refuse other foods and jars without a printed dose', () => {
    assert.match(String(printed('apricot', 'pint')), /no acid dose was tested/);
    assert.match(String(printed('fig', 'half-pint')), /pints and quarts, not for a half-pint/);
    assert.match(String(printed('tomato', 'half-gallon')), /not for a half-gallon/);
    assert.deepEqual(printed('fig', 'twelve-ounce'), printed('fig', 'pint'));
  });
});
