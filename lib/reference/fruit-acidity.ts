/**
 * Titratable acidity (low, typical, high, per cent by weight of fresh edible part, as the acid named) and pH (low, high)
 * of fresh fruit. The pH range is the widest found, wider than the printed list of `ph-list.ts`; the acid class rests
 * on its upper end. The japonica quince figure is in citric equivalents though the acid is malic.
 */
import type { FruitId } from './fruit-list.ts';
import type { Cited } from './source.ts';

export interface FruitAcidityRow {
  readonly acid: readonly [low: number, typ: number, high: number];
  readonly as: 'citric' | 'malic' | 'tartaric';
  readonly pH: readonly [low: number, high: number];
  readonly acidFrom: Cited;
  readonly phFrom: Cited;
}

const applej = { source: 'APPLEJ', status: 'verified' } as const;
const applejWithCidera = { source: 'APPLEJ', status: 'verified', also: ['CIDERA'] } as const;
const cidera = { source: 'CIDERA', status: 'verified' } as const;
const memory = { source: 'MEMORY', status: 'memory' } as const;
const pear170WithBelitz = { source: 'PEAR170', status: 'verified', also: ['BELITZ'] } as const;
const asianp = { source: 'ASIANP', status: 'verified' } as const;
const quince = { source: 'QUINCE', status: 'verified' } as const;
const chaen = { source: 'CHAEN', status: 'verified' } as const;
const medlar = { source: 'MEDLAR', status: 'verified' } as const;
const belitzWithBlyth = { source: 'BELITZ', status: 'verified', also: ['BLYTH'] } as const;
const belitzWithWiley = { source: 'BELITZ', status: 'verified', also: ['WILEY'] } as const;
const nergizWithPlumgr = { source: 'NERGIZ', status: 'verified', also: ['PLUMGR'] } as const;
const cherryWithBelitz = { source: 'CHERRY', status: 'verified', also: ['BELITZ'] } as const;
const belitz = { source: 'BELITZ', status: 'verified' } as const;
const cornWithMemory = { source: 'CORN', status: 'memory', also: ['MEMORY'] } as const;
const blackbWithBelitzBlyth = { source: 'BLACKB', status: 'verified', also: ['BELITZ', 'BLYTH'] } as const;
const raspWithBlythBelitz = { source: 'RASP', status: 'verified', also: ['BLYTH', 'BELITZ'] } as const;
const blueb = { source: 'BLUEB', status: 'verified' } as const;
const cranbWithWiley = { source: 'CRANB', status: 'verified', also: ['WILEY'] } as const;
const blythWithMemory = { source: 'BLYTH', status: 'memory', also: ['MEMORY'] } as const;
const belitzWithWileyBlyth = { source: 'BELITZ', status: 'verified', also: ['WILEY', 'BLYTH'] } as const;
const belitzWithMemory = { source: 'BELITZ', status: 'memory', also: ['MEMORY'] } as const;
const elder = { source: 'ELDER', status: 'verified' } as const;
const mulb = { source: 'MULB', status: 'verified' } as const;
const sask = { source: 'SASK', status: 'verified' } as const;
const aronia = { source: 'ARONIA', status: 'verified' } as const;
const seab = { source: 'SEAB', status: 'verified' } as const;
const kiwi = { source: 'KIWI', status: 'verified' } as const;
const rhub = { source: 'RHUB', status: 'verified' } as const;
const belitzWithBlythWiley = { source: 'BELITZ', status: 'verified', also: ['BLYTH', 'WILEY'] } as const;
const fdaph = { source: 'FDAPH', status: 'verified' } as const;
const pear170 = {
  source: 'PEAR170',
  status: 'verified',
  note: 'list range for one dessert cultivar 3.5-4.6 is memory)',
} as const;
const asianpWithAhea = { source: 'ASIANP', status: 'verified', also: ['AHEA'] } as const;
const fdaph2 = { source: 'FDAPH', status: 'verified', note: 'fresh 3.30-4.05, canned 3.7-4.2' } as const;
const memory2 = { source: 'MEMORY', status: 'memory', note: 'FDA 3.92-4.18' } as const;
const nergizWithPlumgr2 = {
  source: 'NERGIZ',
  status: 'verified',
  also: ['PLUMGR'],
  note: 'upper end AHEA 2.8-4.6',
} as const;
const memory3 = { source: 'MEMORY', status: 'memory', note: 'FDA red 3.6-4.3' } as const;
const memory4 = { source: 'MEMORY', status: 'memory', note: 'FDA' } as const;
const fdaphWithBlackb = { source: 'FDAPH', status: 'verified', also: ['BLACKB'] } as const;
const bluebWithFdaphAhea = { source: 'BLUEB', status: 'verified', also: ['FDAPH', 'AHEA'] } as const;
const cranb = { source: 'CRANB', status: 'verified' } as const;
const aheaWithMemory = { source: 'AHEA', status: 'memory', also: ['MEMORY'] } as const;
const haw = { source: 'HAW', status: 'secondary' } as const;
const fdaphWithAhea = { source: 'FDAPH', status: 'verified', also: ['AHEA'] } as const;
const memory5 = { source: 'MEMORY', status: 'memory', note: 'FDA 4.42-4.70' } as const;
const ahea = { source: 'AHEA', status: 'verified' } as const;
const memory6 = { source: 'MEMORY', status: 'memory', note: 'FDA 3.64-4.25' } as const;
const memory7 = { source: 'MEMORY', status: 'memory', note: 'FDA 5.10' } as const;
const memory8 = { source: 'MEMORY', status: 'memory', note: 'FDA 5.20' } as const;
const tomWithFdaph = { source: 'TOM', status: 'verified', also: ['FDAPH'] } as const;

