import { describe, expect, it } from 'vitest';
import { againstSale, type SaleQuestion } from '#lib/labels/may-be-sold.ts';
import { ruleCardOf } from '#lib/labels/rule-card.ts';

const lot: SaleQuestion['lot'] = {
  kind: 'jars',
  household: false,
  process: 'as tested',
  seal: 'sealed',
  hold: null,
  label: 'Damson jam',
};
const asked = (known: Partial<SaleQuestion['lot']> = {}, more: Partial<SaleQuestion> = {}) =>
  againstSale({
    lot: { ...lot, ...known },
    juiceRule: '',
    ingredientsKnown: true,
    badFruit: [],
    ruleCardChecked: true,
    ...more,
  });

describe('may it be sold?', () => {
  it('only when nothing at all stands against it', () => {
    expect(asked()).toEqual([]);
    expect(asked({ label: 'Apple juice, canned' }, { juiceRule: 'Warning printed as the office gave it' })).toEqual([]);
  });

  it.each<[string, Partial<SaleQuestion['lot']>, Partial<SaleQuestion>, RegExp]>([
    ['on hold', { hold: 'mould' }, {}, /on hold: mould/],
    ['a household line', { household: true }, {}, /household and gifts/],
    ['a short process', { process: 'not as tested' }, {}, /process not as tested/],
    ['an unknown process', { process: null }, {}, /process unknown/],
    ['an unchecked seal', { seal: 'waiting' }, {}, /seals not checked/],
    ['an unverified seal', { seal: 'unverified' }, {}, /seal unverified/],
    ['a jar from the fridge', { kind: 'cold-jars', process: null, seal: null }, {}, /no tested process/],
    ['windfalls in it', {}, { badFruit: ['H-25290-B1-CAP-1/P'] }, /ground-fall or cull fruit in it: H-25290/],
    ['unknown ingredients', {}, { ingredientsKnown: false }, /not on record/],
    ['juice, unanswered', { label: 'Apple juice, canned' }, {}, /what your place asks of it is not on the rule card/],
    ['no rule card', {}, { ruleCardChecked: false }, /rule card/],
  ])('not with %s', (_name, known, more, reason) => {
    expect(asked(known, more)).toEqual([expect.stringMatching(reason)]);
  });
});

describe('the rule card', () => {
  it('is empty until it is filled in, and asks only for lines it knows', () => {
    expect(ruleCardOf(undefined)).toMatchObject({ maker: '', checkedOn: '', asks: [] });
    expect(ruleCardOf({ maker: ' A grower ', asks: 'permit,colour' })).toMatchObject({
      maker: 'A grower',
      asks: ['permit'],
    });
  });
});
