/**
 * Weights of containers and pounds of fresh fruit per jar, as printed: AIB 539 quantity lines (one canner load is 7 quarts or
 * 9 pints), Univ. Georgia yield table, Georgia Extension weights, MSU sheet 01701369. Pounds (453.59 g). A pair is a
 * printed range. Sellers differ: the grower's own container weight wins. 23 rows.
 */
import type { Cited } from './source.ts';

export type Figure = number | readonly [low: number, high: number];

export interface YieldRow extends Cited {
  readonly crop: string;
  readonly fruitIds: readonly string[];
  readonly bushelLb?: Figure;
  readonly peckLb?: Figure;
  readonly lugLb?: Figure;
  readonly boxLb?: Figure;
  readonly flatLb?: Figure;
  readonly crateLb?: Figure;
  readonly freshQuartLb?: Figure;
  readonly freshPintLb?: Figure;
  readonly freshCupLb?: Figure;
  readonly quartsPerBushel?: Figure;
  readonly quartsPerLug?: Figure;
  readonly quartsPerLug25Lb?: Figure;
  readonly quartsPerBox?: Figure;
  readonly quartsPerFlat?: Figure;
  readonly quartsPerCrate?: Figure;
  readonly lbPerQuart?: Figure;
  readonly lbPer7Quarts?: Figure;
  readonly lbPer9Pints?: Figure;
  readonly frozenPintsPerBushel?: Figure;
  readonly frozenPintsPerCrate?: Figure;
  readonly lbPerFrozenPint?: Figure;
  readonly freshPintsPerFrozenPint?: Figure;
}

/** The five publications were read together; which of them prints a given figure was not kept row by row. */
const FURTHER = ['GA_WEIGHTS', 'MSU_WEIGHTS', 'AIB539', 'YIELD_BOOK'] as const;

