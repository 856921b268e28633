/**
 * Water, soluble solids, sugars and insoluble solids of fresh fruit, edible part, per cent by weight.
 * Water and sugars: USDA SR26. Soluble solids low, typical, high in degrees Brix: the source beside each row.
 * Insoluble solids are an estimate from dietary fibre; null where no figure was found.
 */
import type { FruitId } from './fruit-list.ts';
import type { Cited } from './source.ts';

export interface FruitSolidsRow {
  readonly water: number;
  readonly soluble: readonly [low: number, typ: number, high: number];
  readonly sugars: number | null;
  readonly insoluble: number | null;
  readonly waterFrom: Cited;
  readonly solubleFrom: Cited;
}

const usda = { source: 'USDA', status: 'verified' } as const;
const memory = { source: 'MEMORY', status: 'memory' } as const;
const applej = { source: 'APPLEJ', status: 'verified' } as const;
const cfr150WithMemory = { source: 'CFR150', status: 'memory', also: ['MEMORY'] } as const;
const cidera = { source: 'CIDERA', status: 'verified' } as const;
const cfr150 = { source: 'CFR150', status: 'verified' } as const;
const pear170 = { source: 'PEAR170', status: 'verified' } as const;
const asianp = { source: 'ASIANP', status: 'verified' } as const;
const quince = { source: 'QUINCE', status: 'verified' } as const;
const chaen = { source: 'CHAEN', status: 'verified' } as const;
const medlar = { source: 'MEDLAR', status: 'verified' } as const;
const nergizWithPlumgr = { source: 'NERGIZ', status: 'verified', also: ['PLUMGR'] } as const;
const plumgr = { source: 'PLUMGR', status: 'verified' } as const;
const cherry = { source: 'CHERRY', status: 'verified' } as const;
const corn = { source: 'CORN', status: 'verified' } as const;
const cfr150WithBlackb = { source: 'CFR150', status: 'verified', also: ['BLACKB'] } as const;
const raspWithCfr150 = { source: 'RASP', status: 'verified', also: ['CFR150'] } as const;
const blueb = { source: 'BLUEB', status: 'verified' } as const;
const elder = { source: 'ELDER', status: 'verified' } as const;
const mulb = { source: 'MULB', status: 'verified' } as const;
const sask = { source: 'SASK', status: 'verified' } as const;
const aronia = { source: 'ARONIA', status: 'verified' } as const;
const seab = { source: 'SEAB', status: 'verified' } as const;
const pers = { source: 'PERS', status: 'verified' } as const;
const rhub = { source: 'RHUB', status: 'verified' } as const;

