/**
 * The 67 fruits: name, acid class, low-acid rule, jam group of 21 CFR 150.160 and class of set.
 * Acid class follows the highest pH of `fruit-acidity.ts`: A to 4.1, B to 4.6, C above (medlar, at 4.6, is C by hand).
 * `acidProvisional` marks a class
 * whose pH range is from memory: a provisional A counts as B until the range is sourced. `lowAcidRule` names a row of
 * `low-acid-rules.ts`, which overrides the class. `labelGroup` I or II; null where the rule names no group.
 * `setClass` L, M, H is the gel strength without added pectin. Groups: CFR150b; set classes from memory of handbooks.
 */
import type { Cited } from './source.ts';

// biome-ignore format: one printed row to a line
export const FRUIT_LIST = [
  { id: 'apple-dessert', name: 'Apple, dessert', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'M' },
  { id: 'apple-cooking', name: 'Apple, sharp cooking type', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'apple-cider-sweet', name: 'Apple, sweet / bittersweet cider type', acidClass: 'C', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'M' },
  { id: 'crabapple', name: 'Crabapple', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: 'I', setClass: 'H' },
  { id: 'pear', name: 'Pear, European', acidClass: 'C', acidProvisional: false, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'L' },
  { id: 'pear-asian', name: 'Pear, Asian', acidClass: 'C', acidProvisional: false, lowAcidRule: 'pear-asian', labelGroup: null, setClass: 'L' },
  { id: 'quince', name: 'Quince', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'japonica-quince', name: 'Chaenomeles (Japanese quince)', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'medlar', name: 'Medlar (bletted)', acidClass: 'C', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'apricot', name: 'Apricot', acidClass: 'C', acidProvisional: false, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'M' },
  { id: 'peach-yellow', name: 'Peach, yellow', acidClass: 'B', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'L' },
  { id: 'peach-white', name: 'Peach / nectarine, white or low-acid', acidClass: 'C', acidProvisional: true, lowAcidRule: 'peach-white', labelGroup: 'II', setClass: 'L' },
  { id: 'nectarine', name: 'Nectarine, yellow', acidClass: 'B', acidProvisional: true, lowAcidRule: null, labelGroup: 'II', setClass: 'L' },
  { id: 'plum-european', name: 'Plum, European / prune type', acidClass: 'B', acidProvisional: false, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'M-H' },
  { id: 'plum-japanese', name: 'Plum, Japanese type', acidClass: 'B', acidProvisional: true, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'M' },
  { id: 'damson', name: 'Damson', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'greengage', name: 'Greengage', acidClass: 'B', acidProvisional: true, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'M' },
  { id: 'mirabelle', name: 'Mirabelle', acidClass: 'B', acidProvisional: true, lowAcidRule: 'upper-range-watch', labelGroup: 'II', setClass: 'M' },
  { id: 'cherry-sweet', name: 'Cherry, sweet', acidClass: 'B', acidProvisional: false, lowAcidRule: 'upper-range-watch', labelGroup: 'I', setClass: 'L' },
  { id: 'cherry-sour', name: 'Cherry, sour', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'L' },
  { id: 'cornelian-cherry', name: 'Cornelian cherry', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'blackberry', name: 'Blackberry', acidClass: 'B', acidProvisional: false, lowAcidRule: 'upper-range-watch', labelGroup: 'I', setClass: 'M-L' },
  { id: 'loganberry', name: 'Loganberry / boysenberry / tayberry', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'M' },
  { id: 'raspberry-red', name: 'Raspberry, red', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: 'I', setClass: 'M' },
  { id: 'raspberry-black', name: 'Raspberry, black', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: 'I', setClass: 'M' },
  { id: 'strawberry', name: 'Strawberry', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'L' },
  { id: 'blueberry', name: 'Blueberry, highbush', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'M' },
  { id: 'cranberry', name: 'Cranberry', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'gooseberry', name: 'Gooseberry', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'currant-red', name: 'Redcurrant / white currant', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'currant-black', name: 'Blackcurrant', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'elderberry-european', name: 'Elderberry, Sambucus nigra', acidClass: 'B', acidProvisional: false, lowAcidRule: 'elderberry-dark', labelGroup: 'I', setClass: 'L' },
  { id: 'elderberry-american', name: 'Elderberry, S. canadensis', acidClass: 'C', acidProvisional: false, lowAcidRule: 'elderberry-dark', labelGroup: 'I', setClass: 'L' },
  { id: 'mulberry-black', name: 'Mulberry, black', acidClass: 'A', acidProvisional: false, lowAcidRule: 'mulberry', labelGroup: null, setClass: 'L-M' },
  { id: 'mulberry-white', name: 'Mulberry, white / red', acidClass: 'C', acidProvisional: false, lowAcidRule: 'mulberry', labelGroup: null, setClass: 'L' },
  { id: 'saskatoon', name: 'Saskatoon (serviceberry)', acidClass: 'B', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'aronia', name: 'Chokeberry (aronia)', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'sea-buckthorn', name: 'Sea buckthorn', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'rowan', name: 'Rowanberry', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M-H' },
  { id: 'rosehip', name: 'Rosehip (deseeded flesh)', acidClass: 'B', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'hawthorn', name: 'Hawthorn berry', acidClass: 'C', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'sloe', name: 'Sloe', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'grape-slipskin', name: 'Grape, American slip-skin', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'M-H' },
  { id: 'grape-vinifera', name: 'Grape, European', acidClass: 'B', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'L' },
  { id: 'fig', name: 'Fig', acidClass: 'C', acidProvisional: false, lowAcidRule: 'fig', labelGroup: 'II', setClass: 'L' },
  { id: 'persimmon-japanese', name: 'Persimmon, Japanese', acidClass: 'C', acidProvisional: true, lowAcidRule: 'persimmon', labelGroup: null, setClass: 'L' },
  { id: 'persimmon-american', name: 'Persimmon, American', acidClass: 'C', acidProvisional: true, lowAcidRule: 'persimmon', labelGroup: null, setClass: 'L' },
  { id: 'pomegranate', name: 'Pomegranate (juice)', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'L' },
  { id: 'kiwifruit', name: 'Kiwifruit, green', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'kiwiberry', name: 'Kiwiberry (hardy kiwi)', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'rhubarb', name: 'Rhubarb', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'L' },
  { id: 'lemon-juice', name: 'Lemon juice', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: '-' },
  { id: 'lemon-whole', name: 'Lemon, whole with peel', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'orange-sweet', name: 'Orange, sweet (flesh)', acidClass: 'B', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'M (peel H)' },
  { id: 'orange-seville', name: 'Orange, bitter (whole fruit)', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: 'I', setClass: 'H' },
  { id: 'grapefruit', name: 'Grapefruit (flesh)', acidClass: 'A', acidProvisional: false, lowAcidRule: null, labelGroup: 'I', setClass: 'M (peel H)' },
  { id: 'mandarin', name: 'Mandarin / tangerine', acidClass: 'B', acidProvisional: true, lowAcidRule: null, labelGroup: 'I', setClass: 'M' },
  { id: 'kumquat', name: 'Kumquat', acidClass: 'B', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'pineapple', name: 'Pineapple', acidClass: 'A', acidProvisional: true, lowAcidRule: 'pineapple', labelGroup: 'I', setClass: 'L' },
  { id: 'guava', name: 'Guava', acidClass: 'B', acidProvisional: true, lowAcidRule: null, labelGroup: 'II', setClass: 'H' },
  { id: 'feijoa', name: 'Feijoa', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M-H' },
  { id: 'loquat', name: 'Loquat', acidClass: 'C', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'M' },
  { id: 'jujube', name: 'Jujube', acidClass: 'C', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'L' },
  { id: 'ground-cherry', name: 'Ground cherry / cape gooseberry', acidClass: 'A', acidProvisional: true, lowAcidRule: null, labelGroup: null, setClass: 'H' },
  { id: 'melon', name: 'Melon (muskmelon)', acidClass: 'C', acidProvisional: false, lowAcidRule: 'melon', labelGroup: null, setClass: 'L' },
  { id: 'watermelon', name: 'Watermelon', acidClass: 'C', acidProvisional: true, lowAcidRule: 'melon', labelGroup: null, setClass: 'L' },
  { id: 'tomato', name: 'Tomato', acidClass: 'C', acidProvisional: false, lowAcidRule: 'tomato', labelGroup: 'I', setClass: 'L' },
] as const satisfies readonly FruitListRow[];

/** How the columns are known; a provisional acid class rests on memory. */
export const FRUIT_LIST_FROM = {
  acidClass: { source: 'COMPUTED', status: 'computed' },
  labelGroup: { source: 'CFR150b', status: 'verified' },
  setClass: { source: 'MEMORY', status: 'memory' },
} as const satisfies Record<string, Cited>;

export type FruitId = (typeof FRUIT_LIST)[number]['id'];

export interface FruitListRow {
  readonly id: string;
  readonly name: string;
  readonly acidClass: 'A' | 'B' | 'C';
  readonly acidProvisional: boolean;
  readonly lowAcidRule: string | null;
  readonly labelGroup: 'I' | 'II' | null;
  readonly setClass: string;
}
