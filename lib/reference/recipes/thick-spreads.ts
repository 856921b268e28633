/** Conserves, marmalades, preserves, butters, pastes. Grams per kg of prepared fruit; published cups turned into grams. */
import type { Recipe } from './recipe.ts';
import {
  BUTTER_WORK,
  CRUSHED_CUPS,
  dose,
  house,
  only,
  part,
  published,
  type RecipeDraft,
  SPREAD_KEEPS,
  SPREAD_WORK,
} from './recipe-draft.ts';

type Own = Pick<RecipeDraft, 'id' | 'title' | 'fruits' | 'sugar'> & Partial<RecipeDraft>;

const SPREAD = {
  grades: ['perfect', 'blemished'],
  finish: { by: 'solids', brix: 65 },
  jarSizes: ['half-pint', 'quarter-pint', 'twelve-ounce', 'pint'],
  ceiling: CRUSHED_CUPS,
  work: SPREAD_WORK,
  keeps: SPREAD_KEEPS,
} as const;

const conserve = (own: Own): RecipeDraft => ({
  ...SPREAD,
  kind: 'conserve',
  process: { product: 'conserve-incl-nuts', pack: 'hot' },
  ...own,
});
const marmalade = (own: Own): RecipeDraft => ({
  ...SPREAD,
  kind: 'marmalade',
  process: { product: 'marmalade', pack: 'hot' },
  ...own,
});
const preserve = (own: Own): RecipeDraft => ({
  ...SPREAD,
  kind: 'preserve',
  process: { product: 'jam-or-preserve-no-added-pectin', pack: 'hot' },
  ...own,
});
const butter = (own: Own): RecipeDraft => ({
  ...SPREAD,
  kind: 'butter',
  grades: ['perfect', 'blemished', 'soft'],
  finish: { by: 'solids', brix: 43 },
  ceiling: { by: 'pan' },
  process: { product: 'fruit-butter-other-acid-fruit', pack: 'hot' },
  work: BUTTER_WORK,
  ...own,
});
/** No process row was ever published for fruit paste: fridge or freezer. */
const paste = (own: Own): RecipeDraft => ({
  ...SPREAD,
  kind: 'paste',
  grades: ['perfect', 'blemished', 'soft'],
  finish: { by: 'solids', brix: 75 },
  ceiling: { by: 'pan' },
  process: null,
  jarSizes: ['quarter-pint'],
  work: BUTTER_WORK,
  ...own,
});
const lemon = (gPerKg: number) => ({ item: 'lemon-juice-bottled', gPerKg, purpose: 'gel' }) as const;

const APPLE_TRIM = { material: 'apple-peel-core', share: 0.23, use: 'pectin', seedsOutFirst: true } as const;

export const CONSERVES: readonly Recipe[] = [
  house(
    conserve({
      id: 'sour-cherry-almond-conserve',
      title: 'Sour cherry-almond conserve',
      fruits: only('cherry-sour'),
      sugar: dose('sugar', 750),
      water: dose('water', 80),
      acid: lemon(30),
      others: [{ item: 'almonds', gPerKg: 60, when: 'after the finish' }],
    }),
  ),
  house(
    conserve({
      id: 'blueberry-lemon-conserve',
      title: 'Blueberry-lemon conserve',
      fruits: [part(['blueberry'], 0.85, 0.92, 0.97), part(['lemon-whole'], 0.03, 0.08, 0.15)],
      sugar: dose('sugar', 750),
      water: dose('water', 100),
    }),
  ),
  house(
    conserve({
      id: 'pear-ginger-conserve',
      title: 'Pear-ginger conserve',
      fruits: only('pear'),
      sugar: dose('sugar', 700),
      acid: lemon(60),
      others: [dose('ginger-ground', 5)],
    }),
  ),
  house(
    conserve({
      id: 'plum-walnut-conserve',
      title: 'Plum-walnut conserve',
      fruits: only('plum-european'),
      sugar: dose('sugar', 750),
      acid: lemon(20),
      others: [dose('raisins', 80), { item: 'walnuts', gPerKg: 60, when: 'after the finish' }],
    }),
  ),
  published(
    conserve({
      id: 'grape-nut-conserve',
      title: 'Grape conserve with walnuts',
      fruits: [part(['grape-slipskin'], 0.9, 0.92, 0.94), part(['orange-sweet'], 0.06, 0.08, 0.1)],
      sugar: dose('sugar', 437),
      others: [dose('raisins', 79), { item: 'walnuts', gPerKg: 64, when: 'after the finish' }],
      finish: { by: 'solids', brix: 67 },
    }),
    { sources: ['HGB_GRAPECONS'], status: 'verified' },
  ),
];

