/**
 * Pectin of fresh fruit (low, ripe, high, per cent by weight as calcium pectate) and refuse of fruit as bought (per
 * cent by weight, with the parts it is made of). Refuse: USDA SR26, food descriptions. Pectin: the source beside each row.
 */
import type { FruitId } from './fruit-list.ts';
import type { Cited } from './source.ts';

export interface FruitPectinRow {
  readonly pectin: readonly [low: number, ripe: number, high: number];
  readonly waste: number;
  readonly parts: string;
  readonly pectinFrom: Cited;
  readonly wasteFrom: Cited;
}

const belitzWithBaker = { source: 'BELITZ', status: 'secondary', also: ['BAKER'] } as const;
const memory = { source: 'MEMORY', status: 'memory' } as const;
const memory2 = { source: 'MEMORY', status: 'memory', note: 'CRAB 5.57 outlier' } as const;
const belitz = { source: 'BELITZ', status: 'verified' } as const;
const quince = { source: 'QUINCE', status: 'verified' } as const;
const belitzWithPlumgr = { source: 'BELITZ', status: 'verified', also: ['PLUMGR'] } as const;
const belitzWithMemory = { source: 'BELITZ', status: 'memory', also: ['MEMORY'] } as const;
const baker = { source: 'BAKER', status: 'secondary' } as const;
const usda = { source: 'USDA', status: 'verified' } as const;

