/**
 * Sauces, purees, juices and syrups. Each follows the published pack of its process row; jars come from the
 * pounds per load printed beside it (lib/reference/yields).
 */
import { APPLE_TRIM, APPLES, byWeight, PACK, type PackOwn, read, remembered } from './pack-draft.ts';
import type { Recipe } from './recipe.ts';
import {
  dose,
  house,
  JELLY_WORK,
  JUICE_KEEPS,
  only,
  PRESS_WORK,
  part,
  published,
  type RecipeDraft,
} from './recipe-draft.ts';

const sauce = (own: PackOwn): RecipeDraft => ({
  ...PACK,
  kind: 'sauce',
  grades: ['perfect', 'blemished', 'soft'],
  jarSizes: ['pint', 'quart'],
  ...own,
});
const juice = (own: PackOwn): RecipeDraft => ({
  ...PACK,
  kind: 'juice',
  jarSizes: ['quart', 'pint', 'half-gallon'],
  work: PRESS_WORK,
  keeps: JUICE_KEEPS,
  ...own,
});

export const SAUCES: readonly Recipe[] = [
  published(
    sauce({
      id: 'apple-sauce',
      title: 'Apple sauce',
      fruits: only('apple-dessert', 'apple-cooking'),
      finish: byWeight('apple sauce'),
      process: { product: 'applesauce', pack: 'hot' },
      byProducts: [APPLE_TRIM],
    }),
    read('MSU_APPLESAUCE'),
  ),
  published(
    sauce({
      id: 'cranberry-sauce',
      title: 'Cranberry sauce',
      fruits: only('cranberry'),
      sugar: dose('sugar', 1000),
      water: dose('water', 592),
      finish: { by: 'boil time', minutes: 3, boilOffShare: 0.08 },
      process: { product: 'cranberry-sauce', pack: 'hot' },
      jarSizes: ['half-pint', 'pint'],
    }),
    read('NCHFP_CRANSAUCE'),
  ),
  published(
    sauce({
      id: 'plum-puree',
      title: 'Plum puree',
      kind: 'puree',
      fruits: only('plum-european', 'damson', 'greengage', 'mirabelle'),
      finish: byWeight('plum'),
      process: { product: 'fruit-puree', pack: 'hot' },
    }),
    read('NCHFP_PUREE'),
  ),
  published(
    sauce({
      id: 'berry-puree',
      title: 'Berry puree',
      kind: 'puree',
      fruits: only('raspberry-red', 'currant-black', 'loganberry', 'gooseberry'),
      finish: byWeight('berries (not strawberry)'),
      process: { product: 'fruit-puree', pack: 'hot' },
    }),
    read('NCHFP_PUREE'),
  ),
];

export const JUICES: readonly Recipe[] = [
  published(
    juice({
      id: 'apple-juice',
      title: 'Apple juice, canned',
      fruits: only('apple-dessert', 'apple-cider-sweet', 'apple-cooking'),
      extraction: {
        waterGPerKg: 0,
        simmerMin: [0, 0],
        juiceGPerKg: { low: 550, typ: 620, high: 670 },
        by: 'press',
        source: 'GOA',
        status: 'verified',
      },
      finish: { by: 'volume' },
      process: { product: 'apple-juice', pack: 'hot' },
      byProducts: [{ material: 'apple-pomace', share: 0.36, use: 'pectin', seedsOutFirst: true }],
    }),
    read('MSU_APPLEJUICE'),
  ),
  published(
    juice({
      id: 'grape-juice',
      title: 'Grape juice, canned',
      fruits: only('grape-slipskin', 'grape-vinifera'),
      finish: byWeight('grape juice'),
      process: { product: 'grape-juice', pack: 'hot' },
    }),
    remembered('AIB539'),
  ),
  house(
    juice({
      id: 'elderberry-syrup-frozen',
      title: 'Elderberry syrup, frozen',
      kind: 'syrup',
      fruits: only('elderberry-european'),
      extraction: {
        waterGPerKg: 400,
        simmerMin: [15, 20],
        juiceGPerKg: { low: 600, typ: 700, high: 800 },
        by: 'jelly bag',
        source: 'ESTIMATE',
        status: 'estimate',
      },
      sugar: dose('sugar', 600),
      finish: { by: 'boil time', minutes: 5, boilOffShare: 0.05 },
      process: null,
      jarSizes: ['half-pint'],
      work: JELLY_WORK,
    }),
    'dark elderberry has no tested syrup: freezer or fridge only',
  ),
  published(
    juice({
      id: 'berry-syrup',
      title: 'Berry or cherry syrup',
      kind: 'syrup',
      fruits: only('raspberry-red', 'cherry-sour', 'blueberry', 'strawberry'),
      extraction: {
        waterGPerKg: 0,
        simmerMin: [5, 10],
        juiceGPerKg: { low: 600, typ: 680, high: 760 },
        by: 'jelly bag',
        source: 'ESTIMATE',
        status: 'estimate',
      },
      sugar: dose('sugar', 1210),
      finish: { by: 'boil time', minutes: 1, boilOffShare: 0.03 },
      process: { product: 'berry-or-cherry-or-grape-syrup', pack: 'hot' },
      jarSizes: ['half-pint', 'pint'],
      work: JELLY_WORK,
    }),
    remembered('MSU_BERRYSYRUP'),
  ),
];

/** Mixed fruit: any single low-acid rule still governs. */
export const MIXED: readonly Recipe[] = [
  house(
    sauce({
      id: 'apple-blackberry-sauce',
      title: 'Apple and blackberry sauce',
      fruits: [part(APPLES, 0.6, 0.75, 0.9), part(['blackberry'], 0.1, 0.25, 0.4)],
      finish: byWeight('apple sauce'),
      process: null,
    }),
    'no mixed row was published',
  ),
];
