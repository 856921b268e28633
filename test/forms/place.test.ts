import { describe, expect, it } from 'vitest';
import { ownPlace } from '#lib/forms/own-place.ts';
import { boughtForm, cropForm, waterForm } from '#lib/forms/place.ts';

const id = 'place-form-1';
const why = (result: { error?: { issues: { message: string }[] } | undefined }) =>
  result.error?.issues.map((i) => i.message).join('; ');

describe('a place of one’s own', () => {
  const typed = { id, name: 'Our garden', timeZone: 'Europe/London', altitude: '410', altitudeUnit: 'm' };

  it('lies at whole metres, also when feet were typed', () => {
    expect(ownPlace.parse(typed).altitudeM).toBe(410);
    expect(ownPlace.parse({ ...typed, altitude: '1345', altitudeUnit: 'ft' }).altitudeM).toBe(410);
  });

  it('needs a name, a time zone that exists and an altitude where people cook', () => {
    expect(why(ownPlace.safeParse({ ...typed, name: ' ' }))).toBe('the name is missing');
    expect(why(ownPlace.safeParse({ ...typed, timeZone: 'Mars/Base' }))).toBe('that time zone is not known');
    expect(why(ownPlace.safeParse({ ...typed, altitude: '' }))).toBe('the altitude is missing');
    expect(why(ownPlace.safeParse({ ...typed, altitude: '6000' }))).toBe(
      'the altitude is 6000; it must lie between -400 and 5000',
    );
  });
});

describe('what is changed about a place', () => {
  it('is something bought, with how much', () => {
    expect(boughtForm.parse({ id, item: 'sugar', qty: '12.5', supplier: ' a shop ' })).toEqual({
      id,
      item: 'sugar',
      qty: 12.5,
      supplier: 'a shop',
    });
    expect(why(boughtForm.safeParse({ id, item: 'sugar', qty: '0' }))).toBe(
      'how much is 0; it must lie between 0.001 and 200000',
    );
  });

  it('is a crop with its row and its picking window', () => {
    const typed = {
      foodId: 'damson',
      label: 'Damson',
      row: 'D3',
      count: '3',
      unit: 'tree',
      kgPerUnit: '20',
      windowFrom: '2025-09-05',
      windowTo: '2025-09-25',
    };
    expect(cropForm.parse(typed)).toMatchObject({ count: 3, kgPerUnit: 20, windowFrom: '09-05', windowTo: '09-25' });
    expect(why(cropForm.safeParse({ ...typed, windowTo: '2025-09-05' }))).toBe(
      'the last picking day must come after the first',
    );
    expect(why(cropForm.safeParse({ ...typed, windowFrom: '2025-09-31' }))).toContain(
      'the first picking day is not a day of the calendar',
    );
    expect(cropForm.safeParse({ ...typed, unit: 'acre' }).success).toBe(false);
  });

  it('is the boiling water, in hundredths', () => {
    expect(waterForm.parse({ id, kitchenId: 'home', centiC: '98,6' }).centiC).toBe(9860);
    expect(why(waterForm.safeParse({ id, kitchenId: 'home', centiC: '212' }))).toBe(
      'the boiling water is 212; it must lie between 80 and 103',
    );
  });
});