// biome-ignore format: one printed row to a line
export const YIELDS = [
  { crop: 'apple, sliced', fruitIds: ['apple-dessert', 'apple-cooking'], bushelLb: 48, peckLb: [10, 14], quartsPerBushel: [16, 19], lbPerQuart: 2.75, lbPer7Quarts: 19, lbPer9Pints: 12.25, frozenPintsPerBushel: [30, 40], lbPerFrozenPint: [1.25, 1.5], source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'apple sauce', fruitIds: ['apple-dessert', 'apple-cooking'], bushelLb: 48, quartsPerBushel: [14, 19], lbPerQuart: 3, lbPer7Quarts: 21, lbPer9Pints: 13.5, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'apple juice', fruitIds: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], bushelLb: 48, quartsPerBushel: [10, 12], source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'apricot', fruitIds: ['apricot'], bushelLb: 50, lugLb: 24, quartsPerLug: [9, 12], lbPerQuart: [2, 2.5], lbPer7Quarts: 16, lbPer9Pints: 10, source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'bushel and canner-load memory' },
  { crop: 'berries (not strawberry)', fruitIds: ['blackberry', 'loganberry', 'currant-red', 'currant-black', 'gooseberry'], crateLb: 36, quartsPerCrate: [18, 24], lbPerQuart: 1.75, lbPer7Quarts: 12, lbPer9Pints: 8, frozenPintsPerCrate: [32, 36], source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'UGA gives 12-18 qt per crate and 1.5-3 lb per qt' },
  { crop: 'strawberry', fruitIds: ['strawberry'], crateLb: 36, quartsPerCrate: [12, 16], freshQuartLb: [1.25, 1.5], lbPerFrozenPint: 1, frozenPintsPerCrate: 38, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'raspberry', fruitIds: ['raspberry-red', 'raspberry-black'], freshQuartLb: [1.25, 1.5], freshPintLb: 0.75, freshCupLb: 0.333, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'blueberry', fruitIds: ['blueberry'], freshQuartLb: [1.5, 2], freshPintLb: 0.75, lbPerQuart: [2.25, 3], freshPintsPerFrozenPint: 1, source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'MSU: 12-pint flat 9 lb = 3-4 qt canned' },
  { crop: 'cherry', fruitIds: ['cherry-sweet', 'cherry-sour'], bushelLb: 56, lugLb: [15, 25], quartsPerLug25Lb: [8, 12], lbPerQuart: 2.5, lbPer7Quarts: 17.5, lbPer9Pints: 11, lbPerFrozenPint: [1.25, 1.5], source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'frozen figure memory' },
  { crop: 'cranberry', fruitIds: ['cranberry'], bushelLb: 100, boxLb: 25, quartsPerBox: 25, lbPerQuart: 1, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'fig', fruitIds: ['fig'], boxLb: 6, quartsPerBox: [2, 3], lbPerQuart: 2.5, lbPer7Quarts: 16, lbPer9Pints: 11, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'grape, whole', fruitIds: ['grape-slipskin', 'grape-vinifera'], bushelLb: 48, lugLb: 26, quartsPerLug: [12, 14], lbPerQuart: 2, lbPer7Quarts: 14, lbPer9Pints: 9, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'grape juice', fruitIds: ['grape-slipskin', 'grape-vinifera'], bushelLb: 48, quartsPerBushel: [10, 12], lbPer7Quarts: 24.5, lbPer9Pints: 16, lbPerQuart: 3.5, source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'UGA counts 4 lb per quart' },
  { crop: 'grapefruit/orange sections', fruitIds: ['grapefruit', 'orange-sweet'], lbPerQuart: 2, lbPer7Quarts: 15, lbPer9Pints: 13, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'nectarine', fruitIds: ['nectarine'], flatLb: 18, quartsPerFlat: [6, 9], bushelLb: 48, quartsPerBushel: [16, 24], lbPerQuart: 2.5, lbPer7Quarts: 17.5, lbPer9Pints: 11, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'peach', fruitIds: ['peach-yellow'], bushelLb: 48, peckLb: [12, 14], lugLb: [19, 22], quartsPerBushel: [16, 24], lbPerQuart: 2.5, lbPer7Quarts: 17.5, lbPer9Pints: 11, frozenPintsPerBushel: [32, 48], lbPerFrozenPint: [1, 1.5], source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'pear', fruitIds: ['pear'], bushelLb: 50, peckLb: [12, 14], boxLb: 46, quartsPerBushel: [16, 25], lbPerQuart: 2.5, lbPer7Quarts: 17.5, lbPer9Pints: 11, frozenPintsPerBushel: [40, 50], lbPerFrozenPint: [1, 1.5], source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'Asian pear', fruitIds: ['pear-asian'], lbPer7Quarts: [17, 19], lbPer9Pints: [11, 13], source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'plum', fruitIds: ['plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'], bushelLb: 56, peckLb: [13, 15], quartsPerBushel: [22, 36], lbPerQuart: 2, lbPer7Quarts: 14, lbPer9Pints: 9, frozenPintsPerBushel: [38, 56], lbPerFrozenPint: [1, 1.5], source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'frozen memory' },
  { crop: 'rhubarb', fruitIds: ['rhubarb'], lugLb: 28, quartsPerLug: [14, 28], lbPerQuart: 1.5, lbPer7Quarts: 10.5, lbPer9Pints: 7, lbPerFrozenPint: [0.67, 1], source: 'UGA_YIELD', status: 'verified', also: FURTHER, note: 'frozen memory' },
  { crop: 'tomato, crushed', fruitIds: ['tomato'], bushelLb: 53, quartsPerBushel: [17, 20], lbPerQuart: 2.75, lbPer7Quarts: 22, lbPer9Pints: 14, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'tomato juice', fruitIds: ['tomato'], bushelLb: 53, quartsPerBushel: [15, 18], lbPerQuart: 3.25, lbPer7Quarts: 23, lbPer9Pints: 14, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
  { crop: 'tomato, whole', fruitIds: ['tomato'], bushelLb: 53, quartsPerBushel: [15, 21], lbPerQuart: 3, lbPer7Quarts: 21, lbPer9Pints: 13, source: 'UGA_YIELD', status: 'verified', also: FURTHER },
] as const satisfies readonly YieldRow[];

/** Cups of prepared fruit from a pound. Georgia Extension, Weights and approximate processed yields for fruits. */
export const CUPS_PER_POUND = [
  { item: 'apple, pared and sliced', poundPerCup: 1 / 4, source: 'GA_WEIGHTS', status: 'verified' },
  { item: 'pear, pared and sliced', poundPerCup: 2 / 5, source: 'GA_WEIGHTS', status: 'verified' },
  { item: 'peach', poundPerCup: 2 / 5, source: 'GA_WEIGHTS', status: 'verified' },
  { item: 'plum halves', poundPerCup: 1 / 3, source: 'GA_WEIGHTS', status: 'verified' },
  { item: 'berries, cherries, grapes', poundPerCup: 1 / 3, source: 'GA_WEIGHTS', status: 'verified' },
] as const satisfies readonly (Cited & { readonly item: string; readonly poundPerCup: number })[];

/** The low and high end of a printed figure. */
export const rangeOf = (figure: Figure): readonly [low: number, high: number] =>
  typeof figure === 'number' ? [figure, figure] : figure;
