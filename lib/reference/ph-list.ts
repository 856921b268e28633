/**
 * Approximate pH of foods as printed: FDA/CFSAN list of 2003 and extension lists (72 rows; the source beside each). These
 * are list values for a food in general; a fruit's own acid class uses the wider range of fruit-acidity.
 * The part of an id before a dot is the fruit id where the food is that fruit; a row without fruit ids is another food.
 */
import type { Cited } from './source.ts';

export interface PhRow extends Cited {
  readonly id: string;
  readonly fruitIds: readonly string[];
  readonly food: string;
  readonly low: number;
  readonly high: number;
}

// biome-ignore format: one printed row to a line
export const PH_LIST = [
  { id: 'apple-dessert', fruitIds: ['apple-dessert'], food: 'apple, eating', low: 3.3, high: 4, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.delicious', fruitIds: ['apple-dessert'], food: 'apple, Delicious', low: 3.9, high: 3.9, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.golden-delicious', fruitIds: ['apple-dessert'], food: 'apple, Golden Delicious', low: 3.6, high: 3.6, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.jonathan', fruitIds: ['apple-dessert'], food: 'apple, Jonathan', low: 3.33, high: 3.33, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.mcintosh', fruitIds: ['apple-dessert'], food: 'apple, McIntosh', low: 3.34, high: 3.34, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.winesap', fruitIds: ['apple-dessert'], food: 'apple, Winesap', low: 3.47, high: 3.47, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.juice', fruitIds: ['apple-dessert'], food: 'apple juice', low: 3.35, high: 4, source: 'FDA_PH', status: 'verified' },
  { id: 'apple-dessert.sauce', fruitIds: ['apple-dessert'], food: 'apple sauce', low: 3.1, high: 3.6, source: 'FDA_PH', status: 'verified' },
  { id: 'apricot', fruitIds: ['apricot'], food: 'apricot', low: 3.3, high: 4.8, source: 'FDA_PH', status: 'verified' },
  { id: 'apricot.puree', fruitIds: ['apricot'], food: 'apricot, puree', low: 3.42, high: 3.83, source: 'FDA_PH', status: 'verified' },
  { id: 'apricot.nectar', fruitIds: ['apricot'], food: 'apricot nectar', low: 3.78, high: 3.78, source: 'FDA_PH', status: 'verified' },
  { id: 'banana', fruitIds: [], food: 'banana', low: 4.5, high: 5.2, source: 'FDA_PH', status: 'verified' },
  { id: 'blackberry', fruitIds: ['blackberry'], food: 'blackberry', low: 3.85, high: 4.5, source: 'FDA_PH', status: 'verified' },
  { id: 'blueberry.maine', fruitIds: ['blueberry'], food: 'blueberry (Maine)', low: 3.12, high: 3.33, source: 'FDA_PH', status: 'verified' },
  { id: 'blueberry.frozen', fruitIds: ['blueberry'], food: 'blueberry, frozen', low: 3.11, high: 3.22, source: 'FDA_PH', status: 'verified' },
  { id: 'melon.cantaloupe', fruitIds: ['melon'], food: 'cantaloupe', low: 6.13, high: 6.58, source: 'FDA_PH', status: 'verified' },
  { id: 'cherry-sweet', fruitIds: ['cherry-sweet'], food: 'cherry (California, sweet)', low: 4.01, high: 4.54, source: 'FDA_PH', status: 'verified' },
  { id: 'cherry-sour.water-pack', fruitIds: ['cherry-sour'], food: 'cherry, red, water pack', low: 3.25, high: 3.82, source: 'FDA_PH', status: 'verified' },
  { id: 'cherry-sweet.royal-ann', fruitIds: ['cherry-sweet'], food: 'cherry, Royal Ann', low: 3.8, high: 3.83, source: 'FDA_PH', status: 'verified' },
  { id: 'fig.calimyrna', fruitIds: ['fig'], food: 'fig, Calimyrna', low: 5.05, high: 5.98, source: 'FDA_PH', status: 'verified' },
  { id: 'grape-slipskin.concord', fruitIds: ['grape-slipskin'], food: 'grape, Concord', low: 2.8, high: 3, source: 'FDA_PH', status: 'verified' },
  { id: 'grape-slipskin.niagara', fruitIds: ['grape-slipskin'], food: 'grape, Niagara', low: 2.8, high: 3.27, source: 'FDA_PH', status: 'verified' },
  { id: 'grape-vinifera.seedless', fruitIds: ['grape-vinifera'], food: 'grape, seedless', low: 2.9, high: 3.82, source: 'FDA_PH', status: 'verified' },
  { id: 'grapefruit', fruitIds: ['grapefruit'], food: 'grapefruit', low: 3, high: 3.75, source: 'FDA_PH', status: 'verified' },
  { id: 'jam', fruitIds: [], food: 'jam, fruit', low: 3.5, high: 4.5, source: 'FDA_PH', status: 'verified' },
  { id: 'jelly', fruitIds: [], food: 'jelly, fruit', low: 3, high: 3.5, source: 'FDA_PH', status: 'verified' },
  { id: 'lemon-juice', fruitIds: ['lemon-juice'], food: 'lemon juice', low: 2, high: 2.6, source: 'FDA_PH', status: 'verified' },
  { id: 'lime-juice', fruitIds: [], food: 'lime juice', low: 2, high: 2.35, source: 'FDA_PH', status: 'verified' },
  { id: 'loganberry', fruitIds: ['loganberry'], food: 'loganberry', low: 2.7, high: 3.5, source: 'FDA_PH', status: 'verified' },
  { id: 'melon.honeydew', fruitIds: ['melon'], food: 'honeydew melon', low: 6, high: 6.67, source: 'FDA_PH', status: 'verified' },
  { id: 'pomegranate', fruitIds: ['pomegranate'], food: 'pomegranate', low: 2.93, high: 3.2, source: 'FDA_PH', status: 'verified' },
  { id: 'plum-european.prune', fruitIds: ['plum-european'], food: 'prune', low: 3.63, high: 3.92, source: 'FDA_PH', status: 'verified' },
  { id: 'pumpkin', fruitIds: [], food: 'pumpkin', low: 4.9, high: 5.5, source: 'FDA_PH', status: 'verified' },
  { id: 'cranberry', fruitIds: ['cranberry'], food: 'cranberry', low: 2.3, high: 2.7, source: 'PH_LIST2', status: 'verified' },
  { id: 'gooseberry', fruitIds: ['gooseberry'], food: 'gooseberry', low: 2.8, high: 3.1, source: 'PH_LIST2', status: 'verified' },
  { id: 'plum-all', fruitIds: ['plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'], food: 'plum (all)', low: 2.8, high: 4.5, source: 'PH_LIST2', status: 'verified' },
  { id: 'currant-red', fruitIds: ['currant-red'], food: 'currant, red', low: 2.9, high: 2.9, source: 'PH_LIST2', status: 'verified' },
  { id: 'strawberry', fruitIds: ['strawberry'], food: 'strawberry', low: 3, high: 3.9, source: 'PH_LIST2', status: 'verified' },
  { id: 'rhubarb', fruitIds: ['rhubarb'], food: 'rhubarb', low: 3.1, high: 3.4, source: 'PH_LIST2', status: 'verified' },
  { id: 'quince', fruitIds: ['quince'], food: 'quince', low: 3.12, high: 3.4, source: 'PH_LIST2', status: 'verified' },
  { id: 'pineapple', fruitIds: ['pineapple'], food: 'pineapple', low: 3.2, high: 4, source: 'PH_LIST2', status: 'verified' },
  { id: 'raspberry-red', fruitIds: ['raspberry-red'], food: 'raspberry', low: 3.22, high: 3.95, source: 'PH_LIST2', status: 'verified' },
  { id: 'peach-yellow', fruitIds: ['peach-yellow'], food: 'peach', low: 3.3, high: 4.05, source: 'PH_LIST2', status: 'verified' },
  { id: 'mandarin', fruitIds: ['mandarin'], food: 'tangerine', low: 3.32, high: 4.48, source: 'PH_LIST2', status: 'verified' },
  { id: 'pear', fruitIds: ['pear'], food: 'pear', low: 3.5, high: 4.6, source: 'PH_LIST2', status: 'verified' },
  { id: 'orange-sweet', fruitIds: ['orange-sweet'], food: 'orange', low: 3.69, high: 4.34, source: 'PH_LIST2', status: 'verified' },
  { id: 'nectarine', fruitIds: ['nectarine'], food: 'nectarine', low: 3.92, high: 4.18, source: 'PH_LIST2', status: 'verified' },
  { id: 'date', fruitIds: [], food: 'date', low: 4.14, high: 4.88, source: 'PH_LIST2', status: 'verified' },
  { id: 'tomato', fruitIds: ['tomato'], food: 'tomato', low: 4.3, high: 4.9, source: 'PH_LIST2', status: 'verified' },
  { id: 'pear-asian', fruitIds: ['pear-asian'], food: 'Asian pear', low: 4.7, high: 4.7, source: 'PH_LIST2', status: 'verified' },
  { id: 'watermelon', fruitIds: ['watermelon'], food: 'watermelon', low: 5.18, high: 5.6, source: 'PH_LIST2', status: 'verified' },
  { id: 'vinegar', fruitIds: [], food: 'vinegar', low: 2.4, high: 3.4, source: 'PH_LIST2', status: 'verified' },
  { id: 'currant-black', fruitIds: ['currant-black'], food: 'blackcurrant', low: 2.6, high: 3.1, source: 'PH_AU', status: 'verified' },
  { id: 'loganberry.boysenberry', fruitIds: ['loganberry'], food: 'boysenberry', low: 3.22, high: 4.5, source: 'PH_AU', status: 'verified' },
  { id: 'ground-cherry', fruitIds: ['ground-cherry'], food: 'cape gooseberry', low: 3.7, high: 3.7, source: 'PH_AU', status: 'verified' },
  { id: 'elderberry-dark', fruitIds: ['elderberry-european', 'elderberry-american'], food: 'elderberry, dark (recent average)', low: 4.8, high: 4.8, source: 'UMN_ELDER', status: 'verified' },
  { id: 'elderberry-dark.older-lists', fruitIds: ['elderberry-european', 'elderberry-american'], food: 'elderberry (older lists)', low: 3.6, high: 3.8, source: 'PH_LIST2', status: 'verified' },
  { id: 'damson', fruitIds: ['damson'], food: 'plum, Damson', low: 2.9, high: 3.1, source: 'MEMORY', status: 'memory' },
  { id: 'plum-european.blue', fruitIds: ['plum-european'], food: 'plum, blue', low: 2.8, high: 3.4, source: 'MEMORY', status: 'memory' },
  { id: 'plum-japanese.red', fruitIds: ['plum-japanese'], food: 'plum, red', low: 3.6, high: 4.3, source: 'MEMORY', status: 'memory' },
  { id: 'plum-yellow', fruitIds: ['plum-european', 'plum-japanese', 'mirabelle'], food: 'plum, yellow', low: 3.9, high: 4.45, source: 'MEMORY', status: 'memory' },
  { id: 'greengage.canned', fruitIds: ['greengage'], food: 'plum, Green Gage canned', low: 3.6, high: 4, source: 'MEMORY', status: 'memory' },
  { id: 'persimmon', fruitIds: ['persimmon-japanese', 'persimmon-american'], food: 'persimmon', low: 4.42, high: 4.7, source: 'MEMORY', status: 'memory' },
  { id: 'papaya', fruitIds: [], food: 'papaya', low: 5.2, high: 6, source: 'MEMORY', status: 'memory' },
  { id: 'huckleberry', fruitIds: [], food: 'huckleberry, cooked with sugar', low: 3.38, high: 3.43, source: 'MEMORY', status: 'memory' },
  { id: 'crabapple', fruitIds: ['crabapple'], food: 'crabapple', low: 2.9, high: 3.4, source: 'MEMORY', status: 'memory' },
  { id: 'cherry-sour.montmorency', fruitIds: ['cherry-sour'], food: 'sour cherry (Montmorency)', low: 3.2, high: 3.8, source: 'MEMORY', status: 'memory' },
  { id: 'orange-seville', fruitIds: ['orange-seville'], food: 'Seville orange', low: 2.9, high: 3.3, source: 'MEMORY', status: 'memory' },
  { id: 'grape-vinifera.raisin', fruitIds: ['grape-vinifera'], food: 'raisin', low: 3.8, high: 4.1, source: 'MEMORY', status: 'memory' },
  { id: 'honey', fruitIds: [], food: 'honey', low: 3.7, high: 4.2, source: 'MEMORY', status: 'memory' },
  { id: 'citric-acid-1pct', fruitIds: [], food: 'citric acid 1% solution', low: 2.2, high: 2.3, source: 'MEMORY', status: 'memory' },
  { id: 'apple-dessert.dried', fruitIds: ['apple-dessert'], food: 'dried apple', low: 3.3, high: 3.9, source: 'MEMORY', status: 'memory' },
] as const satisfies readonly PhRow[];

/** The rows of a fruit, as printed; empty when the lists do not name it. */
export const phRowsOf = (fruitId: string): readonly PhRow[] =>
  PH_LIST.filter((row: PhRow) => row.fruitIds.includes(fruitId));