export const MARMALADES: readonly Recipe[] = [
  house(
    marmalade({
      id: 'seville-marmalade',
      title: 'Seville marmalade',
      fruits: [part(['orange-seville'], 0.8, 0.88, 1), part(['lemon-whole'], 0, 0.12, 0.2)],
      sugar: dose('sugar', 2000),
      water: dose('water', 2000),
      byProducts: [{ material: 'citrus-rind', share: 0.1, use: 'zest', seedsOutFirst: true }],
    }),
  ),
  published(
    marmalade({
      id: 'citrus-marmalade',
      title: 'Citrus marmalade',
      fruits: [
        part(['grapefruit'], 0.2, 0.3, 0.4),
        part(['orange-sweet'], 0.5, 0.6, 0.7),
        part(['lemon-whole'], 0.05, 0.1, 0.15),
      ],
      sugar: dose('sugar', 625),
      water: dose('water', 494),
    }),
    { sources: ['CITRUSMARM'], status: 'verified' },
  ),
  published(
    marmalade({
      id: 'apple-marmalade',
      title: 'Apple marmalade',
      fruits: [part(['apple-cooking', 'apple-dessert'], 0.82, 0.85, 0.88), part(['orange-sweet'], 0.12, 0.15, 0.18)],
      sugar: dose('sugar', 971),
      water: dose('water', 346),
      acid: lemon(30),
      finish: { by: 'solids', brix: 67 },
      byProducts: [APPLE_TRIM],
    }),
    { sources: ['APPLEMARM'], status: 'verified' },
  ),
];

export const PRESERVES: readonly Recipe[] = [
  house(
    preserve({
      id: 'whole-strawberry-preserve',
      title: 'Whole strawberry preserve',
      fruits: only('strawberry'),
      grades: ['perfect'],
      sugar: dose('sugar', 850),
      acid: lemon(30),
    }),
  ),
  house(
    preserve({
      id: 'whole-sour-cherry-preserve',
      title: 'Whole sour cherry preserve',
      fruits: only('cherry-sour'),
      grades: ['perfect'],
      sugar: dose('sugar', 800),
      acid: lemon(20),
    }),
  ),
  house(
    preserve({
      id: 'quince-preserve',
      title: 'Quince preserve',
      fruits: only('quince'),
      sugar: dose('sugar', 800),
      water: dose('water', 700),
    }),
  ),
];

export const BUTTERS: readonly Recipe[] = [
  published(
    butter({
      id: 'apple-butter',
      title: 'Apple butter',
      fruits: only('apple-cooking', 'apple-dessert'),
      sugar: dose('sugar', 146),
      acid: { item: 'vinegar-5-pct', gPerKg: 155, purpose: 'flavour' },
      others: [dose('brown-sugar', 161), dose('cider', 161), dose('cinnamon', 5)],
      process: { product: 'fruit-butter-apple', pack: 'hot' },
      jarSizes: ['half-pint', 'pint', 'quart'],
      byProducts: [{ material: 'apple-peel-core', share: 0.1, use: 'pectin', seedsOutFirst: true }],
    }),
    { sources: ['AIB_APPLEBUTTER'], status: 'verified' },
  ),
  house(
    butter({
      id: 'plum-butter',
      title: 'Prune-plum butter',
      fruits: only('plum-european'),
      sugar: dose('sugar', 300),
      jarSizes: ['half-pint', 'pint'],
    }),
  ),
  house(
    butter({
      id: 'pear-butter',
      title: 'Pear butter',
      fruits: only('pear'),
      sugar: dose('sugar', 250),
      acid: lemon(60),
      jarSizes: ['half-pint', 'pint'],
    }),
  ),
  house(
    butter({
      id: 'peach-butter',
      title: 'Peach butter',
      fruits: only('peach-yellow'),
      sugar: dose('sugar', 300),
      acid: lemon(30),
      jarSizes: ['half-pint', 'pint'],
    }),
  ),
];

export const PASTES: readonly Recipe[] = [
  house(paste({ id: 'damson-paste', title: 'Damson paste', fruits: only('damson'), sugar: dose('sugar', 850) })),
  house(
    paste({
      id: 'quince-paste',
      title: 'Quince paste',
      fruits: only('quince'),
      sugar: dose('sugar', 900),
      water: dose('water', 500),
    }),
  ),
  house(
    paste({
      id: 'crabapple-paste',
      title: 'Crabapple paste',
      fruits: only('crabapple'),
      sugar: dose('sugar', 800),
      water: dose('water', 400),
    }),
  ),
];
