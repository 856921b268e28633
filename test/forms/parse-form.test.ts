import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { number, word } from '#lib/forms/fields.ts';
import { formValues, parseForm } from '#lib/forms/parse-form.ts';

const data = (...fields: [string, string | Blob][]): FormData => {
  const form = new FormData();
  for (const [key, value] of fields) form.append(key, value);
  return form;
};
const schema = z.object({ row: word('the row'), kg: z.array(number({ what: 'a weight', min: 0, max: 10 })) });

describe('a form', () => {
  it('comes out as typed values, repeated fields as a list where one is meant', () => {
    expect(parseForm(schema, data(['row', 'D3'], ['kg', '1,5'], ['kg', '2']), ['kg'])).toEqual({
      ok: true,
      value: { row: 'D3', kg: [1.5, 2] },
    });
  });

  it('keeps a list of one a list and takes the last of a field sent twice', () => {
    expect(formValues(data(['kg', '1'], ['row', 'a'], ['row', 'b']), ['kg'])).toEqual({ kg: ['1'], row: 'b' });
  });

  it('leaves out the framework’s own fields and files', () => {
    expect(formValues(data(['$ACTION_ID', 'x'], ['row', 'D3'], ['photo', new Blob(['x'])]))).toEqual({
      row: 'D3',
      photo: '',
    });
  });

  it('that is wrong gives every field’s messages and all that was typed', () => {
    expect(
      parseForm(schema, data(['row', ''], ['kg', '1'], ['kg', 'x'], ['kg', '11'], ['note', 'keep me']), ['kg']),
    ).toEqual({
      ok: false,
      state: {
        status: 'invalid',
        fields: {
          row: ['the row is missing'],
          'kg.1': ['a weight: "x" is not a number'],
          'kg.2': ['a weight is 11; it must lie between 0 and 10'],
        },
        values: { row: '', kg: '1\nx\n11', note: 'keep me' },
      },
    });
  });

  it('that is wrong as a whole says so under "form"', () => {
    const whole = z.object({ a: z.string() }).refine(() => false, 'not like this');
    expect(parseForm(whole, data(['a', '1']))).toMatchObject({
      ok: false,
      state: { fields: { form: ['not like this'] } },
    });
  });
});
