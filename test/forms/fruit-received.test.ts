import { describe, expect, it } from 'vitest';
import { fruitReceivedForm } from '#lib/forms/fruit-received.ts';

const typed = {
  id: 'received-1',
  foodId: 'peach-white',
  supplier: 'a friend',
  weight: '3,2',
  unit: 'kg',
  grade: 'perfect',
  day: '2025-09-12',
  boxLot: '',
};
const wrong = (change: object): string => {
  const r = fruitReceivedForm.safeParse({ ...typed, ...change });
  return r.success ? '' : r.error.issues.map((i) => i.message).join('; ');
};

describe('fruit from elsewhere as typed', () => {
  it('is read in whole grams, in kilograms or pounds (1 lb = 453.59237 g)', () => {
    expect(fruitReceivedForm.parse(typed)).toMatchObject({ grams: 3200, groundFall: false, boxLot: null });
    expect(fruitReceivedForm.parse({ ...typed, weight: '10', unit: 'lb' }).grams).toBe(4536);
    expect(fruitReceivedForm.parse({ ...typed, groundFall: 'on' }).groundFall).toBe(true);
  });
  it('is refused with the figure, or with what is missing', () => {
    expect(wrong({ weight: '0' })).toBe('the weight is 0; it must lie between 0.01 and 2000');
    expect(wrong({ weight: '' })).toBe('the weight is missing');
    expect(wrong({ supplier: ' ' })).toBe('from whom is missing');
    expect(wrong({ day: '2025-02-30' })).toBe('"2025-02-30" is not a day of the calendar');
    expect(wrong({ grade: 'cull' })).toBe('choose a grade');
  });
});
