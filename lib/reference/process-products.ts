/**
 * What the boiling-water table is about: each product with the altitude bands its row is printed in, its headspace in
 * inches, whether the published recipe puts acid into the jar, and the fruits it was tested with (null: any fruit that
 * no stricter rule excludes; see low-acid-rules and never-shelf). A listed fruit does not lift a low-acid rule.
 * Source and status stand on each row of process-table.
 */
export interface ProcessProductRow {
  readonly name: string;
  readonly band: 'three' | 'four';
  readonly headspaceIn: number;
  readonly acidRequired: boolean;
  readonly fruitIds: readonly string[] | null;
  /** Fruits the published page names as excluded. */
  readonly notFor?: readonly string[];
}

/** Puree: NCHFP fruit puree page (fig, Asian pear, tomato, melon); white peach and elderberry by low-acid-rules. */
const NOT_PUREE = [
  'fig',
  'pear-asian',
  'tomato',
  'melon',
  'watermelon',
  'peach-white',
  'elderberry-european',
  'elderberry-american',
] as const;

const APPLES = ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'] as const;
const PLUMS = ['plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'] as const;
const GRAPES = ['grape-slipskin', 'grape-vinifera'] as const;

// biome-ignore format: one printed row to a line
export const PROCESS_PRODUCTS = {
  'jam-or-preserve-no-added-pectin': { name: 'jam or preserve without added pectin', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  'jam-with-added-pectin': { name: 'jam with added pectin', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  'jelly-with-or-without-added-pectin': { name: 'jelly', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  marmalade: { name: 'marmalade', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  'conserve-incl-nuts': { name: 'conserve', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  'fruit-butter-apple': { name: 'apple butter', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: APPLES },
  'fruit-butter-other-acid-fruit': { name: 'butter of another acid fruit', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null },
  applesauce: { name: 'apple sauce', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: APPLES },
  'apples-sliced': { name: 'sliced apples', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: APPLES },
  'apple-juice': { name: 'apple juice', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: APPLES },
  'grape-juice': { name: 'grape juice', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: GRAPES },
  'berries-whole': { name: 'whole berries', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['blackberry', 'loganberry', 'raspberry-red', 'raspberry-black', 'blueberry', 'gooseberry', 'currant-red', 'currant-black'] },
  'berry-or-cherry-or-grape-syrup': { name: 'berry, cherry or grape syrup', band: 'three', headspaceIn: 0.5, acidRequired: false, fruitIds: ['cherry-sweet', 'cherry-sour', 'raspberry-red', 'raspberry-black', 'strawberry', 'blueberry', 'grape-slipskin', 'grape-vinifera'] },
  'cherries-sweet-or-sour': { name: 'cherries', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['cherry-sweet', 'cherry-sour'] },
  'cranberry-sauce': { name: 'cranberry sauce', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['cranberry'] },
  'peaches-yellow-flesh': { name: 'yellow-flesh peaches', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['peach-yellow'] },
  'nectarines-yellow-flesh': { name: 'yellow-flesh nectarines', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['nectarine'] },
  apricots: { name: 'apricots', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['apricot'] },
  pears: { name: 'pears', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['pear'] },
  'asian-pears': { name: 'Asian pears', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['pear-asian'] },
  plums: { name: 'plums', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: PLUMS },
  'grapes-whole': { name: 'whole grapes', band: 'four', headspaceIn: 1, acidRequired: false, fruitIds: GRAPES },
  'rhubarb-stewed': { name: 'stewed rhubarb', band: 'three', headspaceIn: 0.5, acidRequired: false, fruitIds: ['rhubarb'] },
  'fruit-puree': { name: 'fruit puree', band: 'three', headspaceIn: 0.25, acidRequired: false, fruitIds: null, notFor: NOT_PUREE },
  'citrus-sections-grapefruit-orange': { name: 'grapefruit or orange sections', band: 'three', headspaceIn: 0.5, acidRequired: false, fruitIds: ['orange-sweet', 'grapefruit'] },
  figs: { name: 'figs', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['fig'] },
  pineapple: { name: 'pineapple', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['pineapple'] },
  'fruit-cocktail-mixed': { name: 'mixed fruit cocktail', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: null },
  'spiced-crab-apples': { name: 'spiced crab apples', band: 'four', headspaceIn: 0.5, acidRequired: false, fruitIds: ['crabapple'] },
  'spiced-apple-rings': { name: 'spiced apple rings', band: 'three', headspaceIn: 0.5, acidRequired: false, fruitIds: APPLES },
  'pie-filling-apple': { name: 'apple pie filling', band: 'four', headspaceIn: 1, acidRequired: true, fruitIds: APPLES },
  'pie-filling-blueberry': { name: 'blueberry pie filling', band: 'four', headspaceIn: 1, acidRequired: true, fruitIds: ['blueberry'] },
  'pie-filling-cherry': { name: 'cherry pie filling', band: 'four', headspaceIn: 1, acidRequired: true, fruitIds: ['cherry-sour'] },
  'pie-filling-peach': { name: 'peach pie filling', band: 'four', headspaceIn: 1, acidRequired: true, fruitIds: ['peach-yellow'] },
  'tomatoes-crushed': { name: 'crushed tomatoes', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['tomato'] },
  'tomato-juice': { name: 'tomato juice', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['tomato'] },
  'tomatoes-whole-in-water': { name: 'whole tomatoes in water', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['tomato'] },
  'tomatoes-whole-in-juice-or-raw-no-liquid': { name: 'whole tomatoes in juice, or raw without liquid', band: 'four', headspaceIn: 0.5, acidRequired: true, fruitIds: ['tomato'] },
} as const satisfies Record<string, ProcessProductRow>;

export type ProcessProduct = keyof typeof PROCESS_PRODUCTS;
