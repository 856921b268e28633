import { describe, expect, it } from 'vitest';
import { FITTING_KINDS, fieldsOf, fittingForm, STORE_KINDS, shownText } from '#lib/forms/fittings.ts';

const jars = [{ code: 'HP', label: 'half-pint' }];

describe('what a place is fitted with', () => {
  it('is asked in people’s units and kept in whole stored ones', () => {
    const pan = fittingForm(fieldsOf('pan', { jars, storeKind: null }));
    const typed = { label: ' Wide pan ', ml: '9,5', diameterMm: '32.5', maxFillPercent: '', evapGPerMin: '45' };
    expect(pan.parse(typed)).toEqual({
      label: 'Wide pan',
      ml: 9500,
      diameterMm: 325,
      maxFillPercent: null,
      evapGPerMin: 45,
    });
  });

  it('is refused with the number that is wrong', () => {
    const pan = fittingForm(fieldsOf('pan', { jars, storeKind: null })).safeParse({
      label: '',
      ml: '900',
      diameterMm: '',
      maxFillPercent: '',
      evapGPerMin: '',
    });
    expect(pan.error?.issues.map((i) => i.message)).toEqual([
      'what you call it is missing',
      'holds to the brim is 900; it must lie between 0.5 and 200',
    ]);
  });

  it('shows every stored figure as it was typed', () => {
    for (const kind of FITTING_KINDS)
      for (const storeKind of STORE_KINDS)
        for (const f of fieldsOf(kind, { jars, storeKind }))
          if (f.as === 'number') {
            const schema = fittingForm([f]);
            for (const typed of [f.min, f.max]) {
              const kept = schema.parse({ [f.name]: String(typed) })[f.name];
              expect(shownText(f, kept), `${kind} ${f.name}`).toBe(String(typed));
            }
          }
  });
});
