import { describe, expect, it } from 'vitest';
import { labelQuery } from '#lib/forms/labels.ts';
import { parseForm } from '#lib/forms/parse-form.ts';
import { COUNT_LISTS, countForm, SETTLE_LISTS, settleForm } from '#lib/forms/stock-take.ts';
import { takeForm } from '#lib/forms/take.ts';

const form = (fields: [string, string][]) => {
  const data = new FormData();
  for (const [k, v] of fields) data.append(k, v);
  return data;
};

describe('a count form', () => {
  const typed = (counted: string[], unlabelled: string[] = []) =>
    parseForm(
      countForm,
      form([
        ['id', 'count-form-1'],
        ['place', 'B1-S2'],
        ...['crabapple-jelly|HP', 'redcurrant-jelly|HP'].map((k): [string, string] => ['keys', k]),
        ...counted.map((n): [string, string] => ['counted', n]),
        ...['HP', 'PT'].map((k): [string, string] => ['items', k]),
        ...unlabelled.map((n): [string, string] => ['unlabelled', n]),
      ]),
      COUNT_LISTS,
    );

  it('counts what was typed: a blank is not counted, a nought is', () => {
    expect(typed(['12', ''], ['', '3'])).toMatchObject({
      value: { counts: [{ key: 'crabapple-jelly|HP', counted: 12 }], unlabelled: [{ item: 'PT', count: 3 }] },
    });
    expect(typed(['', '0'])).toMatchObject({ value: { counts: [{ key: 'redcurrant-jelly|HP', counted: 0 }] } });
  });

  it('refuses what is no count, and names the line', () => {
    const wrong = typed(['a dozen or so', '-2']);
    expect(wrong.ok).toBe(false);
    expect(JSON.stringify(wrong)).toMatch(/crabapple-jelly: .*redcurrant-jelly: /);
  });

  it('pairs each difference with its reason, each jar size with its lot', () => {
    const parsed = parseForm(
      settleForm,
      form([
        ['id', 'settle-form-1'],
        ['countId', 'count-form-1'],
        ['keys', 'a|HP'],
        ['reasons', 'eaten'],
        ['items', 'HP'],
        ['lots', ''],
      ]),
      SETTLE_LISTS,
    );
    expect(parsed).toMatchObject({
      value: { reasons: [{ key: 'a|HP', reason: 'eaten' }], takenFor: [{ item: 'HP', lot: null }] },
    });
  });
});

describe('a jar given by the button with a name', () => {
  it('goes to that person', () => {
    const data = form([
      ['id', 'give-form-1'],
      ['slug', 'damson-jam'],
      ['who', 'somebody else'],
      ['give', 'the choir'],
    ]);
    expect(parseForm(takeForm, data)).toMatchObject({ value: { to: 'given', who: 'the choir', count: 1 } });
  });

  it('keeps what was paid in the smallest coin', () => {
    const data = form([
      ['id', 'sell-form-1'],
      ['slug', 'damson-jam'],
      ['to', 'sold'],
      ['price', '6,50'],
    ]);
    expect(parseForm(takeForm, data)).toMatchObject({ value: { to: 'sold', price: 650 } });
  });
});

describe('a label page’s address', () => {
  it('takes what does not fit as the usual', () => {
    expect(
      labelQuery.parse({
        lot: ' X ',
        purpose: 'loud',
        paper: 'a3',
        count: '-1',
        used: '1e9',
        right: '0,5',
        down: '99',
      }),
    ).toEqual({
      lot: 'X',
      purpose: 'home',
      paper: 'a4',
      count: 0,
      used: 0,
      right: 0.5,
      down: 0,
    });
  });
});
