import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { parseNumber } from '#lib/units/parse-number.ts';

const numberIn = (text: string): number => {
  const parsed = parseNumber(text);
  assert.ok(parsed.ok, `"${text}": ${parsed.ok ? '' : parsed.reason}`);
  return parsed.value;
};
const reasonOf = (text: string): string => {
  const parsed = parseNumber(text);
  assert.ok(!parsed.ok, `"${text}" was read as ${parsed.ok ? parsed.value : ''}`);
  return parsed.reason;
};

describe('a number as people write it', () => {
  it('is read', () => {
    const table: [string, number][] = [
      ['0', 0],
      ['7', 7],
      ['007', 7],
      ['2.5', 2.5],
      ['2,5', 2.5],
      ['.5', 0.5],
      [',5', 0.5],
      ['5.', 5],
      ['  5.62 ', 5.62],
      ['1/2', 0.5],
      ['2 1/2', 2.5],
      ['2-1/2', 2.5],
      ['2½', 2.5],
      ['2 ½', 2.5],
      ['2\u00a0½', 2.5],
      ['¼', 0.25],
      ['¾', 0.75],
      ['⅓', 1 / 3],
      ['⅔', 2 / 3],
      ['⅛', 0.125],
      ['⅞', 0.875],
      ['1250', 1250],
      ['1.250', 1.25],
      ['0,620', 0.62],
      ['13,74', 13.74],
      ['1,2345', 1.2345],
    ];
    for (const [text, value] of table) assert.ok(Math.abs(numberIn(text) - value) < 1e-12, text);
  });

  it('comes back as the number it was printed from, with a point or a comma', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 2 }), (n, decimals) => {
        const text = (n / 10 ** decimals).toFixed(decimals);
        assert.equal(numberIn(text), n / 10 ** decimals);
        assert.equal(numberIn(text.replace('.', ',')), n / 10 ** decimals);
      }),
    ));
});

describe('what can be read two ways', () => {
  it('is refused with both readings', () => {
    assert.match(reasonOf('1,250'), /two ways: 1250 or 1\.250/);
    assert.match(reasonOf('12,000'), /two ways: 12000 or 12\.000/);
    assert.match(reasonOf('1-2'), /two ways: a range, or 1 2/);
  });
});

describe('what is no number', () => {
  it('is refused with the reason, never read as something else', () => {
    assert.equal(reasonOf(''), 'a number is missing');
    assert.equal(reasonOf('   '), 'a number is missing');
    assert.match(reasonOf('-3'), /below zero/);
    assert.match(reasonOf('-½'), /below zero/);
    assert.match(reasonOf('1/0'), /divides by zero/);
    assert.match(reasonOf('2 1/0'), /divides by zero/);
    for (const text of [
      '0x1F',
      '1e3',
      'NaN',
      'Infinity',
      '5 kg',
      '5.6.2',
      '1,2,3',
      '1/2/3',
      '2½½',
      '+5',
      '.',
      ',',
      '/',
      '٣',
    ])
      assert.match(reasonOf(text), /is not a number/, text);
  });

  it('never yields anything but a number of zero or more, or a reason', () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (text) => {
        const parsed = parseNumber(text);
        if (parsed.ok) assert.ok(parsed.value >= 0 && !Number.isNaN(parsed.value));
        else assert.ok(parsed.reason.length > 5);
      }),
    ));
});
