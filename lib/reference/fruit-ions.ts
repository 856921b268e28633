/**
 * What the acid balance needs of a fruit: shares of its acids (sum 1), minerals in mg per 100 g and dietary fibre in per
 * cent (USDA SR26), net cations in milli-equivalents per kg (estimate from the minerals), and the factor of
 * 21 CFR 150.140 / 150.110 (100 / factor = soluble solids the rule assumes). Null where no figure was found.
 */
import type { FruitId } from './fruit-list.ts';
import type { Cited } from './source.ts';

export interface FruitIonsRow {
  readonly shares: Readonly<Partial<Record<'malic' | 'citric' | 'tartaric' | 'quinic' | 'oxalic', number>>>;
  readonly netCation: number | null;
  readonly minerals: (Readonly<Partial<Record<'Ca' | 'Mg' | 'P' | 'Na', number>>> & { readonly K: number }) | null;
  readonly fibre: number | null;
  readonly cfrFactor: number | null;
}

/** Minerals and fibre of a row; a row that gives potassium alone has it from memory. */
export const MINERALS_FROM = { source: 'USDA', status: 'verified' } as const satisfies Cited;
/** Acid shares of every row: no single publication prints them. */
export const ACID_SHARES_FROM = { source: 'MEMORY', status: 'memory' } as const satisfies Cited;
/** Net cations: computed from the minerals with an assumed organic share. */
export const NET_CATION_FROM = { source: 'COMPUTED', status: 'estimate' } as const satisfies Cited;

