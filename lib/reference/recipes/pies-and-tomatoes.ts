/**
 * Pie fillings and tomatoes, all with acid. Each follows the published pack of its process row; jars come from the
 * pounds per load printed beside it (lib/reference/yields).
 */
import { APPLE_TRIM, APPLES, byWeight, PACK, type PackOwn, read, remembered } from './pack-draft.ts';
import type { Recipe } from './recipe.ts';
import { dose, only, published, type RecipeDraft } from './recipe-draft.ts';

export const PIE_FILLINGS: readonly Recipe[] = [
  published(
    {
      ...PACK,
      id: 'apple-pie-filling',
      title: 'Apple pie filling',
      kind: 'pie-filling',
      fruits: only(...APPLES),
      sugar: dose('sugar', 417),
      water: dose('water', 224),
      acid: { item: 'lemon-juice-bottled', gPerKg: 70, purpose: 'safety dose' },
      others: [dose('cook-type-starch', 91), dose('apple-juice', 470), dose('cinnamon', 3)],
      contents: ['cook-type starch'],
      finish: { by: 'boil time', minutes: 1, boilOffShare: 0 },
      process: { product: 'pie-filling-apple', pack: 'hot' },
      jarSizes: ['quart', 'pint'],
      byProducts: [APPLE_TRIM],
    },
    { sources: ['AIB_APPLEPIE', 'PURDUE_PIE'], status: 'verified' },
  ),
];

const tomato = (own: PackOwn): RecipeDraft => ({
  ...PACK,
  kind: 'tomato',
  grades: ['perfect'],
  jarSizes: ['pint', 'quart'],
  acid: { perJarOf: 'tomato', purpose: 'safety dose' },
  ...own,
});

export const TOMATOES: readonly Recipe[] = [
  published(
    tomato({
      id: 'crushed-tomatoes',
      title: 'Crushed tomatoes, with acid',
      fruits: only('tomato'),
      finish: byWeight('tomato, crushed'),
      process: { product: 'tomatoes-crushed', pack: 'hot' },
    }),
    { ...remembered('AIB539'), rules: ['tomato'] },
  ),
  published(
    tomato({
      id: 'tomato-juice',
      title: 'Tomato juice, with acid',
      fruits: only('tomato'),
      finish: byWeight('tomato juice'),
      process: { product: 'tomato-juice', pack: 'hot' },
    }),
    { ...read('EDIS_TOMJUICE'), rules: ['tomato'] },
  ),
  published(
    tomato({
      id: 'whole-tomatoes',
      title: 'Whole tomatoes in water, with acid',
      fruits: only('tomato'),
      finish: byWeight('tomato, whole'),
      process: { product: 'tomatoes-whole-in-water', pack: 'hot' },
    }),
    { ...read('TOMWHOLE'), rules: ['tomato'] },
  ),
];
