/**
 * Juice for jelly without added pectin: water per pound of fruit, minutes of simmering, sugar and lemon per cup of juice.
 * AIB 539, table of jelly extraction (reprint). The fruit ids are this project's matching. A pound of fruit gives at least a cup of clear juice; 3/4 ripe and 1/4
 * under-ripe fruit. At most 6 to 8 cups of juice are cooked at a time: a batch is not doubled.
 */
import type { Cited } from './source.ts';

type Range = readonly [low: number, high: number];

export interface JellyExtractionRow extends Cited {
  readonly fruit: string;
  readonly fruitIds: readonly string[];
  readonly waterCupsPerLb: Range;
  readonly simmerMinutes: Range;
  readonly sugarCupsPerCup: Range;
  /** Teaspoons of lemon juice per cup of juice; null when none. */
  readonly lemonTspPerCup: number | null;
  readonly lemonOptional: boolean;
}

const read = { source: 'AIB_JELLY', status: 'verified' } as const;
const noLemon = { lemonTspPerCup: null, lemonOptional: false } as const;

// biome-ignore format: one printed row to a line
export const JELLY_EXTRACTION = [
  { fruit: 'apple', fruitIds: ['apple-dessert', 'apple-cooking'], waterCupsPerLb: [1, 1], simmerMinutes: [20, 25], sugarCupsPerCup: [0.75, 0.75], lemonTspPerCup: 1.5, lemonOptional: true, ...read },
  { fruit: 'blackberry', fruitIds: ['blackberry'], waterCupsPerLb: [0, 0.25], simmerMinutes: [5, 10], sugarCupsPerCup: [0.75, 1], ...noLemon, ...read },
  { fruit: 'crabapple', fruitIds: ['crabapple'], waterCupsPerLb: [1, 1], simmerMinutes: [20, 25], sugarCupsPerCup: [1, 1], ...noLemon, ...read },
  { fruit: 'grape', fruitIds: ['grape-slipskin'], waterCupsPerLb: [0, 0.25], simmerMinutes: [5, 10], sugarCupsPerCup: [0.75, 1], ...noLemon, ...read },
  { fruit: 'plum', fruitIds: ['plum-european', 'plum-japanese', 'damson'], waterCupsPerLb: [0.5, 0.5], simmerMinutes: [15, 20], sugarCupsPerCup: [0.75, 0.75], ...noLemon, ...read },
] as const satisfies readonly JellyExtractionRow[];

/** Cups of juice that may be cooked at once. */
export const JELLY_BATCH_CUPS = { most: 8, usual: 6, ...read } as const;
