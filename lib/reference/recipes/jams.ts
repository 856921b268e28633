/**
 * Full-sugar jams. Sugar, water and acid are grams per kg of prepared fruit. Published figures are cups turned into
 * grams (sugar 200 g, crushed berries 240 g, sliced apricot 240 g a cup; from memory).
 */
import type { Recipe } from './recipe.ts';
import {
  CRUSHED_CUPS,
  dose,
  house,
  LOW_SUGAR_KEEPS,
  only,
  published,
  type RecipeDraft,
  SPREAD_KEEPS,
  SPREAD_WORK,
} from './recipe-draft.ts';

type JamDraft = Pick<RecipeDraft, 'id' | 'title' | 'fruits'> &
  Partial<RecipeDraft> & { sugarG: number; waterG?: number };

const jam = ({ sugarG, waterG, ...own }: JamDraft): RecipeDraft => ({
  kind: 'jam',
  grades: ['perfect', 'blemished', 'soft'],
  sugar: dose('sugar', sugarG),
  water: waterG ? dose('water', waterG) : null,
  finish: { by: 'solids', brix: 65 },
  process: { product: 'jam-or-preserve-no-added-pectin', pack: 'hot' },
  jarSizes: ['half-pint', 'quarter-pint', 'twelve-ounce', 'pint'],
  ceiling: CRUSHED_CUPS,
  work: SPREAD_WORK,
  keeps: SPREAD_KEEPS,
  ...own,
});
const forGel = (gPerKg: number) => ({ item: 'lemon-juice-bottled', gPerKg, purpose: 'gel' }) as const;

export const JAMS: readonly Recipe[] = [
  house(
    jam({
      id: 'damson-jam',
      title: 'Damson jam',
      fruits: only('damson'),
      sugarG: 870,
      waterG: 110,
      byProducts: [{ material: 'stones', share: 0.1, use: 'compost', seedsOutFirst: false }],
    }),
  ),
  house(jam({ id: 'raspberry-jam', title: 'Raspberry jam', fruits: only('raspberry-red'), sugarG: 950 })),
  house(jam({ id: 'tayberry-jam', title: 'Tayberry jam', fruits: only('loganberry'), sugarG: 950 })),
  house(jam({ id: 'gooseberry-jam', title: 'Gooseberry jam', fruits: only('gooseberry'), sugarG: 1000, waterG: 300 })),
  house(
    jam({
      id: 'blackcurrant-jam',
      title: 'Blackcurrant jam',
      fruits: only('currant-black'),
      sugarG: 1200,
      waterG: 500,
    }),
  ),
  house(jam({ id: 'redcurrant-jam', title: 'Redcurrant jam', fruits: only('currant-red'), sugarG: 950, waterG: 100 })),
  house(
    jam({
      id: 'rhubarb-ginger-jam',
      title: 'Rhubarb-ginger jam',
      fruits: only('rhubarb'),
      sugarG: 900,
      acid: forGel(30),
      others: [dose('ginger-ground', 4)],
    }),
  ),
  house(
    jam({
      id: 'mirabelle-jam',
      title: 'Mirabelle jam',
      fruits: only('mirabelle'),
      sugarG: 800,
      waterG: 50,
      acid: forGel(30),
    }),
  ),
  house(
    jam({
      id: 'plum-jam',
      title: 'Plum jam',
      fruits: only('plum-european'),
      sugarG: 850,
      waterG: 100,
      acid: forGel(20),
    }),
  ),
  house(
    jam({
      id: 'greengage-jam',
      title: 'Greengage jam',
      fruits: only('greengage'),
      sugarG: 850,
      waterG: 100,
      acid: forGel(20),
    }),
  ),
  house(
    jam({
      id: 'sour-cherry-jam',
      title: 'Sour cherry jam',
      fruits: only('cherry-sour'),
      sugarG: 800,
      waterG: 120,
      acid: forGel(30),
    }),
  ),
  house(
    jam({
      id: 'sour-cherry-powder-jam',
      title: 'Sour cherry jam with home powder',
      fruits: only('cherry-sour'),
      sugarG: 800,
      waterG: 123,
      acid: forGel(30),
      pectin: { item: 'apple-powder', gPerKg: 25, from: 'home powder' },
    }),
  ),
  house(
    jam({
      id: 'strawberry-powder-jam',
      title: 'Strawberry jam with home powder',
      fruits: only('strawberry'),
      sugarG: 800,
      waterG: 120,
      acid: forGel(40),
      pectin: { item: 'apple-powder', gPerKg: 30, from: 'home powder' },
    }),
  ),
  house(
    jam({
      id: 'strawberry-stock-jam',
      title: 'Strawberry jam with home pectin stock',
      fruits: only('strawberry'),
      sugarG: 900,
      acid: forGel(30),
      pectin: { item: 'pectin-stock', gPerKg: 250, from: 'home stock' },
    }),
  ),
  house(
    jam({
      id: 'blueberry-jam',
      title: 'Blueberry jam',
      fruits: only('blueberry'),
      sugarG: 800,
      waterG: 60,
      acid: forGel(35),
    }),
  ),
  house(
    jam({
      id: 'apple-early-jam',
      title: 'Cooking apple jam',
      fruits: only('apple-cooking'),
      sugarG: 850,
      waterG: 250,
      acid: forGel(20),
    }),
  ),
  published(jam({ id: 'strawberry-jam', title: 'Strawberry jam', fruits: only('strawberry'), sugarG: 833 }), {
    sources: ['MSU_JAM', 'NCHFP_JAMNOPECTIN'],
    status: 'verified',
  }),
  published(jam({ id: 'blackberry-jam', title: 'Blackberry jam', fruits: only('blackberry'), sugarG: 833 }), {
    sources: ['HGB_BLACKBERRY'],
    status: 'verified',
  }),
  published(jam({ id: 'apricot-jam', title: 'Apricot jam', fruits: only('apricot'), sugarG: 784, acid: forGel(30) }), {
    sources: ['MSU_JAM'],
    status: 'verified',
  }),
  published(
    jam({
      id: 'strawberry-bought-pectin-jam',
      title: 'Strawberry jam with bought pectin',
      fruits: only('strawberry'),
      sugarG: 1212,
      pectin: { item: 'pectin-powder', gPerKg: 37, from: 'bought' },
      finish: { by: 'boil time', minutes: 1, boilOffShare: 0.04 },
      process: { product: 'jam-with-added-pectin', pack: 'hot' },
    }),
    { sources: ['HGB_STRAWBERRY', 'IL_STRAW'], status: 'verified' },
  ),
  house(
    jam({
      id: 'raspberry-low-sugar-jam',
      title: 'Low-sugar raspberry jam',
      fruits: only('raspberry-red'),
      sugarG: 350,
      pectin: { item: 'pectin-low-methoxyl', gPerKg: 20, from: 'bought' },
      finish: { by: 'boil time', minutes: 3, boilOffShare: 0.08 },
      process: { product: 'jam-with-added-pectin', pack: 'hot' },
      keeps: LOW_SUGAR_KEEPS,
    }),
    'bought low-sugar pectin: the leaflet of the packet is the recipe to follow',
  ),
];
