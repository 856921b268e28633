import { describe, expect, it } from 'vitest';
import {
  batchAskForm,
  fillForm,
  processForm,
  readingForm,
  sealForm,
  startForm,
  takeOutForm,
} from '#lib/forms/batch.ts';
import { batchAskOf } from '#lib/usecases/batch-ask-of-form.ts';

const id = 'batch-form-1';
const ask = {
  recipe: 'damson-jam',
  lot: ['a', 'b'],
  kg: ['1,04', '1.96'],
  trim: '0.24',
  brix: '14',
  water: '98.6',
  batches: '',
  sugar: '',
  addwater: '',
};

describe('the batch sheet’s question', () => {
  it('is read in kilograms and asked in grams, blanks left to the table', () => {
    expect(batchAskOf(batchAskForm.parse(ask))).toEqual({
      recipeId: 'damson-jam',
      draws: [
        { lotId: 'a', grams: 1040 },
        { lotId: 'b', grams: 1960 },
      ],
      kitchenId: null,
      panCode: null,
      jarKind: null,
      method: 'boiling-water',
      trimG: 240,
      brix: 14,
      waterC: 98.6,
      batches: null,
      amounts: {},
      measures: {},
    });
  });

  it('takes amounts the cook set, a 0 as a 0', () => {
    expect(
      batchAskOf(batchAskForm.parse({ ...ask, trim: '0', sugar: '1.2', addwater: '0', batches: '3' })),
    ).toMatchObject({ trimG: 0, batches: 3, amounts: { water: 0 }, measures: { sugar: { amount: 1.2, unit: 'kg' } } });
    const typed = batchAskOf(batchAskForm.parse({ ...ask, sugar: '4 1/2 cups', pectin: '2 tbsp' }));
    expect(typed.measures).toEqual({ sugar: { amount: 4.5, unit: 'cup' }, pectin: { amount: 2, unit: 'tbsp' } });
  });

  it('needs fruit, and figures that can be', () => {
    const why = (change: object) =>
      batchAskForm
        .safeParse({ ...ask, ...change })
        .error?.issues.map((i) => i.message)
        .join('; ');
    expect(why({ lot: [] })).toBe('choose the fruit first');
    expect(why({ water: '104' })).toBe('the boiling water is 104; it must lie between 80 and 103');
    expect(why({ brix: '0' })).toBe('the refractometer is 0; it must lie between 1 and 85');
    expect(why({ batches: '1.5' })).toBe('how many batches is 1.5; it must be a whole number');
    expect(why({ kg: ['', '1'] })).toBe('a weight is missing');
    expect(why({ recipe: '' })).toBe('the recipe is missing');
  });
});

describe('the steps of a batch', () => {
  it('carry an id made where they were entered', () => {
    expect(startForm.safeParse({ id: '' }).success).toBe(false);
    expect(startForm.parse({ id })).toEqual({ id });
  });

  it('are a reading within what an instrument can show', () => {
    expect(readingForm.parse({ id, code: 'x', kind: 'temperature', value: '103,0' }).value).toBe(103);
    expect(readingForm.safeParse({ id, code: 'x', kind: 'temperature', value: '201' }).success).toBe(false);
    expect(readingForm.safeParse({ id, code: 'x', kind: 'taste', value: '1' }).success).toBe(false);
  });

  it('are a filling in whole jars and grams, the trim left to the sheet when blank', () => {
    const typed = { id, code: 'x', jars: '6', partialG: '274', skimmingsG: '0', panLossG: '0', trimG: '' };
    expect(fillForm.parse(typed)).toEqual({
      ...typed,
      jars: 6,
      partialG: 274,
      skimmingsG: 0,
      panLossG: 0,
      trimG: null,
      keepTrim: false,
      seedsOut: false,
      brownCore: false,
    });
    expect(fillForm.parse({ ...typed, trimG: '0', keepTrim: 'on' })).toMatchObject({ trimG: 0, keepTrim: true });
    expect(fillForm.safeParse({ ...typed, jars: '6.5' }).success).toBe(false);
    expect(fillForm.safeParse({ ...typed, partialG: '' }).success).toBe(false);
  });

  it('are a load of named batches that boils or comes out', () => {
    expect(processForm.parse({ id, codes: ['a'], step: 'out', minutes: '', deviation: '  ' })).toEqual({
      id,
      codes: ['a'],
      step: 'out',
      whole: false,
      minutes: null,
      deviation: null,
    });
    expect(processForm.safeParse({ id, codes: [], step: 'out', minutes: '' }).error?.issues[0]?.message).toBe(
      'no batch was named',
    );
  });

  it('are seals answered with a shelf, and jars by number with the way they go', () => {
    expect(sealForm.safeParse({ id, code: 'x', address: '' }).error?.issues[0]?.message).toBe('the shelf is missing');
    const way = 'fridge';
    expect(takeOutForm.parse({ id, code: 'x', pieces: ['4', '1'], way }).pieces).toEqual([4, 1]);
    for (const pieces of [undefined, []])
      expect(takeOutForm.safeParse({ id, code: 'x', pieces, way }).error?.issues[0]?.message).toBe(
        'tick the jars first',
      );
    for (const pieces of [['0'], ['1.5'], ['one']])
      expect(takeOutForm.safeParse({ id, code: 'x', pieces, way }).success).toBe(false);
    expect(takeOutForm.safeParse({ id, code: 'x', pieces: ['1'], way: 'shelf' }).success).toBe(false);
  });
});
