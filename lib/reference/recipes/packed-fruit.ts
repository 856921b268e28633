/**
 * Fruit in jars by weight: whole fruit in syrup, sauces, purees, juices, syrups, pie fillings, tomatoes. Each follows the
 * published pack of its process row; jars come from the pounds per load printed beside it (lib/reference/yields).
 */
import type { SourceId } from '../sources.ts';
import type { Recipe } from './recipe.ts';
import {
  dose,
  FRUIT_KEEPS,
  house,
  JELLY_WORK,
  JUICE_KEEPS,
  only,
  PACK_WORK,
  PRESS_WORK,
  type Publication,
  part,
  published,
  type RecipeDraft,
} from './recipe-draft.ts';

type Own = Pick<RecipeDraft, 'id' | 'title' | 'fruits' | 'finish' | 'process'> & Partial<RecipeDraft>;
const PACK = { ceiling: { by: 'nothing' }, work: PACK_WORK, keeps: FRUIT_KEEPS, grades: ['perfect', 'blemished'] } as const;

const fruit = (own: Own): RecipeDraft => ({
  ...PACK,
  kind: 'whole-fruit',
  jarSizes: ['pint', 'quart'],
  syrup: 'light',
  ...own,
});
const read = (source: SourceId): Publication => ({ sources: [source], status: 'verified' });
const remembered = (source: SourceId): Publication => ({ sources: [source], status: 'memory' });
const byWeight = (crop: string) => ({ by: 'weight table', crop }) as const;

const APPLES = ['apple-cooking', 'apple-dessert'];
const APPLE_TRIM = { material: 'apple-peel-core', share: 0.22, use: 'pectin', seedsOutFirst: true } as const;
const STONES = { material: 'stones', share: 0.06, use: 'compost', seedsOutFirst: false } as const;

