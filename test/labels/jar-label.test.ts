import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { descending, type Ingredient, waterLeft } from '#lib/labels/ingredients.ts';
import { blankFields, jarLabel, type LabelFacts, netText } from '#lib/labels/jar-label.ts';
import { fruitWords, nameOnLabel } from '#lib/labels/names.ts';
import { ruleCardOf } from '#lib/labels/rule-card.ts';
import { isPlainDate } from '#lib/units/plain-date.ts';

const weighed = (name: string, grams: number | null, allergens: string[] = []): Ingredient => ({
  name,
  grams,
  allergens,
  basis: grams === null ? 'noted' : 'weighed',
});
const card = ruleCardOf({ maker: 'A grower', address: 'A lane', contact: 'at the stall', asks: 'contact' });
const facts: LabelFacts = {
  name: 'Damson jam',
  ingredients: [weighed('damsons', 1380), weighed('sugar', 1200)],
  netG: 311.5,
  madeOn: '2025-09-13',
  bestBefore: '2026-09-13',
  lot: '25256-DAM-A',
  keeping: 'shelf',
  processed: true,
  againstSale: [],
};

/** Text that is often blank, as a form or a record may leave it. */
const text = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom('', '  ') },
  { weight: 12, arbitrary: fc.string({ minLength: 1, maxLength: 12 }) },
);
const mostly = <T>(usual: fc.Arbitrary<T>, odd: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 12, arbitrary: usual }, { weight: 1, arbitrary: odd });
const day = mostly(fc.constantFrom('2025-09-13', '2026-01-15'), fc.constantFrom('', '2025-02-30'));
const anyFacts: fc.Arbitrary<LabelFacts> = fc.record({
  name: text,
  ingredients: mostly<readonly Ingredient[] | null>(
    fc.array(
      text.map((name) => weighed(name, 100)),
      { minLength: 1, maxLength: 4 },
    ),
    fc.constantFrom(null, []),
  ),
  netG: mostly<number | null>(fc.integer({ min: 1, max: 2000 }), fc.constantFrom(null, 0, -5, Number.NaN)),
  madeOn: day,
  bestBefore: mostly<string | null>(day, fc.constant(null)),
  lot: text,
  keeping: fc.constantFrom('shelf' as const, 'fridge' as const, 'freezer' as const, 'dry' as const),
  processed: fc.boolean(),
  againstSale: mostly<string[]>(fc.constant([]), fc.array(text, { maxLength: 2 })),
});
const anyCard = fc
  .record({ maker: text, address: text, contact: text, permit: text, homeKitchen: text })
  .chain((c) => fc.constantFrom('', 'contact', 'permit,homeKitchen').map((asks) => ruleCardOf({ ...c, asks })));

describe('a sale label', () => {
  it('is never printed with an empty required field, whatever the records hold (story E5)', () => {
    let printed = 0;
    fc.assert(
      fc.property(anyFacts, anyCard, (f, c) => {
        const answer = jarLabel(f, c, 'sale');
        if (!answer.ok) {
          expect(answer.blanks.length + answer.against.length).toBeGreaterThan(0);
          return;
        }
        printed += 1;
        const { label } = answer;
        for (const field of [
          label.name,
          label.ingredients,
          label.net,
          label.bestBefore,
          label.madeOn,
          label.lot,
          label.keep,
        ])
          expect(field?.trim()).toBeTruthy();
        expect(isPlainDate(f.bestBefore ?? '')).toBe(true);
        expect(label.maker[0]).toBe(`Made by ${c.maker}, ${c.address}`);
        expect(c.maker && c.address).toBeTruthy();
        for (const line of c.asks)
          expect([...label.maker, label.homeKitchen].filter((t) => t === c[line] && c[line] !== '')).not.toEqual([]);
        expect(f.againstSale).toEqual([]);
      }),
      { numRuns: 5000, seed: 1 },
    );
    expect(printed).toBeGreaterThan(200);
  });

  it('names each field that is blank', () => {
    const blank = { ...facts, name: ' ', ingredients: null, netG: null, bestBefore: null, madeOn: '', lot: '' };
    const named = blankFields(blank, ruleCardOf({ asks: 'contact,permit,homeKitchen' })).map((b) => b.split(/[:,]/)[0]);
    expect(named).toEqual([
      'name',
      'ingredients',
      'net weight',
      'made on',
      'best before',
      'lot',
      'maker',
      'maker’s address',
      'contact',
      'permit number',
      'home-kitchen sentence',
    ]);
    expect(blankFields(facts, card)).toEqual([]);
  });

  it('is not made for a lot that may not be sold, while the small label is', () => {
    const held = { ...facts, againstSale: ['on hold: mould'] };
    expect(jarLabel(held, card, 'sale')).toEqual({ ok: false, blanks: [], against: ['on hold: mould'] });
    const home = jarLabel({ ...held, ingredients: [weighed('butter', null, ['milk (butter)'])] }, card, 'home');
    expect(home.ok && [home.label.contains, home.label.processed, home.label.lot]).toEqual([
      'milk (butter)',
      'yes',
      '25256-DAM-A',
    ]);
  });
});

describe('the lines of a label', () => {
  it('give the net weight in both units, never more than is in the jar (1 oz is 28.349523125 g)', () => {
    expect(netText(311.5)).toBe('311 g (10.9 oz)');
    expect(netText(28.35)).toBe('28 g (1.0 oz)');
    expect(netText(28.3)).toBe('28 g (0.9 oz)');
    expect(netText(0)).toBeNull();
    expect(netText(null)).toBeNull();
  });

  it('put ingredients in descending weight, same names together, the unweighed last', () => {
    const list = descending([
      weighed('butter', null, ['milk (butter)']),
      weighed('sugar', 1200),
      weighed('damsons', 700),
      weighed('damsons', 680),
      weighed('water', 0),
    ]);
    expect(list.map((i) => [i.name, i.grams])).toEqual([
      ['damsons', 1380],
      ['sugar', 1200],
      ['butter', null],
    ]);
  });

  it('leave out water that has boiled off again', () => {
    expect(waterLeft(150, 587)).toBe(0);
    expect(waterLeft(900, 100)).toBe(800);
  });

  it('name fruit in everyday words', () => {
    expect(
      [
        'Cherry, sour',
        'Apple (trial row, mixed)',
        'Tayberry and trailing blackberry',
        'Orange, bitter (whole fruit)',
        'Rhubarb',
        'Tomato',
        'Peach, yellow',
      ].map(fruitWords),
    ).toEqual([
      'sour cherries',
      'apples',
      'tayberries and trailing blackberries',
      'bitter oranges',
      'rhubarb',
      'tomatoes',
      'peaches',
    ]);
  });

  it('keep a reserved name only where the composition allows it (21 CFR 150)', () => {
    expect(nameOnLabel('Damson jam', ['jam', 'preserve'])).toBe('Damson jam');
    expect(nameOnLabel('Damson jam', ['fruit spread'])).toBe('Damson fruit spread');
    expect(nameOnLabel('Apple butter', ['fruit butter'])).toBe('Apple butter');
    expect(nameOnLabel('Seville marmalade (Feb)', null)).toBe('Seville marmalade');
    expect(nameOnLabel('Apple sauce', ['fruit spread'])).toBe('Apple sauce');
  });
});