// biome-ignore format: one printed row to a line
export const FRUIT_PECTIN = {
  'apple-dessert': { pectin: [0.14, 0.6, 0.96], waste: 10, parts: 'Core and stem', pectinFrom: belitzWithBaker, wasteFrom: usda },
  'apple-cooking': { pectin: [0.5, 0.8, 1.2], waste: 11, parts: 'Core and stem', pectinFrom: memory, wasteFrom: usda },
  'apple-cider-sweet': { pectin: [0.4, 0.6, 1], waste: 10, parts: 'Core and stem', pectinFrom: memory, wasteFrom: usda },
  crabapple: { pectin: [1, 1.3, 1.8], waste: 8, parts: 'Core and stems', pectinFrom: memory2, wasteFrom: usda },
  pear: { pectin: [0.3, 0.5, 0.8], waste: 10, parts: 'Stem, core and seeds', pectinFrom: belitz, wasteFrom: usda },
  'pear-asian': { pectin: [0.3, 0.4, 0.6], waste: 9, parts: 'Core and stem', pectinFrom: memory, wasteFrom: usda },
  quince: { pectin: [0.8, 1.8, 3.5], waste: 39, parts: 'Core, seeds, and parings', pectinFrom: quince, wasteFrom: usda },
  'japonica-quince': { pectin: [0.9, 1.2, 1.6], waste: 35, parts: 'core, seeds', pectinFrom: memory, wasteFrom: memory },
  medlar: { pectin: [0.5, 1, 1.7], waste: 25, parts: 'seeds, skin, calyx', pectinFrom: memory, wasteFrom: memory },
  apricot: { pectin: [0.42, 1, 1.32], waste: 7, parts: 'Pits', pectinFrom: belitzWithBaker, wasteFrom: usda },
  'peach-yellow': { pectin: [0.3, 0.5, 0.8], waste: 4, parts: 'Pit', pectinFrom: belitz, wasteFrom: usda },
  'peach-white': { pectin: [0.3, 0.5, 0.8], waste: 4, parts: 'Pit', pectinFrom: memory, wasteFrom: usda },
  nectarine: { pectin: [0.3, 0.5, 0.8], waste: 9, parts: 'Pit', pectinFrom: memory, wasteFrom: usda },
  'plum-european': { pectin: [0.5, 0.8, 1.1], waste: 6, parts: 'Pits', pectinFrom: belitzWithPlumgr, wasteFrom: usda },
  'plum-japanese': { pectin: [0.3, 0.6, 0.9], waste: 6, parts: 'Pits', pectinFrom: memory, wasteFrom: usda },
  damson: { pectin: [0.9, 1.1, 1.5], waste: 10, parts: 'stones', pectinFrom: memory, wasteFrom: memory },
  greengage: { pectin: [0.6, 0.9, 1.2], waste: 6, parts: 'Pits', pectinFrom: memory, wasteFrom: usda },
  mirabelle: { pectin: [0.4, 0.7, 1], waste: 8, parts: 'stones', pectinFrom: memory, wasteFrom: memory },
  'cherry-sweet': { pectin: [0.2, 0.3, 0.5], waste: 8, parts: 'Pits and stems', pectinFrom: belitz, wasteFrom: usda },
  'cherry-sour': { pectin: [0.2, 0.3, 0.5], waste: 10, parts: 'Pits and stems', pectinFrom: belitz, wasteFrom: usda },
  'cornelian-cherry': { pectin: [0.5, 0.9, 1.5], waste: 12, parts: 'stones', pectinFrom: memory, wasteFrom: memory },
  blackberry: { pectin: [0.4, 0.6, 1.19], waste: 4, parts: 'Caps and spoiled berries', pectinFrom: belitzWithBaker, wasteFrom: usda },
  loganberry: { pectin: [0.5, 0.6, 0.9], waste: 4, parts: 'Caps and spoiled berries', pectinFrom: memory, wasteFrom: usda },
  'raspberry-red': { pectin: [0.1, 0.4, 0.88], waste: 4, parts: 'Caps, stems, and spoiled berries', pectinFrom: belitzWithBaker, wasteFrom: usda },
  'raspberry-black': { pectin: [0.4, 0.6, 0.9], waste: 4, parts: 'Caps, stems, and spoiled berries', pectinFrom: memory, wasteFrom: usda },
  strawberry: { pectin: [0.3, 0.5, 0.7], waste: 6, parts: 'Caps and stems', pectinFrom: belitz, wasteFrom: usda },
  blueberry: { pectin: [0.3, 0.5, 0.7], waste: 5, parts: 'Stems and green or spoiled berries', pectinFrom: memory, wasteFrom: usda },
  cranberry: { pectin: [0.6, 0.9, 1.2], waste: 2, parts: 'Stems and spoiled berries', pectinFrom: memory, wasteFrom: usda },
  gooseberry: { pectin: [0.6, 0.9, 1.2], waste: 3, parts: 'tops and tails', pectinFrom: memory, wasteFrom: memory },
  'currant-red': { pectin: [0.5, 0.9, 1.2], waste: 2, parts: 'Stems', pectinFrom: belitz, wasteFrom: usda },
  'currant-black': { pectin: [0.8, 1.3, 1.7], waste: 2, parts: 'Stems', pectinFrom: belitz, wasteFrom: usda },
  'elderberry-european': { pectin: [0.2, 0.3, 0.5], waste: 5, parts: 'stalks; never eat raw/green parts', pectinFrom: memory, wasteFrom: memory },
  'elderberry-american': { pectin: [0.2, 0.3, 0.5], waste: 5, parts: 'stalks', pectinFrom: memory, wasteFrom: memory },
  'mulberry-black': { pectin: [0.3, 0.5, 0.8], waste: 0, parts: 'none', pectinFrom: memory, wasteFrom: usda },
  'mulberry-white': { pectin: [0.3, 0.5, 0.8], waste: 0, parts: 'none', pectinFrom: memory, wasteFrom: usda },
  saskatoon: { pectin: [0.5, 0.8, 1.1], waste: 3, parts: 'stems', pectinFrom: memory, wasteFrom: memory },
  aronia: { pectin: [0.3, 0.5, 0.8], waste: 3, parts: 'stems', pectinFrom: memory, wasteFrom: memory },
  'sea-buckthorn': { pectin: [0.3, 0.5, 0.7], waste: 12, parts: 'seeds, skins', pectinFrom: memory, wasteFrom: memory },
  rowan: { pectin: [0.5, 0.9, 1.5], waste: 5, parts: 'stalks', pectinFrom: memory, wasteFrom: memory },
  rosehip: { pectin: [1, 2, 3.5], waste: 35, parts: 'seeds, hairs, calyx', pectinFrom: memory, wasteFrom: memory },
  hawthorn: { pectin: [0.8, 1.6, 2.5], waste: 30, parts: 'stones', pectinFrom: memory, wasteFrom: memory },
  sloe: { pectin: [0.7, 1, 1.4], waste: 25, parts: 'stones', pectinFrom: memory, wasteFrom: memory },
  'grape-slipskin': { pectin: [0.2, 0.4, 0.7], waste: 42, parts: '6% seeds, 34% skin, 2% stems', pectinFrom: belitzWithMemory, wasteFrom: usda },
  'grape-vinifera': { pectin: [0.1, 0.3, 0.5], waste: 4, parts: 'Stems', pectinFrom: belitz, wasteFrom: usda },
  fig: { pectin: [0.4, 0.6, 0.9], waste: 1, parts: 'Stems', pectinFrom: belitz, wasteFrom: usda },
  'persimmon-japanese': { pectin: [0.4, 0.7, 1], waste: 16, parts: '2% calyx, 14% skin', pectinFrom: memory, wasteFrom: usda },
  'persimmon-american': { pectin: [0.6, 1, 1.6], waste: 18, parts: '2% calyx, 16% seeds', pectinFrom: memory, wasteFrom: usda },
  pomegranate: { pectin: [0.1, 0.2, 0.3], waste: 44, parts: 'Skin and membrane', pectinFrom: memory, wasteFrom: usda },
  kiwifruit: { pectin: [0.5, 0.7, 0.9], waste: 24, parts: 'Skin', pectinFrom: memory, wasteFrom: usda },
  kiwiberry: { pectin: [0.4, 0.6, 0.9], waste: 2, parts: 'stems', pectinFrom: memory, wasteFrom: memory },
  rhubarb: { pectin: [0.2, 0.4, 0.7], waste: 25, parts: '19% ends, 6% leaves', pectinFrom: memory, wasteFrom: usda },
  'lemon-juice': { pectin: [0, 0, 0.1], waste: 0, parts: 'none', pectinFrom: memory, wasteFrom: usda },
  'lemon-whole': { pectin: [1.5, 2.2, 3], waste: 47, parts: '45% peel, 2% seeds', pectinFrom: memory, wasteFrom: usda },
  'orange-sweet': { pectin: [0.25, 0.5, 0.76], waste: 27, parts: 'Peel and seeds', pectinFrom: baker, wasteFrom: usda },
  'orange-seville': { pectin: [0.9, 1.3, 1.8], waste: 1, parts: 'Seeds', pectinFrom: memory, wasteFrom: usda },
  grapefruit: { pectin: [0.24, 0.4, 0.65], waste: 51, parts: 'Peel, seeds, core, and membrane', pectinFrom: baker, wasteFrom: usda },
  mandarin: { pectin: [0.2, 0.4, 0.6], waste: 26, parts: 'Peel and seeds', pectinFrom: memory, wasteFrom: usda },
  kumquat: { pectin: [0.6, 1, 1.5], waste: 7, parts: 'Seeds', pectinFrom: memory, wasteFrom: usda },
  pineapple: { pectin: [0.05, 0.1, 0.2], waste: 49, parts: '8% core, 16% crown, 26% parings', pectinFrom: memory, wasteFrom: usda },
  guava: { pectin: [0.5, 0.8, 1.2], waste: 22, parts: 'Skin', pectinFrom: belitz, wasteFrom: usda },
  feijoa: { pectin: [0.5, 0.9, 1.3], waste: 43, parts: 'Skin', pectinFrom: memory, wasteFrom: usda },
  loquat: { pectin: [0.4, 0.6, 0.9], waste: 35, parts: 'Seeds and skin', pectinFrom: memory, wasteFrom: usda },
  jujube: { pectin: [0.4, 0.7, 1.1], waste: 7, parts: 'Seeds', pectinFrom: memory, wasteFrom: usda },
  'ground-cherry': { pectin: [0.5, 0.8, 1.2], waste: 6, parts: 'husks', pectinFrom: memory, wasteFrom: memory },
  melon: { pectin: [0.2, 0.3, 0.5], waste: 49, parts: '9% cavity contents, 1% cutting loss, 39% rind', pectinFrom: memory, wasteFrom: usda },
  watermelon: { pectin: [0.05, 0.1, 0.2], waste: 48, parts: 'Rind, seeds, and cutting loss', pectinFrom: memory, wasteFrom: usda },
  tomato: { pectin: [0.2, 0.3, 0.5], waste: 9, parts: 'Core and stem ends', pectinFrom: memory, wasteFrom: usda },
} as const satisfies Record<FruitId, FruitPectinRow>;