export const WHOLE_FRUIT: readonly Recipe[] = [
  published(
    fruit({
      id: 'pears-in-light-syrup',
      title: 'Pears in light syrup',
      fruits: only('pear'),
      finish: byWeight('pear'),
      process: { product: 'pears', pack: 'hot' },
    }),
    read('AIB_PEAR'),
  ),
  published(
    fruit({
      id: 'plums-in-syrup',
      title: 'Plums in syrup',
      fruits: only('plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'),
      finish: byWeight('plum'),
      process: { product: 'plums', pack: 'hot' },
      jarSizes: ['quart', 'pint'],
      syrup: 'medium',
    }),
    read('MSU_PLUM'),
  ),
  published(
    fruit({
      id: 'sour-cherries-in-syrup',
      title: 'Sour cherries in syrup',
      fruits: only('cherry-sour'),
      finish: byWeight('cherry'),
      process: { product: 'cherries-sweet-or-sour', pack: 'hot' },
      syrup: 'medium',
      byProducts: [STONES],
    }),
    read('MSU_CHERRY'),
  ),
  published(
    fruit({
      id: 'sweet-cherries-in-syrup',
      title: 'Sweet cherries in syrup',
      fruits: only('cherry-sweet'),
      finish: byWeight('cherry'),
      process: { product: 'cherries-sweet-or-sour', pack: 'hot' },
    }),
    read('MSU_CHERRY'),
  ),
  published(
    fruit({
      id: 'apple-slices-in-syrup',
      title: 'Apple slices in syrup',
      fruits: only(...APPLES),
      finish: byWeight('apple, sliced'),
      process: { product: 'apples-sliced', pack: 'hot' },
      jarSizes: ['quart', 'pint'],
      byProducts: [APPLE_TRIM],
    }),
    read('AIB_APPLESLICE'),
  ),
  published(
    fruit({
      id: 'peaches-in-light-syrup',
      title: 'Yellow peaches in light syrup',
      fruits: only('peach-yellow'),
      finish: byWeight('peach'),
      process: { product: 'peaches-yellow-flesh', pack: 'hot' },
      byProducts: [STONES],
    }),
    read('AIB_PEACH'),
  ),
  published(
    fruit({
      id: 'nectarines-in-light-syrup',
      title: 'Yellow nectarines in light syrup',
      fruits: only('nectarine'),
      finish: byWeight('nectarine'),
      process: { product: 'nectarines-yellow-flesh', pack: 'hot' },
    }),
    read('AIB_PEACH'),
  ),
  published(
    fruit({
      id: 'apricots-in-light-syrup',
      title: 'Apricots in light syrup',
      fruits: only('apricot'),
      finish: byWeight('apricot'),
      process: { product: 'apricots', pack: 'hot' },
    }),
    remembered('AIB539'),
  ),
  published(
    fruit({
      id: 'raspberries-in-light-syrup',
      title: 'Raspberries in light syrup',
      fruits: only('raspberry-red', 'raspberry-black', 'blackberry', 'loganberry'),
      grades: ['perfect'],
      finish: byWeight('berries (not strawberry)'),
      process: { product: 'berries-whole', pack: 'raw' },
    }),
    read('MSU_BERRIES'),
  ),
  published(
    fruit({
      id: 'gooseberries-in-light-syrup',
      title: 'Gooseberries or currants in light syrup',
      fruits: only('gooseberry', 'currant-red', 'currant-black'),
      finish: byWeight('berries (not strawberry)'),
      process: { product: 'berries-whole', pack: 'hot' },
    }),
    read('MSU_BERRIES'),
  ),
  published(
    fruit({
      id: 'grapes-in-light-syrup',
      title: 'Grapes in light syrup',
      fruits: only('grape-vinifera', 'grape-slipskin'),
      finish: byWeight('grape, whole'),
      process: { product: 'grapes-whole', pack: 'raw' },
    }),
    read('UNL_GRAPE'),
  ),
  published(
    fruit({
      id: 'stewed-rhubarb',
      title: 'Stewed rhubarb',
      fruits: only('rhubarb'),
      finish: byWeight('rhubarb'),
      process: { product: 'rhubarb-stewed', pack: 'hot' },
      syrup: null,
      sugar: dose('sugar', 205),
    }),
    read('MSU_RHUBARB'),
  ),
  published(
    fruit({
      id: 'citrus-sections',
      title: 'Grapefruit and orange sections',
      fruits: only('grapefruit', 'orange-sweet'),
      finish: byWeight('grapefruit/orange sections'),
      process: { product: 'citrus-sections-grapefruit-orange', pack: 'raw' },
      byProducts: [{ material: 'citrus-rind', share: 0.3, use: 'zest', seedsOutFirst: true }],
    }),
    read('MSU_CITRUS'),
  ),
  published(
    fruit({
      id: 'asian-pears-acidified',
      title: 'Asian pears in light syrup, with lemon',
      fruits: only('pear-asian'),
      finish: byWeight('Asian pear'),
      process: { product: 'asian-pears', pack: 'hot' },
      acid: { perJarOf: 'pear-asian', purpose: 'safety dose' },
    }),
    { ...read('NCHFP_ASIANPEAR'), rules: ['pear-asian'] },
  ),
  published(
    fruit({
      id: 'figs-acidified',
      title: 'Figs in light syrup, with lemon',
      fruits: only('fig'),
      finish: byWeight('fig'),
      process: { product: 'figs', pack: 'hot' },
      acid: { perJarOf: 'fig', purpose: 'safety dose' },
    }),
    { ...read('MSU_FIG'), rules: ['fig'] },
  ),
];

const sauce = (own: Own): RecipeDraft => ({
  ...PACK,
  kind: 'sauce',
  grades: ['perfect', 'blemished', 'soft'],
  jarSizes: ['pint', 'quart'],
  ...own,
});
const juice = (own: Own): RecipeDraft => ({
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

const tomato = (own: Own): RecipeDraft => ({
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