// biome-ignore format: one printed row to a line
export const FRUIT_IONS = {
  'apple-dessert': { shares: { malic: 0.95, citric: 0.05 }, netCation: 30, minerals: { K: 107, Ca: 6, Mg: 5, P: 11, Na: 1 }, fibre: 2.4, cfrFactor: 7.5 },
  'apple-cooking': { shares: { malic: 0.97, citric: 0.03 }, netCation: 33, minerals: { K: 120, Ca: 5, Mg: 5, P: 12, Na: 1 }, fibre: 2.8, cfrFactor: 7.5 },
  'apple-cider-sweet': { shares: { malic: 1 }, netCation: 30, minerals: { K: 107, Ca: 6, Mg: 5, P: 11, Na: 1 }, fibre: 2.4, cfrFactor: 7.5 },
  crabapple: { shares: { malic: 0.97, citric: 0.03 }, netCation: 55, minerals: { K: 194, Ca: 18, Mg: 7, P: 15, Na: 1 }, fibre: null, cfrFactor: 6.5 },
  pear: { shares: { malic: 0.75, citric: 0.25 }, netCation: 34, minerals: { K: 116, Ca: 9, Mg: 7, P: 12, Na: 1 }, fibre: 3.1, cfrFactor: 6.5 },
  'pear-asian': { shares: { malic: 0.9, citric: 0.1 }, netCation: 35, minerals: { K: 121, Ca: 4, Mg: 8, P: 11, Na: 0 }, fibre: 3.6, cfrFactor: null },
  quince: { shares: { malic: 0.9, citric: 0.02, tartaric: 0.08 }, netCation: 56, minerals: { K: 197, Ca: 11, Mg: 8, P: 17, Na: 4 }, fibre: 1.9, cfrFactor: 7.5 },
  'japonica-quince': { shares: { malic: 0.8, quinic: 0.2 }, netCation: 51, minerals: { K: 190 }, fibre: null, cfrFactor: null },
  medlar: { shares: { malic: 0.9, citric: 0.1 }, netCation: 67, minerals: { K: 250 }, fibre: null, cfrFactor: null },
  apricot: { shares: { malic: 0.55, citric: 0.45 }, netCation: 71, minerals: { K: 259, Ca: 13, Mg: 10, P: 23, Na: 1 }, fibre: 2, cfrFactor: 7 },
  'peach-yellow': { shares: { malic: 0.65, citric: 0.35 }, netCation: 51, minerals: { K: 190, Ca: 6, Mg: 9, P: 20, Na: 0 }, fibre: 1.5, cfrFactor: 8.5 },
  'peach-white': { shares: { malic: 0.6, citric: 0.4 }, netCation: 51, minerals: { K: 190, Ca: 6, Mg: 9, P: 20, Na: 0 }, fibre: 1.5, cfrFactor: null },
  nectarine: { shares: { malic: 0.65, citric: 0.35 }, netCation: 52, minerals: { K: 201, Ca: 6, Mg: 9, P: 26, Na: 0 }, fibre: 1.7, cfrFactor: null },
  'plum-european': { shares: { malic: 0.97, citric: 0.03 }, netCation: 42, minerals: { K: 157, Ca: 6, Mg: 7, P: 16, Na: 0 }, fibre: 1.4, cfrFactor: 7 },
  'plum-japanese': { shares: { malic: 0.97, citric: 0.03 }, netCation: 42, minerals: { K: 157, Ca: 6, Mg: 7, P: 16, Na: 0 }, fibre: 1.4, cfrFactor: 7 },
  damson: { shares: { malic: 0.97, citric: 0.03 }, netCation: 42, minerals: { K: 157, Ca: 6, Mg: 7, P: 16, Na: 0 }, fibre: 1.4, cfrFactor: 7 },
  greengage: { shares: { malic: 0.97, citric: 0.03 }, netCation: 42, minerals: { K: 157, Ca: 6, Mg: 7, P: 16, Na: 0 }, fibre: 1.4, cfrFactor: 7 },
  mirabelle: { shares: { malic: 0.97, citric: 0.03 }, netCation: 42, minerals: { K: 157, Ca: 6, Mg: 7, P: 16, Na: 0 }, fibre: 1.4, cfrFactor: null },
  'cherry-sweet': { shares: { malic: 0.95, citric: 0.05 }, netCation: 62, minerals: { K: 222, Ca: 13, Mg: 11, P: 21, Na: 0 }, fibre: 2.1, cfrFactor: 7 },
  'cherry-sour': { shares: { malic: 0.95, citric: 0.05 }, netCation: 52, minerals: { K: 173, Ca: 16, Mg: 9, P: 15, Na: 3 }, fibre: 1.6, cfrFactor: 7 },
  'cornelian-cherry': { shares: { malic: 0.95, tartaric: 0.05 }, netCation: 94, minerals: { K: 350 }, fibre: null, cfrFactor: null },
  blackberry: { shares: { citric: 0.65, malic: 0.35 }, netCation: 58, minerals: { K: 162, Ca: 29, Mg: 20, P: 22, Na: 1 }, fibre: 5.3, cfrFactor: 10 },
  loganberry: { shares: { citric: 0.8, malic: 0.2 }, netCation: 58, minerals: { K: 162, Ca: 29, Mg: 20, P: 22, Na: 1 }, fibre: 5.3, cfrFactor: 9.5 },
  'raspberry-red': { shares: { citric: 0.95, malic: 0.05 }, netCation: 54, minerals: { K: 151, Ca: 25, Mg: 22, P: 29, Na: 1 }, fibre: 6.5, cfrFactor: 9.5 },
  'raspberry-black': { shares: { citric: 0.9, malic: 0.1 }, netCation: 54, minerals: { K: 151, Ca: 25, Mg: 22, P: 29, Na: 1 }, fibre: 6.5, cfrFactor: 9 },
  strawberry: { shares: { citric: 0.87, malic: 0.13 }, netCation: 47, minerals: { K: 153, Ca: 16, Mg: 13, P: 24, Na: 1 }, fibre: 2, cfrFactor: 12.5 },
  blueberry: { shares: { citric: 0.82, quinic: 0.09, malic: 0.09 }, netCation: 23, minerals: { K: 77, Ca: 6, Mg: 6, P: 12, Na: 1 }, fibre: 2.4, cfrFactor: null },
  cranberry: { shares: { citric: 0.42, malic: 0.3, quinic: 0.28 }, netCation: 25, minerals: { K: 85, Ca: 8, Mg: 6, P: 13, Na: 2 }, fibre: 4.6, cfrFactor: 9.5 },
  gooseberry: { shares: { citric: 0.6, malic: 0.4 }, netCation: 57, minerals: { K: 198, Ca: 25, Mg: 10, P: 27, Na: 1 }, fibre: 4.3, cfrFactor: 12 },
  'currant-red': { shares: { citric: 0.85, malic: 0.15 }, netCation: 75, minerals: { K: 275, Ca: 33, Mg: 13, P: 44, Na: 1 }, fibre: 4.3, cfrFactor: 9.5 },
  'currant-black': { shares: { citric: 0.9, malic: 0.1 }, netCation: 98, minerals: { K: 322, Ca: 55, Mg: 24, P: 59, Na: 2 }, fibre: null, cfrFactor: null },
  'elderberry-european': { shares: { citric: 0.65, malic: 0.35 }, netCation: 75, minerals: { K: 280, Ca: 38, Mg: 5, P: 39, Na: 6 }, fibre: 7, cfrFactor: null },
  'elderberry-american': { shares: { citric: 0.65, malic: 0.35 }, netCation: 75, minerals: { K: 280, Ca: 38, Mg: 5, P: 39, Na: 6 }, fibre: 7, cfrFactor: null },
  'mulberry-black': { shares: { citric: 0.8, malic: 0.2 }, netCation: 66, minerals: { K: 194, Ca: 39, Mg: 18, P: 38, Na: 10 }, fibre: 1.7, cfrFactor: null },
  'mulberry-white': { shares: { malic: 0.6, citric: 0.4 }, netCation: 66, minerals: { K: 194, Ca: 39, Mg: 18, P: 38, Na: 10 }, fibre: 1.7, cfrFactor: null },
  saskatoon: { shares: { malic: 0.9, citric: 0.1 }, netCation: 62, minerals: { K: 230 }, fibre: null, cfrFactor: null },
  aronia: { shares: { malic: 0.7, quinic: 0.25, citric: 0.05 }, netCation: 75, minerals: { K: 280 }, fibre: null, cfrFactor: null },
  'sea-buckthorn': { shares: { malic: 0.7, quinic: 0.3 }, netCation: 54, minerals: { K: 200 }, fibre: null, cfrFactor: null },
  rowan: { shares: { malic: 0.97, citric: 0.03 }, netCation: 62, minerals: { K: 230 }, fibre: null, cfrFactor: null },
  rosehip: { shares: { citric: 0.6, malic: 0.4 }, netCation: 115, minerals: { K: 430 }, fibre: null, cfrFactor: null },
  hawthorn: { shares: { malic: 0.6, citric: 0.4 }, netCation: 81, minerals: { K: 300 }, fibre: null, cfrFactor: null },
  sloe: { shares: { malic: 0.97, citric: 0.03 }, netCation: 94, minerals: { K: 350 }, fibre: null, cfrFactor: null },
  'grape-slipskin': { shares: { tartaric: 0.6, malic: 0.4 }, netCation: 54, minerals: { K: 191, Ca: 14, Mg: 5, P: 10, Na: 2 }, fibre: 0.9, cfrFactor: 7 },
  'grape-vinifera': { shares: { tartaric: 0.6, malic: 0.4 }, netCation: 52, minerals: { K: 191, Ca: 10, Mg: 7, P: 20, Na: 2 }, fibre: 0.9, cfrFactor: 7 },
  fig: { shares: { citric: 0.6, malic: 0.4 }, netCation: 78, minerals: { K: 232, Ca: 35, Mg: 17, P: 14, Na: 1 }, fibre: 2.9, cfrFactor: 5.5 },
  'persimmon-japanese': { shares: { malic: 0.7, citric: 0.3 }, netCation: 46, minerals: { K: 161, Ca: 8, Mg: 9, P: 17, Na: 1 }, fibre: 3.6, cfrFactor: null },
  'persimmon-american': { shares: { malic: 0.7, citric: 0.3 }, netCation: 78, minerals: { K: 310, Ca: 27, Mg: 0, P: 26, Na: 1 }, fibre: null, cfrFactor: null },
  pomegranate: { shares: { citric: 0.9, malic: 0.1 }, netCation: 62, minerals: { K: 236, Ca: 10, Mg: 12, P: 36, Na: 3 }, fibre: 4, cfrFactor: 5.5 },
  kiwifruit: { shares: { citric: 0.5, quinic: 0.4, malic: 0.1 }, netCation: 93, minerals: { K: 312, Ca: 34, Mg: 17, P: 34, Na: 3 }, fibre: 3, cfrFactor: null },
  kiwiberry: { shares: { citric: 0.55, quinic: 0.35, malic: 0.1 }, netCation: 75, minerals: { K: 280 }, fibre: null, cfrFactor: null },
  rhubarb: { shares: { malic: 0.65, citric: 0.15, oxalic: 0.2 }, netCation: 102, minerals: { K: 288, Ca: 86, Mg: 12, P: 14, Na: 4 }, fibre: 1.8, cfrFactor: null },
  'lemon-juice': { shares: { citric: 0.97, malic: 0.03 }, netCation: 31, minerals: { K: 103, Ca: 6, Mg: 6, P: 8, Na: 1 }, fibre: 0.3, cfrFactor: null },
  'lemon-whole': { shares: { citric: 0.97, malic: 0.03 }, netCation: 44, minerals: { K: 138, Ca: 26, Mg: 8, P: 16, Na: 2 }, fibre: 2.8, cfrFactor: null },
  'orange-sweet': { shares: { citric: 0.9, malic: 0.1 }, netCation: 60, minerals: { K: 181, Ca: 40, Mg: 10, P: 14, Na: 0 }, fibre: 2.4, cfrFactor: 8 },
  'orange-seville': { shares: { citric: 0.95, malic: 0.05 }, netCation: 73, minerals: { K: 196, Ca: 70, Mg: 14, P: 22, Na: 2 }, fibre: 4.5, cfrFactor: null },
  grapefruit: { shares: { citric: 0.95, malic: 0.05 }, netCation: 46, minerals: { K: 148, Ca: 12, Mg: 9, P: 8, Na: 0 }, fibre: 1.1, cfrFactor: 11 },
  mandarin: { shares: { citric: 0.92, malic: 0.08 }, netCation: 56, minerals: { K: 166, Ca: 37, Mg: 12, P: 20, Na: 2 }, fibre: 1.8, cfrFactor: null },
  kumquat: { shares: { citric: 0.95, malic: 0.05 }, netCation: 78, minerals: { K: 186, Ca: 62, Mg: 20, P: 19, Na: 10 }, fibre: 6.5, cfrFactor: null },
  pineapple: { shares: { citric: 0.8, malic: 0.2 }, netCation: 39, minerals: { K: 109, Ca: 13, Mg: 12, P: 8, Na: 1 }, fibre: 1.4, cfrFactor: 7 },
  guava: { shares: { citric: 0.8, malic: 0.2 }, netCation: 117, minerals: { K: 417, Ca: 18, Mg: 22, P: 40, Na: 2 }, fibre: 5.4, cfrFactor: 13 },
  feijoa: { shares: { citric: 0.75, malic: 0.25 }, netCation: 51, minerals: { K: 172, Ca: 17, Mg: 9, P: 19, Na: 3 }, fibre: 6.4, cfrFactor: null },
  loquat: { shares: { malic: 0.95, citric: 0.05 }, netCation: 74, minerals: { K: 266, Ca: 16, Mg: 13, P: 27, Na: 1 }, fibre: 1.7, cfrFactor: null },
  jujube: { shares: { malic: 0.7, citric: 0.3 }, netCation: 71, minerals: { K: 250, Ca: 21, Mg: 10, P: 23, Na: 3 }, fibre: null, cfrFactor: null },
  'ground-cherry': { shares: { citric: 0.9, malic: 0.1 }, netCation: 86, minerals: { K: 320 }, fibre: null, cfrFactor: null },
  melon: { shares: { citric: 1 }, netCation: 83, minerals: { K: 267, Ca: 9, Mg: 12, P: 15, Na: 16 }, fibre: 0.9, cfrFactor: null },
  watermelon: { shares: { malic: 1 }, netCation: 36, minerals: { K: 112, Ca: 7, Mg: 10, P: 11, Na: 1 }, fibre: 0.4, cfrFactor: null },
  tomato: { shares: { citric: 0.85, malic: 0.15 }, netCation: 67, minerals: { K: 237, Ca: 10, Mg: 11, P: 24, Na: 5 }, fibre: 1.2, cfrFactor: null },
} as const satisfies Record<FruitId, FruitIonsRow>;
