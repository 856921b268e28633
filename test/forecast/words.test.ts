import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { enough, lasts, partOfMonth, range, times, twoDigits } from '#lib/forecast/words.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('chances in words', () => {
  test('give the agreed phrases', () => {
    for (const v of vectors.words) assert.equal(times(v.p), v.text);
    assert.equal(times(0.98), 'about 49 times in 50');
    assert.equal(times(0.0001), 'hardly ever (fewer than 1 time in 100)');
  });

  test('always carry a number or say that all or none did, and never a word that stands for a chance alone', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => {
        assert.match(times(p), /\d|not in any of the seasons tried|in all the seasons tried/);
        assert.doesNotMatch(times(p), /likely|probabl|safe|%/i);
      }),
    );
  });

  test('a chance and its opposite mirror each other', () => {
    const inTenths = (text: string): number => {
      const [, a, b] = /(\d+) times? in (\d+)/.exec(text) as unknown as [string, string, string];
      return Number(a) / Number(b);
    };
    for (const p of [0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5])
      assert.ok(Math.abs(inTenths(times(p)) + inTenths(times(1 - p)) - 1) < 1e-9);
  });

  test('refuse what is not a share', () => assert.throws(() => times(1.2), RangeError));

  test('ranges keep two digits', () => {
    assert.equal(range(10.26, 26.31, 'kg'), 'between 10 and 26 kg');
    assert.equal(range(0.34, 1.567, 'kg'), 'between 0.34 and 1.6 kg');
    assert.equal(range(342, 344, 'cm'), 'about 340 cm');
    assert.equal(twoDigits(0), '0');
    assert.equal(twoDigits(99.6), '100');
  });

  test('sentences for a product and for a number to buy', () => {
    assert.equal(
      lasts({ name: 'Strawberry jam', lastsShare: 0.31, goneHalfTheTime: 'mid-March' }),
      'Strawberry jam lasts to next harvest about 3 times in 10. Half the time it is gone by mid-March.',
    );
    assert.equal(enough(60, 'lids', 0.9), '60 lids will be enough about 9 times in 10');
    assert.deepEqual(
      [partOfMonth(3, 'March'), partOfMonth(14, 'March'), partOfMonth(28, 'March')],
      ['early March', 'mid-March', 'late March'],
    );
  });
});
