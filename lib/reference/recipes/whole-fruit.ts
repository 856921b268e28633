/**
 * Whole fruit in syrup. Each follows the published pack of its process row; jars come from the
 * pounds per load printed beside it (lib/reference/yields).
 */
import { APPLE_TRIM, APPLES, byWeight, PACK, type PackOwn, read, remembered, STONES } from './pack-draft.ts';
import type { Recipe } from './recipe.ts';
import { dose, only, published, type RecipeDraft } from './recipe-draft.ts';

const fruit = (own: PackOwn): RecipeDraft => ({
  ...PACK,
  kind: 'whole-fruit',
  jarSizes: ['pint', 'quart'],
  syrup: 'light',
  ...own,
});
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