// biome-ignore format: one printed row to a line
export const FRUIT_ACIDITY = {
  'apple-dessert': { acid: [0.15, 0.42, 0.91], as: 'malic', pH: [3.3, 4], acidFrom: applej, phFrom: fdaph },
  'apple-cooking': { acid: [0.8, 1.2, 1.9], as: 'malic', pH: [2.9, 3.4], acidFrom: applejWithCidera, phFrom: applej },
  'apple-cider-sweet': { acid: [0.12, 0.25, 0.45], as: 'malic', pH: [3.6, 4.76], acidFrom: cidera, phFrom: cidera },
  crabapple: { acid: [0.8, 1.5, 2.5], as: 'malic', pH: [2.8, 3.4], acidFrom: memory, phFrom: memory },
  pear: { acid: [0.05, 0.2, 0.5], as: 'malic', pH: [3.5, 5.58], acidFrom: pear170WithBelitz, phFrom: pear170 },
  'pear-asian': { acid: [0.1, 0.16, 0.33], as: 'malic', pH: [4.2, 5.2], acidFrom: asianp, phFrom: asianpWithAhea },
  quince: { acid: [0.6, 0.95, 1.6], as: 'malic', pH: [3.04, 3.56], acidFrom: quince, phFrom: quince },
  'japonica-quince': { acid: [2.5, 3.5, 4.5], as: 'citric', pH: [2.4, 2.8], acidFrom: chaen, phFrom: chaen },
  medlar: { acid: [0.15, 0.28, 0.6], as: 'malic', pH: [4.1, 4.6], acidFrom: medlar, phFrom: medlar },
  apricot: { acid: [0.7, 1.3, 2.2], as: 'malic', pH: [3.3, 4.8], acidFrom: belitzWithBlyth, phFrom: fdaph },
  'peach-yellow': { acid: [0.4, 0.65, 1], as: 'malic', pH: [3.3, 4.2], acidFrom: belitzWithWiley, phFrom: fdaph2 },
  'peach-white': { acid: [0.15, 0.28, 0.45], as: 'malic', pH: [4.3, 5], acidFrom: memory, phFrom: memory },
  nectarine: { acid: [0.4, 0.7, 1.1], as: 'malic', pH: [3.9, 4.2], acidFrom: memory, phFrom: memory2 },
  'plum-european': { acid: [0.6, 1.3, 2.2], as: 'malic', pH: [3.3, 4.6], acidFrom: nergizWithPlumgr, phFrom: nergizWithPlumgr2 },
  'plum-japanese': { acid: [0.6, 1.1, 1.9], as: 'malic', pH: [3, 4.3], acidFrom: memory, phFrom: memory3 },
  damson: { acid: [1.6, 2.2, 2.8], as: 'malic', pH: [2.9, 3.1], acidFrom: memory, phFrom: memory4 },
  greengage: { acid: [0.6, 1, 1.5], as: 'malic', pH: [3.6, 4.3], acidFrom: memory, phFrom: memory4 },
  mirabelle: { acid: [0.4, 0.7, 1], as: 'malic', pH: [3.5, 4.2], acidFrom: memory, phFrom: memory },
  'cherry-sweet': { acid: [0.5, 0.8, 1.1], as: 'malic', pH: [3.8, 4.54], acidFrom: cherryWithBelitz, phFrom: fdaph },
  'cherry-sour': { acid: [1.2, 1.7, 2.4], as: 'malic', pH: [3.2, 3.8], acidFrom: belitz, phFrom: fdaph },
  'cornelian-cherry': { acid: [1.5, 2.6, 4], as: 'malic', pH: [2.7, 3.3], acidFrom: cornWithMemory, phFrom: memory },
  blackberry: { acid: [0.6, 0.95, 1.7], as: 'citric', pH: [3.2, 4.5], acidFrom: blackbWithBelitzBlyth, phFrom: fdaphWithBlackb },
  loganberry: { acid: [1.5, 2, 2.6], as: 'citric', pH: [2.7, 3.5], acidFrom: memory, phFrom: fdaph },
  'raspberry-red': { acid: [1.1, 1.6, 2.1], as: 'citric', pH: [3.2, 3.95], acidFrom: raspWithBlythBelitz, phFrom: memory4 },
  'raspberry-black': { acid: [0.8, 1.2, 1.6], as: 'citric', pH: [3.3, 3.9], acidFrom: memory, phFrom: memory },
  strawberry: { acid: [0.6, 0.9, 1.3], as: 'citric', pH: [3, 3.9], acidFrom: belitzWithBlyth, phFrom: fdaph },
  blueberry: { acid: [0.46, 0.72, 1.1], as: 'citric', pH: [2.85, 3.7], acidFrom: blueb, phFrom: bluebWithFdaphAhea },
  cranberry: { acid: [1.8, 2.3, 2.6], as: 'citric', pH: [2.3, 2.7], acidFrom: cranbWithWiley, phFrom: cranb },
  gooseberry: { acid: [1.4, 2, 2.6], as: 'citric', pH: [2.8, 3.2], acidFrom: blythWithMemory, phFrom: aheaWithMemory },
  'currant-red': { acid: [1.8, 2.3, 2.8], as: 'citric', pH: [2.8, 3.1], acidFrom: belitzWithWileyBlyth, phFrom: belitz },
  'currant-black': { acid: [2.3, 3, 3.8], as: 'citric', pH: [2.6, 3.3], acidFrom: belitzWithMemory, phFrom: belitzWithMemory },
  'elderberry-european': { acid: [0.6, 1.17, 1.4], as: 'citric', pH: [3.7, 4.2], acidFrom: elder, phFrom: elder },
  'elderberry-american': { acid: [0.4, 0.56, 0.75], as: 'citric', pH: [4.2, 5], acidFrom: elder, phFrom: elder },
  'mulberry-black': { acid: [0.9, 1.5, 1.9], as: 'citric', pH: [3.4, 3.7], acidFrom: mulb, phFrom: mulb },
  'mulberry-white': { acid: [0.1, 0.2, 0.6], as: 'citric', pH: [4, 5.8], acidFrom: mulb, phFrom: mulb },
  saskatoon: { acid: [0.28, 0.4, 0.63], as: 'malic', pH: [3.65, 4.4], acidFrom: sask, phFrom: sask },
  aronia: { acid: [0.7, 1, 1.35], as: 'citric', pH: [3.5, 3.95], acidFrom: aronia, phFrom: aronia },
  'sea-buckthorn': { acid: [2, 3, 4.5], as: 'malic', pH: [2.6, 3], acidFrom: seab, phFrom: seab },
  rowan: { acid: [1.6, 2.5, 3.6], as: 'malic', pH: [2.9, 3.4], acidFrom: memory, phFrom: memory },
  rosehip: { acid: [1, 1.8, 3], as: 'citric', pH: [3.2, 4.2], acidFrom: memory, phFrom: memory },
  hawthorn: { acid: [0.3, 0.6, 1.5], as: 'malic', pH: [3, 6], acidFrom: memory, phFrom: haw },
  sloe: { acid: [1, 1.7, 2.5], as: 'malic', pH: [3, 3.6], acidFrom: memory, phFrom: memory },
  'grape-slipskin': { acid: [0.8, 1.2, 1.6], as: 'tartaric', pH: [2.8, 3.3], acidFrom: memory, phFrom: fdaph },
  'grape-vinifera': { acid: [0.4, 0.7, 1], as: 'tartaric', pH: [2.9, 4.3], acidFrom: belitzWithBlyth, phFrom: fdaph },
  fig: { acid: [0.15, 0.3, 0.45], as: 'citric', pH: [4.6, 6], acidFrom: belitzWithMemory, phFrom: fdaphWithAhea },
  'persimmon-japanese': { acid: [0.05, 0.1, 0.2], as: 'malic', pH: [4.4, 6], acidFrom: memory, phFrom: memory5 },
  'persimmon-american': { acid: [0.1, 0.2, 0.3], as: 'malic', pH: [4.5, 5.5], acidFrom: memory, phFrom: memory },
  pomegranate: { acid: [0.8, 1.3, 2], as: 'citric', pH: [2.93, 3.2], acidFrom: memory, phFrom: fdaph },
  kiwifruit: { acid: [0.9, 1.2, 1.6], as: 'citric', pH: [3.1, 3.9], acidFrom: kiwi, phFrom: memory },
  kiwiberry: { acid: [0.8, 1.1, 1.5], as: 'citric', pH: [3.3, 4], acidFrom: memory, phFrom: memory },
  rhubarb: { acid: [1.2, 1.6, 2.1], as: 'malic', pH: [3.1, 3.4], acidFrom: rhub, phFrom: rhub },
  'lemon-juice': { acid: [4.5, 5.3, 6.5], as: 'citric', pH: [2, 2.6], acidFrom: belitzWithBlythWiley, phFrom: fdaph },
  'lemon-whole': { acid: [3, 4, 5], as: 'citric', pH: [2.2, 2.6], acidFrom: memory, phFrom: ahea },
  'orange-sweet': { acid: [0.6, 1, 1.4], as: 'citric', pH: [3.1, 4.34], acidFrom: belitzWithWiley, phFrom: fdaph },
  'orange-seville': { acid: [1.5, 2.5, 3.5], as: 'citric', pH: [2.6, 3.1], acidFrom: memory, phFrom: memory },
  grapefruit: { acid: [1, 1.4, 2], as: 'citric', pH: [3, 3.75], acidFrom: belitz, phFrom: fdaph },
  mandarin: { acid: [0.5, 0.8, 1.2], as: 'citric', pH: [3.3, 4.5], acidFrom: memory, phFrom: memory4 },
  kumquat: { acid: [1.5, 2.5, 4], as: 'citric', pH: [2.6, 4.25], acidFrom: memory, phFrom: memory6 },
  pineapple: { acid: [0.5, 0.75, 1.1], as: 'citric', pH: [3.2, 4], acidFrom: belitz, phFrom: memory4 },
  guava: { acid: [0.4, 0.9, 1.5], as: 'citric', pH: [3.3, 4.5], acidFrom: belitz, phFrom: memory },
  feijoa: { acid: [0.5, 1, 1.8], as: 'citric', pH: [3.2, 4.1], acidFrom: memory, phFrom: memory },
  loquat: { acid: [0.3, 0.6, 1.2], as: 'malic', pH: [3.5, 5.1], acidFrom: memory, phFrom: memory7 },
  jujube: { acid: [0.2, 0.4, 0.7], as: 'malic', pH: [4.2, 5.2], acidFrom: memory, phFrom: memory8 },
  'ground-cherry': { acid: [0.8, 1.4, 2], as: 'citric', pH: [3.4, 4], acidFrom: memory, phFrom: memory },
  melon: { acid: [0.05, 0.1, 0.2], as: 'citric', pH: [6.1, 6.6], acidFrom: memory, phFrom: fdaph },
  watermelon: { acid: [0.05, 0.1, 0.2], as: 'malic', pH: [5.2, 5.6], acidFrom: memory, phFrom: memory4 },
  tomato: { acid: [0.25, 0.4, 0.6], as: 'citric', pH: [3.9, 4.9], acidFrom: memory, phFrom: tomWithFdaph },
} as const satisfies Record<FruitId, FruitAcidityRow>;