// biome-ignore format: one printed row to a line
export const FRUIT_SOLIDS = {
  'apple-dessert': { water: 85.56, soluble: [10, 12.7, 16.9], sugars: 10.39, insoluble: 2.1, waterFrom: usda, solubleFrom: applej },
  'apple-cooking': { water: 85.46, soluble: [10, 12, 14], sugars: 9.59, insoluble: 2.5, waterFrom: usda, solubleFrom: cfr150WithMemory },
  'apple-cider-sweet': { water: 85.56, soluble: [10.6, 14, 18.3], sugars: 10.39, insoluble: 2.1, waterFrom: usda, solubleFrom: cidera },
  crabapple: { water: 78.94, soluble: [11, 15.4, 20], sugars: null, insoluble: null, waterFrom: usda, solubleFrom: cfr150 },
  pear: { water: 83.96, soluble: [8, 12, 16.3], sugars: 9.75, insoluble: 2.6, waterFrom: usda, solubleFrom: pear170 },
  'pear-asian': { water: 88.25, soluble: [9, 11, 13], sugars: 7.05, insoluble: 3.1, waterFrom: usda, solubleFrom: asianp },
  quince: { water: 83.8, soluble: [11.5, 14.2, 20], sugars: null, insoluble: 1.7, waterFrom: usda, solubleFrom: quince },
  'japonica-quince': { water: 89, soluble: [6, 7.1, 9], sugars: 3, insoluble: null, waterFrom: memory, solubleFrom: chaen },
  medlar: { water: 72, soluble: [17, 24, 28], sugars: 12, insoluble: null, waterFrom: memory, solubleFrom: medlar },
  apricot: { water: 86.35, soluble: [9, 13, 18], sugars: 9.24, insoluble: 2.5, waterFrom: usda, solubleFrom: cfr150WithMemory },
  'peach-yellow': { water: 88.87, soluble: [8.5, 11.5, 14], sugars: 8.39, insoluble: 1.7, waterFrom: usda, solubleFrom: cfr150 },
  'peach-white': { water: 88.87, soluble: [9, 12, 15], sugars: 8.39, insoluble: 1.7, waterFrom: usda, solubleFrom: memory },
  nectarine: { water: 87.59, soluble: [10, 12, 15], sugars: 7.89, insoluble: 2, waterFrom: usda, solubleFrom: memory },
  'plum-european': { water: 87.23, soluble: [11.5, 15.5, 19.6], sugars: 9.92, insoluble: 1.6, waterFrom: usda, solubleFrom: nergizWithPlumgr },
  'plum-japanese': { water: 87.23, soluble: [8.5, 13, 18], sugars: 9.92, insoluble: 1.6, waterFrom: usda, solubleFrom: plumgr },
  damson: { water: 87.23, soluble: [11, 14.3, 17], sugars: 9.92, insoluble: 1.6, waterFrom: usda, solubleFrom: cfr150 },
  greengage: { water: 87.23, soluble: [12, 14.3, 20], sugars: 9.92, insoluble: 1.6, waterFrom: usda, solubleFrom: cfr150 },
  mirabelle: { water: 87.23, soluble: [14, 17, 20], sugars: 9.92, insoluble: 1.6, waterFrom: usda, solubleFrom: memory },
  'cherry-sweet': { water: 82.25, soluble: [13.5, 17, 24.5], sugars: 12.82, insoluble: 2.2, waterFrom: usda, solubleFrom: cherry },
  'cherry-sour': { water: 86.13, soluble: [11, 14.3, 18], sugars: 8.49, insoluble: 1.9, waterFrom: usda, solubleFrom: cfr150 },
  'cornelian-cherry': { water: 80, soluble: [16, 17, 20], sugars: 10, insoluble: null, waterFrom: memory, solubleFrom: corn },
  blackberry: { water: 88.15, soluble: [8, 10, 12.6], sugars: 4.88, insoluble: 5, waterFrom: usda, solubleFrom: cfr150WithBlackb },
  loganberry: { water: 88.15, soluble: [9, 10.5, 12], sugars: 4.88, insoluble: 5, waterFrom: usda, solubleFrom: cfr150 },
  'raspberry-red': { water: 85.75, soluble: [7, 10, 15], sugars: 4.42, insoluble: 6, waterFrom: usda, solubleFrom: raspWithCfr150 },
  'raspberry-black': { water: 85.75, soluble: [9, 11.1, 14], sugars: 4.42, insoluble: 6, waterFrom: usda, solubleFrom: cfr150 },
  strawberry: { water: 90.95, soluble: [6, 8, 11], sugars: 4.89, insoluble: 2.1, waterFrom: usda, solubleFrom: cfr150 },
  blueberry: { water: 84.21, soluble: [10.3, 11.5, 13], sugars: 9.96, insoluble: 2.4, waterFrom: usda, solubleFrom: blueb },
  cranberry: { water: 87.13, soluble: [7, 10.5, 11], sugars: 4.04, insoluble: 3.7, waterFrom: usda, solubleFrom: cfr150 },
  gooseberry: { water: 87.87, soluble: [7, 8.3, 14], sugars: null, insoluble: 4.2, waterFrom: usda, solubleFrom: cfr150 },
  'currant-red': { water: 83.95, soluble: [8, 10.5, 13], sugars: 7.37, insoluble: 4, waterFrom: usda, solubleFrom: cfr150 },
  'currant-black': { water: 81.96, soluble: [11, 14.5, 18], sugars: null, insoluble: null, waterFrom: usda, solubleFrom: memory },
  'elderberry-european': { water: 79.8, soluble: [9, 13.1, 15], sugars: null, insoluble: 6, waterFrom: usda, solubleFrom: elder },
  'elderberry-american': { water: 79.8, soluble: [9, 10.9, 13], sugars: null, insoluble: 6, waterFrom: usda, solubleFrom: elder },
  'mulberry-black': { water: 87.68, soluble: [14, 17, 20], sugars: 8.1, insoluble: 2.2, waterFrom: usda, solubleFrom: mulb },
  'mulberry-white': { water: 87.68, soluble: [9, 16, 25], sugars: 8.1, insoluble: 2.2, waterFrom: usda, solubleFrom: mulb },
  saskatoon: { water: 77, soluble: [14, 17, 20.1], sugars: 12, insoluble: null, waterFrom: memory, solubleFrom: sask },
  aronia: { water: 81, soluble: [13, 15, 21], sugars: 9, insoluble: null, waterFrom: memory, solubleFrom: aronia },
  'sea-buckthorn': { water: 83, soluble: [7.4, 10, 14.8], sugars: 4, insoluble: null, waterFrom: memory, solubleFrom: seab },
  rowan: { water: 75, soluble: [14, 18, 22], sugars: 8, insoluble: null, waterFrom: memory, solubleFrom: memory },
  rosehip: { water: 65, soluble: [18, 22, 30], sugars: 10, insoluble: null, waterFrom: memory, solubleFrom: memory },
  hawthorn: { water: 72, soluble: [14, 18, 22], sugars: 10, insoluble: null, waterFrom: memory, solubleFrom: memory },
  sloe: { water: 70, soluble: [14, 18, 24], sugars: 8, insoluble: null, waterFrom: memory, solubleFrom: memory },
  'grape-slipskin': { water: 81.3, soluble: [13, 15.5, 19], sugars: 16.25, insoluble: 1.3, waterFrom: usda, solubleFrom: cfr150WithMemory },
  'grape-vinifera': { water: 80.54, soluble: [15, 18.5, 25], sugars: 15.48, insoluble: 1.1, waterFrom: usda, solubleFrom: memory },
  fig: { water: 79.11, soluble: [14, 18.2, 24], sugars: 16.26, insoluble: 2.8, waterFrom: usda, solubleFrom: cfr150 },
  'persimmon-japanese': { water: 80.32, soluble: [15, 19, 23], sugars: 12.53, insoluble: 3.1, waterFrom: usda, solubleFrom: pers },
  'persimmon-american': { water: 64.4, soluble: [25, 30, 35], sugars: null, insoluble: null, waterFrom: usda, solubleFrom: memory },
  pomegranate: { water: 77.93, soluble: [14, 18.2, 19], sugars: 13.67, insoluble: 4.8, waterFrom: usda, solubleFrom: cfr150 },
  kiwifruit: { water: 83.07, soluble: [12, 14, 17], sugars: 8.99, insoluble: 3.2, waterFrom: usda, solubleFrom: memory },
  kiwiberry: { water: 80, soluble: [14, 18, 23], sugars: 12, insoluble: null, waterFrom: memory, solubleFrom: memory },
  rhubarb: { water: 93.61, soluble: [3, 4.5, 6], sugars: 1.1, insoluble: 1.9, waterFrom: usda, solubleFrom: rhub },
  'lemon-juice': { water: 92.31, soluble: [7, 8, 9], sugars: 2.52, insoluble: 0.6, waterFrom: usda, solubleFrom: memory },
  'lemon-whole': { water: 88.98, soluble: [7, 8.5, 10], sugars: 2.5, insoluble: 2.8, waterFrom: usda, solubleFrom: memory },
  'orange-sweet': { water: 86.75, soluble: [10, 12.5, 14], sugars: 9.35, insoluble: 2.3, waterFrom: usda, solubleFrom: cfr150 },
  'orange-seville': { water: 82.3, soluble: [9, 11, 13], sugars: null, insoluble: 4.2, waterFrom: usda, solubleFrom: memory },
  grapefruit: { water: 90.48, soluble: [8, 9.1, 11], sugars: 7.31, insoluble: 1.2, waterFrom: usda, solubleFrom: cfr150 },
  mandarin: { water: 85.17, soluble: [10, 12, 14], sugars: 10.58, insoluble: 2, waterFrom: usda, solubleFrom: memory },
  kumquat: { water: 80.85, soluble: [12, 15, 19], sugars: 9.36, insoluble: 6.5, waterFrom: usda, solubleFrom: memory },
  pineapple: { water: 86, soluble: [11, 14.3, 17], sugars: 9.85, insoluble: 1.4, waterFrom: usda, solubleFrom: cfr150 },
  guava: { water: 80.8, soluble: [7, 7.7, 13], sugars: 8.92, insoluble: 6, waterFrom: usda, solubleFrom: cfr150 },
  feijoa: { water: 84.94, soluble: [9, 12, 15], sugars: 8.2, insoluble: 5.8, waterFrom: usda, solubleFrom: memory },
  loquat: { water: 86.73, soluble: [9, 12, 15], sugars: null, insoluble: 1.6, waterFrom: usda, solubleFrom: memory },
  jujube: { water: 77.86, soluble: [18, 25, 32], sugars: null, insoluble: null, waterFrom: usda, solubleFrom: memory },
  'ground-cherry': { water: 85.4, soluble: [11, 13.5, 15], sugars: 6, insoluble: null, waterFrom: memory, solubleFrom: memory },
  melon: { water: 90.15, soluble: [8, 10, 14], sugars: 7.86, insoluble: 1.2, waterFrom: usda, solubleFrom: memory },
  watermelon: { water: 91.45, soluble: [7, 9, 12], sugars: 6.2, insoluble: 0.7, waterFrom: usda, solubleFrom: memory },
  tomato: { water: 94.52, soluble: [4, 5, 7], sugars: 2.63, insoluble: 1.5, waterFrom: usda, solubleFrom: memory },
} as const satisfies Record<FruitId, FruitSolidsRow>;
