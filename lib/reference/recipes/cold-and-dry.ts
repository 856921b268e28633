/** What needs no canner: freezer and fridge jam, frozen packs, dried fruit, leather, candied peel, rind and herb blends. */
import type { Recipe } from './recipe.ts';
import {
  COLD_WORK,
  CRUSHED_CUPS,
  DRY_WORK,
  dose,
  house,
  only,
  part,
  published,
  type RecipeDraft,
  SPREAD_WORK,
} from './recipe-draft.ts';

type Own = Pick<RecipeDraft, 'id' | 'title' | 'fruits'> & Partial<RecipeDraft>;
const NO_PROCESS = { process: null, jarSizes: [] } as const;

const freezerJam = (own: Own): RecipeDraft => ({
  ...NO_PROCESS,
  kind: 'freezer-jam',
  grades: ['perfect', 'blemished', 'soft'],
  jarSizes: ['half-pint', 'quarter-pint'],
  contents: ['uncooked'],
  finish: { by: 'mixing', packG: 290 },
  ceiling: CRUSHED_CUPS,
  work: COLD_WORK,
  keeps: ['freezer jam'],
  ...own,
});
const frozen = (own: Own, packG: number, citrus = false): RecipeDraft => ({
  ...NO_PROCESS,
  kind: 'frozen',
  grades: ['perfect', 'blemished', 'soft'],
  finish: { by: 'pack', packG },
  ceiling: { by: 'nothing' },
  work: COLD_WORK,
  keeps: [citrus ? 'frozen citrus' : 'frozen fruit'],
  ...own,
});
const dried = (own: Own, from: number, to = 0.2, packG = 100): RecipeDraft => ({
  ...NO_PROCESS,
  kind: 'dried',
  grades: ['perfect', 'blemished'],
  finish: { by: 'drying', from, to, packG },
  ceiling: { by: 'nothing' },
  work: DRY_WORK,
  keeps: ['dried fruit'],
  ...own,
});

const APPLES = ['apple-dessert', 'apple-cooking'];
const PLAIN = 'nothing added and nothing canned: no recipe to test';

export const FREEZER_JAMS: readonly Recipe[] = [
  published(
    freezerJam({
      id: 'berry-freezer-jam',
      title: 'Berry freezer jam',
      fruits: only('strawberry', 'blackberry'),
      sugar: dose('sugar', 1667),
      water: dose('water', 494),
      pectin: { item: 'pectin-powder', gPerKg: 102, from: 'bought' },
    }),
    { sources: ['HGB_BERRYFREEZER', 'MSU_FREEZERJAM'], status: 'verified' },
  ),
  house(
    freezerJam({
      id: 'raspberry-freezer-jam',
      title: 'Raspberry freezer jam',
      fruits: only('raspberry-red'),
      sugar: dose('sugar', 1667),
      acid: { item: 'lemon-juice-bottled', gPerKg: 64, purpose: 'gel' },
      pectin: { item: 'pectin-liquid', gPerKg: 183, from: 'bought' },
    }),
    'figures of a recipe page that is no official one',
  ),
];

export const FRIDGE_JAMS: readonly Recipe[] = [
  house({
    ...freezerJam({ id: 'strawberry-fridge-jam', title: 'Strawberry fridge jam', fruits: only('strawberry') }),
    kind: 'fridge-jam',
    contents: [],
    sugar: dose('sugar', 400),
    acid: { item: 'lemon-juice-bottled', gPerKg: 30, purpose: 'flavour' },
    finish: { by: 'solids', brix: 45 },
    work: SPREAD_WORK,
    keeps: ['opened low-sugar spread'],
  }),
  house({
    ...freezerJam({ id: 'pear-fridge-jam', title: 'Pear fridge jam', fruits: only('pear') }),
    kind: 'fridge-jam',
    contents: [],
    sugar: dose('sugar', 400),
    acid: { item: 'lemon-juice-bottled', gPerKg: 50, purpose: 'flavour' },
    finish: { by: 'solids', brix: 45 },
    work: SPREAD_WORK,
    keeps: ['opened low-sugar spread'],
  }),
];

