import { describe, expect, it } from 'vitest';
import { parseForm } from '#lib/forms/parse-form.ts';
import { takeForm } from '#lib/forms/take.ts';

const sent = (fields: Record<string, string>) => {
  const form = new FormData();
  for (const [k, v] of Object.entries({ id: 'take-form-1', slug: 'damson-jam', ...fields })) form.append(k, v);
  return parseForm(takeForm, form);
};

describe('jars taken', () => {
  it('are one, eaten, where nothing more is said', () => {
    expect(sent({})).toEqual({
      ok: true,
      value: { id: 'take-form-1', slug: 'damson-jam', count: 1, to: 'eaten', who: null, lot: null, price: null },
    });
  });

  it('are as many as were typed, to whom it was said', () => {
    expect(sent({ count: '3', to: 'given', who: ' a neighbour ' })).toMatchObject({
      value: { count: 3, to: 'given', who: 'a neighbour' },
    });
  });

  it('are never none, less than none, part of a jar, a blank or another way out', () => {
    for (const count of ['0', '-1', '1.5', '', '501', 'two']) expect(sent({ count }).ok, count).toBe(false);
    expect(sent({ to: 'lost' }).ok).toBe(false);
    expect(sent({ slug: '' })).toMatchObject({ state: { fields: { slug: ['the line is missing'] } } });
  });
});
