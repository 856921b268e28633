import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import {
  actId,
  count,
  massG,
  massKg,
  number,
  optional,
  plainDay,
  temperature,
  tick,
  toGrams,
  word,
} from '#lib/forms/fields.ts';

const read = (field: z.ZodType, typed: unknown) => {
  const result = field.safeParse(typed);
  return result.success ? result.data : result.error.issues.map((i) => i.message).join('; ');
};
const weight = { what: 'the weight', min: 0, max: 100 };

describe('a number typed', () => {
  it('is read as people write it, and not rounded', () => {
    for (const [typed, value] of [
      ['5.62', 5.62],
      ['5,62', 5.62],
      [' 2½ ', 2.5],
      ['1/3', 1 / 3],
      ['0', 0],
      ['100', 100],
    ] as const)
      expect(read(number(weight), typed)).toBe(value);
  });

  it('left blank is missing, never 0', () => {
    for (const blank of ['', '   ', '\u00a0']) expect(read(number(weight), blank)).toBe('the weight is missing');
    expect(number(weight).safeParse(undefined).success).toBe(false);
    expect(number(weight).safeParse(null).success).toBe(false);
  });

  it('that a machine would read is not read by guess', () => {
    for (const typed of ['0x1F', '1e2', 'Infinity', 'NaN', '٣'])
      expect(read(number(weight), typed)).toBe(`the weight: "${typed}" is not a number`);
    expect(read(number(weight), '1,250')).toContain('two ways');
    expect(read(number(weight), '-3')).toBe('the weight: "-3" is below zero');
  });

  it('beyond its bounds is refused with the figure and the bounds', () => {
    expect(read(number(weight), '100.01')).toBe('the weight is 100.01; it must lie between 0 and 100');
    expect(read(number({ ...weight, min: 80 }), '79,9')).toBe('the weight is 79,9; it must lie between 80 and 100');
    expect(read(number(weight), '9'.repeat(400))).toMatch(/^the weight is 9+; it must lie between 0 and 100$/);
  });
});

describe('masses, counts and temperatures', () => {
  it('become whole grams', () => {
    expect(read(massKg(weight), '5.62')).toBe(5620);
    expect(read(massKg(weight), '0.0004')).toBe(0);
    expect(read(massG(weight), '98.6')).toBe(99);
    expect([toGrams(27.3, 'lb'), toGrams(27.3, 'kg'), toGrams(0.1, 'lb')]).toEqual([12_383, 27_300, 45]);
  });

  it('become whole pieces or are refused', () => {
    expect(read(count({ what: 'jars', min: 0, max: 500 }), '6')).toBe(6);
    expect(read(count({ what: 'jars', min: 0, max: 500 }), '6.5')).toBe('jars is 6.5; it must be a whole number');
    expect(read(count({ what: 'jars', min: 0, max: 500 }), '501')).toBe('jars is 501; it must lie between 0 and 500');
  });

  it('become hundredths of a degree', () =>
    expect(read(temperature({ what: 'water', min: 80, max: 103 }), '98,6')).toBe(9860));
});

describe('what may stay empty', () => {
  it('is null when blank or left out, and checked when there', () => {
    const field = optional(number(weight));
    expect([read(field, ''), read(field, '  '), read(field, undefined)]).toEqual([null, null, null]);
    expect(read(field, '0')).toBe(0);
    expect(read(field, 'x')).toBe('the weight: "x" is not a number');
  });
});

describe('days, ids, words and ticks', () => {
  it('are days of the calendar', () => {
    expect(read(plainDay, ' 2024-02-29 ')).toBe('2024-02-29');
    expect(read(plainDay, '2025-02-29')).toBe('"2025-02-29" is not a day of the calendar');
  });

  it('are ids a device makes, and nothing that could be a path or a query', () => {
    expect(read(actId, 'b3f0c2de-1111-4222-8333-123456789abc')).toBe('b3f0c2de-1111-4222-8333-123456789abc');
    for (const bad of ['', 'short', 'a'.repeat(121), '../../../etc', "x'; DROP TABLE", 'has space in it'])
      expect(read(actId, bad)).toBe('the form has lost its id; open it again');
  });

  it('may lie below zero where their bounds do', () => {
    const cold = number({ what: 'the coldest', min: -40, max: 40 });
    expect(['-18', '−18,5', '4'].map((v) => read(cold, v))).toEqual([-18, -18.5, 4]);
    expect(read(cold, '-41')).toBe('the coldest is -41; it must lie between -40 and 40');
    expect(read(number({ what: 'the sugar', min: 0, max: 9 }), '-1')).toBe('the sugar: "-1" is below zero');
  });

  it('are words of a length', () => {
    expect(read(word('the row', 5), ' D3 ')).toBe('D3');
    expect(read(word('the row', 5), '   ')).toBe('the row is missing');
    expect(read(word('the row', 5), 'abcdef')).toBe('the row is longer than 5 letters');
  });

  it('are ticked or not', () => {
    expect(['on', 'true', true, 'off', '', undefined, 'no'].map((v) => read(tick, v))).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });
});
