/**
 * What a recipe adds to the fruit: soluble solids (per cent by weight), the step a kitchen scale is read to (grams), the
 * words for an ingredient list and the allergens it brings (US nine plus sulphites). A dose is rounded to its step before
 * anything is computed from it, so that what is weighed is what was counted.
 */
import type { Cited } from '../source.ts';

export type Allergen = 'milk' | 'egg' | 'tree nuts' | 'peanuts' | 'wheat' | 'soy' | 'sesame' | 'sulphites';

export interface DoseItemRow extends Cited {
  readonly name: string;
  readonly ingredient: string;
  readonly solublePct: number;
  readonly stepG: number;
  readonly allergens: readonly Allergen[];
  /** Sweetener of a name's fruit : sweetener ratio. */
  readonly sweetener?: true;
  /** Which nut it is, for the label. */
  readonly nut?: string;
}

const estimate = { source: 'ESTIMATE', status: 'estimate' } as const;
const memory = { source: 'MEMORY', status: 'memory' } as const;
const none = [] as const;

export const DOSE_ITEMS = {
  sugar: {
    name: 'sugar',
    ingredient: 'sugar',
    solublePct: 100,
    stepG: 10,
    allergens: none,
    sweetener: true,
    ...memory,
  },
  'brown-sugar': {
    name: 'brown sugar',
    ingredient: 'brown sugar',
    solublePct: 97,
    stepG: 10,
    allergens: none,
    sweetener: true,
    ...memory,
  },
  water: { name: 'water', ingredient: 'water', solublePct: 0, stepG: 10, allergens: none, ...memory },
  'lemon-juice-bottled': {
    name: 'bottled lemon juice',
    ingredient: 'lemon juice',
    solublePct: 8,
    stepG: 5,
    allergens: none,
    note: 'some bottled juices carry sulphites: read the bottle',
    ...memory,
  },
  'lemon-juice-fresh': {
    name: 'lemon juice',
    ingredient: 'lemon juice',
    solublePct: 8,
    stepG: 5,
    allergens: none,
    ...memory,
  },
  'citric-acid': {
    name: 'citric acid',
    ingredient: 'citric acid',
    solublePct: 100,
    stepG: 1,
    allergens: none,
    ...memory,
  },
  'vinegar-5-pct': {
    name: 'vinegar (5 % acid)',
    ingredient: 'vinegar',
    solublePct: 0,
    stepG: 10,
    allergens: none,
    ...memory,
  },
  'apple-powder': {
    name: 'apple peel and core powder',
    ingredient: 'apple peel and core powder',
    solublePct: 40,
    stepG: 1,
    allergens: none,
    ...estimate,
  },
  'citrus-powder': {
    name: 'citrus rind powder',
    ingredient: 'citrus rind powder',
    solublePct: 40,
    stepG: 1,
    allergens: none,
    ...estimate,
  },
  'pectin-stock': {
    name: 'home pectin stock',
    ingredient: 'apple extract',
    solublePct: 9,
    stepG: 10,
    allergens: none,
    note: 'taken as strained apple extract, 9 °Bx',
    ...estimate,
  },
  'pectin-powder': {
    name: 'bought pectin powder',
    ingredient: 'pectin',
    solublePct: 60,
    stepG: 1,
    allergens: none,
    note: 'a box holds dextrose and acid beside the pectin',
    ...memory,
  },
  'pectin-low-methoxyl': {
    name: 'bought low-sugar pectin',
    ingredient: 'pectin',
    solublePct: 60,
    stepG: 1,
    allergens: none,
    ...memory,
  },
  'pectin-liquid': {
    name: 'bought liquid pectin',
    ingredient: 'pectin',
    solublePct: 3,
    stepG: 1,
    allergens: none,
    ...memory,
  },
  cider: { name: 'sweet cider', ingredient: 'apple juice', solublePct: 12, stepG: 10, allergens: none, ...memory },
  'apple-juice': {
    name: 'apple juice',
    ingredient: 'apple juice',
    solublePct: 11.5,
    stepG: 10,
    allergens: none,
    ...memory,
  },
  almonds: {
    name: 'almonds',
    ingredient: 'almonds',
    solublePct: 0,
    stepG: 5,
    allergens: ['tree nuts'],
    nut: 'almonds',
    ...memory,
  },
  walnuts: {
    name: 'walnuts',
    ingredient: 'walnuts',
    solublePct: 0,
    stepG: 5,
    allergens: ['tree nuts'],
    nut: 'walnuts',
    ...memory,
  },
  raisins: { name: 'raisins', ingredient: 'raisins', solublePct: 78, stepG: 5, allergens: none, ...memory },
  butter: { name: 'butter', ingredient: 'butter', solublePct: 0, stepG: 1, allergens: ['milk'], ...memory },
  'ginger-ground': {
    name: 'ground ginger',
    ingredient: 'ginger',
    solublePct: 0,
    stepG: 1,
    allergens: none,
    ...memory,
  },
  cinnamon: { name: 'cinnamon', ingredient: 'cinnamon', solublePct: 0, stepG: 1, allergens: none, ...memory },
  'cook-type-starch': {
    name: 'cook-type modified starch',
    ingredient: 'modified corn starch',
    solublePct: 0,
    stepG: 5,
    allergens: none,
    ...memory,
  },
  salt: { name: 'salt', ingredient: 'salt', solublePct: 100, stepG: 1, allergens: none, ...memory },
  'ascorbic-acid': {
    name: 'ascorbic acid',
    ingredient: 'ascorbic acid',
    solublePct: 100,
    stepG: 1,
    allergens: none,
    note: 'keeps cut fruit pale; it is no acid dose',
    ...memory,
  },
  'citrus-zest-dried': {
    name: 'dried citrus rind',
    ingredient: 'dried citrus rind',
    solublePct: 40,
    stepG: 1,
    allergens: none,
    ...estimate,
  },
  'herb-dried': { name: 'dried herb', ingredient: 'herbs', solublePct: 0, stepG: 1, allergens: none, ...estimate },
} as const satisfies Record<string, DoseItemRow>;

export type DoseItem = keyof typeof DOSE_ITEMS;

export const doseItem = (item: DoseItem): DoseItemRow => DOSE_ITEMS[item];

/** Pectin from the household's own trim. */
export const HOME_PECTIN = ['apple-powder', 'citrus-powder', 'pectin-stock'] as const satisfies readonly DoseItem[];
export type HomePectinItem = (typeof HOME_PECTIN)[number];
export const isHomePectin = (item: DoseItem): item is HomePectinItem =>
  (HOME_PECTIN as readonly DoseItem[]).includes(item);
