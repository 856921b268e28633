/** Cups and spoons against USDA SR26 (sugar 200 g a cup, bottled lemon juice 15 g a tablespoon) and the estimate for home powder. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { householdOf, weightOf } from '#lib/batch/household.ts';
import { parseMeasure } from '#lib/units/measure.ts';

const measure = (text: string) => {
  const parsed = parseMeasure(text, 'g');
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.value;
};

describe('a typed amount', () => {
  it('is read with its unit, or in the unit beside the field', () => {
    expect(measure('870 g')).toEqual({ amount: 870, unit: 'g' });
    expect(measure('4 1/3 cups').amount).toBeCloseTo(4.3333, 4);
    expect(measure('2½ Tbsp')).toEqual({ amount: 2.5, unit: 'tbsp' });
    expect(measure('33')).toEqual({ amount: 33, unit: 'g' });
    expect(parseMeasure('2 handfuls', 'g')).toEqual({
      ok: false,
      reason: '"handfuls" is not kg, g, cups, tbsp or tsp',
    });
    expect(parseMeasure('x cups', 'g').ok).toBe(false);
  });
});

describe('a household measure', () => {
  it('of sugar and lemon juice weighs what is printed', () => {
    expect(weightOf('sugar', measure('3 cups'))).toEqual({ grams: 600, band: null, weighIt: null });
    expect(weightOf('lemon-juice-bottled', measure('2 tbsp'))).toMatchObject({ grams: 30 });
  });

  it('of home powder is near 15 g for two tablespoons, not 60, and is to be weighed', () => {
    const told = weightOf('apple-powder', measure('2 tbsp'));
    expect(told).toMatchObject({ grams: 14, weighIt: expect.stringMatching(/near 14 g \(10 to 18\): weigh it/) });
  });

  it('is refused where nothing is printed', () => {
    expect(weightOf('almonds', measure('1 cup'))).toEqual({
      refused: 'no weight is printed for one cup of almonds: weigh it',
    });
    expect(weightOf('sugar', measure('1 tbsp'))).toHaveProperty('refused');
  });

  it('of a shown weight comes back within half of its own step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 5000 }), (grams) => {
        const text = householdOf('sugar', grams)?.text ?? null;
        const [, n = ''] = /about ([\d¼½¾]+)/.exec(text ?? '') ?? [];
        const parsed = parseMeasure(`${n} cups`, 'g');
        if (!text?.includes('cup')) return true;
        const back = parsed.ok ? weightOf('sugar', parsed.value) : { refused: '' };
        return 'grams' in back && Math.abs(back.grams - grams) <= 25 + 1e-9;
      }),
    );
    expect(householdOf('sugar', 870)).toEqual({
      text: 'about 4¼ cups',
      measure: 'cup',
      gramsEach: 200,
      source: 'USDA',
    });
    expect(householdOf('apple-powder', 33)).toBeNull();
  });
});
