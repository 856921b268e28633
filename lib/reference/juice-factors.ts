/**
 * Factors of 21 CFR 150.140(d)(2) (jelly, 28 fruits) and 150.110 (fruit butter, 8): the fruit or juice that counts is net
 * mass x soluble solids per cent x factor / 100, so that a weak extract counts for less. 100 / factor is the Brix of the
 * single-strength juice the rule assumes. The factors were read; the wording of the sum is from memory.
 */
import type { Cited } from './source.ts';

export interface JuiceFactorRow extends Cited {
  readonly kind: 'jelly' | 'butter';
  readonly fruit: string;
  readonly fruitIds: readonly string[];
  readonly factor: number;
}

// biome-ignore format: one printed row to a line
export const JUICE_FACTORS = [
  { kind: 'jelly', fruit: 'apple', fruitIds: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], factor: 7.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'apricot', fruitIds: ['apricot'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'blackberry', fruitIds: ['blackberry'], factor: 10, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'black raspberry', fruitIds: ['raspberry-black'], factor: 9, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'boysenberry', fruitIds: [], factor: 10, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'cherry', fruitIds: ['cherry-sweet', 'cherry-sour'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'crabapple', fruitIds: ['crabapple'], factor: 6.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'cranberry', fruitIds: ['cranberry'], factor: 9.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'damson', fruitIds: ['damson'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'dewberry', fruitIds: [], factor: 10, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'fig', fruitIds: ['fig'], factor: 5.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'gooseberry', fruitIds: ['gooseberry'], factor: 12, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'grape', fruitIds: ['grape-slipskin', 'grape-vinifera'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'grapefruit', fruitIds: ['grapefruit'], factor: 11, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'greengage', fruitIds: ['greengage'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'guava', fruitIds: ['guava'], factor: 13, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'loganberry', fruitIds: ['loganberry'], factor: 9.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'orange', fruitIds: ['orange-sweet'], factor: 8, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'peach', fruitIds: ['peach-yellow'], factor: 8.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'pineapple', fruitIds: ['pineapple'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'plum', fruitIds: ['plum-european', 'plum-japanese'], factor: 7, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'pomegranate', fruitIds: ['pomegranate'], factor: 5.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'prickly pear', fruitIds: [], factor: 11, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'quince', fruitIds: ['quince'], factor: 7.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'red raspberry', fruitIds: ['raspberry-red'], factor: 9.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'red currant', fruitIds: ['currant-red'], factor: 9.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'strawberry', fruitIds: ['strawberry'], factor: 12.5, source: 'CFR150_140', status: 'verified' },
  { kind: 'jelly', fruit: 'youngberry', fruitIds: [], factor: 10, source: 'CFR150_140', status: 'verified' },
  { kind: 'butter', fruit: 'apple', fruitIds: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], factor: 7.5, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'apricot', fruitIds: ['apricot'], factor: 7, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'grape', fruitIds: ['grape-slipskin', 'grape-vinifera'], factor: 7, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'peach', fruitIds: ['peach-yellow'], factor: 8.5, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'pear', fruitIds: ['pear'], factor: 6.5, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'plum', fruitIds: ['plum-european', 'plum-japanese'], factor: 7, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'prune', fruitIds: [], factor: 7, source: 'CFR150_110', status: 'verified' },
  { kind: 'butter', fruit: 'quince', fruitIds: ['quince'], factor: 7.5, source: 'CFR150_110', status: 'verified' },
] as const satisfies readonly JuiceFactorRow[];

/** Grams that count as single-strength fruit or juice; null where the rule has no factor for the fruit. */
export function countedGrams(q: {
  kind: 'jelly' | 'butter';
  fruitId: string;
  grams: number;
  brix: number;
}): number | null {
  const row = JUICE_FACTORS.find((r: JuiceFactorRow) => r.kind === q.kind && r.fruitIds.includes(q.fruitId));
  return row ? (q.grams * q.brix * row.factor) / 100 : null;
}