export const FROZEN: readonly Recipe[] = [
  house(
    frozen(
      { id: 'frozen-raspberries', title: 'Frozen raspberries', fruits: only('raspberry-red', 'raspberry-black') },
      500,
    ),
    PLAIN,
  ),
  house(
    frozen({ id: 'frozen-blackcurrants', title: 'Frozen blackcurrants', fruits: only('currant-black') }, 500),
    PLAIN,
  ),
  house(frozen({ id: 'frozen-sour-cherries', title: 'Frozen sour cherries', fruits: only('cherry-sour') }, 500), PLAIN),
  house(
    frozen(
      {
        id: 'frozen-apple-slices',
        title: 'Frozen apple slices',
        fruits: only(...APPLES),
        byProducts: [{ material: 'apple-peel-core', share: 0.23, use: 'pectin', seedsOutFirst: true }],
      },
      1000,
    ),
    PLAIN,
  ),
  house(
    frozen(
      {
        id: 'frozen-plum-halves',
        title: 'Frozen plum halves',
        fruits: only('plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'),
      },
      1000,
    ),
    PLAIN,
  ),
  house(
    frozen(
      {
        id: 'frozen-berries',
        title: 'Frozen berries',
        fruits: only('strawberry', 'blackberry', 'loganberry', 'blueberry', 'gooseberry', 'currant-red', 'cranberry'),
      },
      500,
    ),
    PLAIN,
  ),
  house(frozen({ id: 'frozen-rhubarb', title: 'Frozen rhubarb', fruits: only('rhubarb') }, 500), PLAIN),
  house(
    frozen(
      {
        id: 'frozen-peaches',
        title: 'Frozen peach slices',
        fruits: only('peach-yellow', 'peach-white', 'nectarine', 'apricot'),
      },
      500,
    ),
    PLAIN,
  ),
  house(
    frozen({ id: 'frozen-asian-pears', title: 'Frozen Asian pear slices', fruits: only('pear-asian', 'pear') }, 500),
    PLAIN,
  ),
  house(frozen({ id: 'frozen-figs', title: 'Frozen figs', fruits: only('fig') }, 500), PLAIN),
  house(
    frozen(
      {
        id: 'frozen-elderberries',
        title: 'Frozen elderberries, to be cooked',
        fruits: only('elderberry-european', 'elderberry-american'),
      },
      500,
    ),
    PLAIN,
  ),
];

export const DRIED: readonly Recipe[] = [
  house(
    dried(
      {
        id: 'dried-apple-rings',
        title: 'Dried apple rings',
        fruits: only(...APPLES),
        byProducts: [{ material: 'apple-peel-core', share: 0.23, use: 'pectin', seedsOutFirst: true }],
      },
      0.8667,
    ),
    PLAIN,
  ),
  house(dried({ id: 'dried-pears', title: 'Dried pears', fruits: only('pear') }, 0.84), PLAIN),
  house(dried({ id: 'dried-prunes', title: 'Prunes', fruits: only('plum-european') }, 0.872), PLAIN),
  house(
    dried(
      { id: 'dried-sour-cherries', title: 'Dried sour cherries', fruits: only('cherry-sour', 'cherry-sweet') },
      0.82,
    ),
    PLAIN,
  ),
  house(dried({ id: 'dried-figs', title: 'Dried figs', fruits: only('fig') }, 0.79), PLAIN),
  house(
    {
      ...dried(
        {
          id: 'fruit-leather',
          title: 'Fruit leather',
          fruits: only(
            'apple-dessert',
            'apple-cooking',
            'plum-european',
            'raspberry-red',
            'strawberry',
            'currant-black',
            'damson',
            'pear',
            'apricot',
            'mirabelle',
          ),
          grades: ['perfect', 'blemished', 'soft'],
        },
        0.85,
        0.2,
        60,
      ),
      kind: 'leather',
      keeps: ['fruit leather'],
    },
    PLAIN,
  ),
  house(
    {
      ...dried(
        {
          id: 'dried-citrus-rind',
          title: 'Dried citrus rind',
          fruits: only('orange-seville', 'lemon-whole', 'orange-sweet', 'grapefruit'),
        },
        0.725,
        0.08,
        50,
      ),
      kind: 'blend',
      keeps: ['dried peel or core'],
    },
    PLAIN,
  ),
  house({
    ...dried(
      {
        id: 'rind-herb-tea',
        title: 'Citrus rind and herb tea',
        fruits: [
          part(['orange-seville', 'orange-sweet', 'lemon-whole'], 0.5, 0.7, 0.9),
          part(['apple-dessert'], 0.1, 0.3, 0.5),
        ],
        others: [{ item: 'herb-dried', gPerKg: 120, when: 'after the finish' }],
      },
      0.76,
      0.08,
      50,
    ),
    kind: 'blend',
    keeps: ['dried peel or core'],
  }),
  house({
    ...dried(
      {
        id: 'candied-citrus-peel',
        title: 'Candied citrus peel',
        fruits: only('orange-seville', 'orange-sweet', 'lemon-whole', 'grapefruit'),
        sugar: dose('sugar', 900),
        water: dose('water', 500),
      },
      0.725,
    ),
    kind: 'candied',
    finish: { by: 'solids', brix: 78 },
    keeps: ['dried peel or core'],
  }),
];
