/**
 * Jellies: juice is drawn first, then boiled with sugar. Extraction is per kg of prepared fruit, doses per kg of strained
 * juice. Published amounts are cups turned into grams (juice 248 g, sugar 200 g a cup; from memory).
 */
import type { ExtractionRule, Recipe } from './recipe.ts';
import {
  dose,
  house,
  JELLY_WORK,
  JUICE_CUPS,
  only,
  published,
  type RecipeDraft,
  SPREAD_KEEPS,
} from './recipe-draft.ts';

type JellyDraft = Pick<RecipeDraft, 'id' | 'title' | 'fruits'> & {
  extraction: ExtractionRule;
  sugarG: number;
  lemonG?: number;
};

const jelly = ({ sugarG, lemonG, ...own }: JellyDraft): RecipeDraft => ({
  kind: 'jelly',
  grades: ['perfect', 'blemished'],
  sugar: dose('sugar', sugarG),
  acid: lemonG ? { item: 'lemon-juice-bottled', gPerKg: lemonG, purpose: 'gel' } : null,
  finish: { by: 'solids', brix: 65 },
  process: { product: 'jelly-with-or-without-added-pectin', pack: 'hot' },
  jarSizes: ['half-pint', 'quarter-pint', 'twelve-ounce', 'pint'],
  ceiling: JUICE_CUPS,
  byProducts: [{ material: 'pulp', share: 0.27, use: 'second run', seedsOutFirst: true }],
  work: JELLY_WORK,
  keeps: SPREAD_KEEPS,
  ...own,
});

const bag = (
  waterGPerKg: number,
  simmerMin: readonly [number, number],
  juice: number,
  from: ExtractionRule['status'],
) =>
  ({
    waterGPerKg,
    simmerMin,
    juiceGPerKg: { low: Math.round(juice * 0.88), typ: juice, high: Math.round(juice * 1.1) },
    by: 'jelly bag',
    source: from === 'verified' ? 'AIB_JELLY' : from === 'memory' ? 'MEMORY' : 'ESTIMATE',
    status: from,
  }) as const satisfies ExtractionRule;

export const JELLIES: readonly Recipe[] = [
  published(
    jelly({
      id: 'crabapple-jelly',
      title: 'Crabapple jelly',
      fruits: only('crabapple'),
      extraction: bag(522, [20, 25], 729, 'verified'),
      sugarG: 806,
    }),
    { sources: ['UNT_CRABAPPLE'], status: 'verified' },
  ),
  published(
    jelly({
      id: 'apple-jelly',
      title: 'Apple jelly',
      fruits: only('apple-cooking', 'apple-dessert'),
      extraction: bag(522, [20, 25], 729, 'verified'),
      sugarG: 605,
      lemonG: 31,
    }),
    { sources: ['AIB_JELLY', 'TAMU_APPLEJELLY'], status: 'verified' },
  ),
  published(
    jelly({
      id: 'blackberry-jelly',
      title: 'Blackberry jelly',
      fruits: only('blackberry'),
      extraction: bag(113, [5, 10], 640, 'verified'),
      sugarG: 600,
    }),
    { sources: ['TAMU_BLACKJELLY'], status: 'verified' },
  ),
  published(
    jelly({
      id: 'plum-jelly',
      title: 'Plum jelly',
      fruits: only('plum-european', 'plum-japanese', 'damson'),
      extraction: bag(224, [15, 20], 630, 'verified'),
      sugarG: 600,
    }),
    { sources: ['HGB_PLUMJELLY'], status: 'verified' },
  ),
  published(
    jelly({
      id: 'quince-jelly',
      title: 'Quince jelly',
      fruits: only('quince'),
      extraction: bag(1043, [25, 45], 586, 'memory'),
      sugarG: 645,
      lemonG: 66,
    }),
    { sources: ['AIB539'], status: 'memory' },
  ),
  house(
    jelly({
      id: 'redcurrant-jelly',
      title: 'Redcurrant jelly',
      fruits: only('currant-red'),
      extraction: bag(100, [10, 15], 680, 'estimate'),
      sugarG: 900,
    }),
  ),
  house(
    jelly({
      id: 'medlar-jelly',
      title: 'Medlar jelly',
      fruits: only('medlar'),
      extraction: bag(900, [30, 45], 700, 'estimate'),
      sugarG: 750,
      lemonG: 60,
    }),
  ),
  house(
    jelly({
      id: 'gooseberry-jelly',
      title: 'Gooseberry jelly',
      fruits: only('gooseberry'),
      extraction: bag(400, [15, 20], 700, 'estimate'),
      sugarG: 850,
    }),
  ),
  house(
    jelly({
      id: 'grape-jelly',
      title: 'Grape jelly',
      fruits: only('grape-slipskin'),
      extraction: bag(60, [5, 10], 600, 'estimate'),
      sugarG: 750,
    }),
  ),
];
