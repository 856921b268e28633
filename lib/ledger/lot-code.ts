/**
 * Lot codes a person can read without the program: year and day of year, what it is, a letter for each batch of the day.
 * Day-of-year coding with a batch number is what processor guidance describes (Texas A&M AgriLife Extension, Maintaining
 * Records and lot codes); the letters leave out I and O, which are mistaken for 1 and 0.
 */
import { type PlainDate, yearAndDay } from '#lib/units/plain-date.ts';

const BATCH_LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** "25256-DAM-A"; after Z come AA, AB … */
export function batchCode(day: PlainDate, what: string, index: number): string {
  const n = BATCH_LETTERS.length;
  const letter = BATCH_LETTERS[index % n] as string;
  return `${yearAndDay(day)}-${what}-${index < n ? '' : BATCH_LETTERS[Math.floor(index / n) - 1]}${letter}`;
}
/** "H-25255-D3-DAM-1". */
export const harvestCode = (day: PlainDate, row: string, what: string, n: number): string =>
  `H-${yearAndDay(day)}-${row}-${what}-${n}`;
/** "R-26023-ORA-1": a bought ingredient, one step back. */
export const receiptCode = (day: PlainDate, what: string, n: number): string => `R-${yearAndDay(day)}-${what}-${n}`;
/** The first number free for a receipt of that day and thing, given the codes there are. */
export function freeReceiptNumber(codes: Iterable<string>, day: PlainDate, what: string): number {
  const taken = new Set(codes);
  let n = 1;
  while (taken.has(receiptCode(day, what, n))) n++;
  return n;
}
/** "S-25270-APC-1": a set-aside. */
export const setAsideCode = (day: PlainDate, what: string, n: number): string => `S-${yearAndDay(day)}-${what}-${n}`;
/** "D-25291-RNG-1": dried, in packs. */
export const packCode = (day: PlainDate, what: string, n: number): string => `D-${yearAndDay(day)}-${what}-${n}`;

/** Three letters for each food, for codes only. */
export const FOOD_CODES: Readonly<Record<string, string>> = {
  'apple-dessert': 'APL',
  'apple-cooking': 'APL',
  'apple-cider-sweet': 'CAP',
  crabapple: 'CRB',
  pear: 'PER',
  'pear-asian': 'APR',
  quince: 'QUI',
  'japonica-quince': 'JQU',
  medlar: 'MED',
  apricot: 'APT',
  'peach-yellow': 'PEA',
  'peach-white': 'PEW',
  nectarine: 'NEC',
  'plum-european': 'PLM',
  'plum-japanese': 'PLJ',
  damson: 'DAM',
  greengage: 'GAG',
  mirabelle: 'MIR',
  'cherry-sweet': 'CHE',
  'cherry-sour': 'SCH',
  'cornelian-cherry': 'CCH',
  blackberry: 'BLK',
  loganberry: 'TAY',
  'raspberry-red': 'RAS',
  'raspberry-black': 'RSB',
  strawberry: 'STR',
  blueberry: 'BLU',
  cranberry: 'CRA',
  gooseberry: 'GSB',
  'currant-red': 'RCU',
  'currant-black': 'BCU',
  'elderberry-european': 'ELD',
  'elderberry-american': 'ELA',
  'mulberry-black': 'MUL',
  'mulberry-white': 'MUW',
  saskatoon: 'SAS',
  aronia: 'ARN',
  'sea-buckthorn': 'SEA',
  rowan: 'RWN',
  rosehip: 'RHP',
  hawthorn: 'HAW',
  sloe: 'SLE',
  'grape-slipskin': 'GRS',
  'grape-vinifera': 'GRV',
  fig: 'FIG',
  'persimmon-japanese': 'PSJ',
  'persimmon-american': 'PSA',
  pomegranate: 'PMG',
  kiwifruit: 'KIW',
  kiwiberry: 'KWB',
  rhubarb: 'RHU',
  'lemon-juice': 'LEM',
  'lemon-whole': 'LEM',
  'orange-sweet': 'ORS',
  'orange-seville': 'ORA',
  grapefruit: 'GRF',
  mandarin: 'MAN',
  kumquat: 'KUM',
  pineapple: 'PNE',
  guava: 'GUA',
  feijoa: 'FEJ',
  loquat: 'LQT',
  jujube: 'JUJ',
  'ground-cherry': 'GCH',
  melon: 'MEL',
  watermelon: 'WML',
  tomato: 'TOM',
};
/** The three letters of a food, or the first three of its id. */
export const foodCode = (foodId: string): string => FOOD_CODES[foodId] ?? foodId.slice(0, 3).toUpperCase();
