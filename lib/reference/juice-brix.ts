/**
 * Degrees Brix of single-strength juice: the least a juice may have (21 CFR 101.30(h)(1), 44 values; lemon and lime in per
 * cent acid) and the average (19 CFR 151.91, 26 values). The average serves an estimate, the least is a floor.
 */
import type { Cited } from './source.ts';

export interface JuiceBrixRow extends Cited {
  readonly juice: string;
  readonly brix: number;
  readonly unit: 'brix' | 'acid-pct';
}

// biome-ignore format: one printed row to a line
export const JUICE_BRIX_MINIMUM = [
  { juice: 'apple', brix: 11.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'apricot', brix: 11.7, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'banana', brix: 22, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'blackberry', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'blueberry', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'boysenberry', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'cherry, dark sweet', brix: 20, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'cherry, red sour', brix: 14, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'crabapple', brix: 15.4, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'cranberry', brix: 7.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'currant, black', brix: 11, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'currant, red', brix: 10.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'date', brix: 18.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'dewberry', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'elderberry', brix: 11, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'fig', brix: 18.2, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'gooseberry', brix: 8.3, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'grape', brix: 16, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'grapefruit', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'guava', brix: 7.7, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'kiwi', brix: 15.4, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'lemon', brix: 4.5, unit: 'acid-pct', source: 'CFR101_30', status: 'verified' },
  { juice: 'lime', brix: 4.5, unit: 'acid-pct', source: 'CFR101_30', status: 'verified' },
  { juice: 'loganberry', brix: 10.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'mango', brix: 13, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'nectarine', brix: 11.8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'orange', brix: 11.8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'papaya', brix: 11.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'passion fruit', brix: 14, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'peach', brix: 10.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'pear', brix: 12, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'pineapple', brix: 12.8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'plum', brix: 14.3, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'pomegranate', brix: 16, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'prune', brix: 18.5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'quince', brix: 13.3, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'raspberry, black', brix: 11.1, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'raspberry, red', brix: 9.2, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'rhubarb', brix: 5.7, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'strawberry', brix: 8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'tangerine', brix: 11.8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'tomato', brix: 5, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'watermelon', brix: 7.8, unit: 'brix', source: 'CFR101_30', status: 'verified' },
  { juice: 'youngberry', brix: 10, unit: 'brix', source: 'CFR101_30', status: 'verified' },
] as const satisfies readonly JuiceBrixRow[];

// biome-ignore format: one printed row to a line
export const JUICE_BRIX_AVERAGE = [
  { juice: 'apple', brix: 13.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'apricot', brix: 14.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'blackcurrant', brix: 15, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'blackberry', brix: 10, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'blueberry', brix: 14.1, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'boysenberry', brix: 10, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'cherry', brix: 14.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'cranberry', brix: 10.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'elderberry', brix: 11, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'fig', brix: 18.2, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'gooseberry', brix: 8.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'grape (vinifera)', brix: 21.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'grape (slipskin)', brix: 16, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'grapefruit', brix: 10.2, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'lemon', brix: 8.9, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'lime', brix: 10, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'orange', brix: 11.8, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'peach', brix: 11.8, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'pear', brix: 15.4, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'pineapple', brix: 14.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'plum', brix: 14.3, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'prune', brix: 18.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'raspberry, red', brix: 10.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'red currant', brix: 10.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'strawberry', brix: 8, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
  { juice: 'tangerine', brix: 11.5, unit: 'brix', source: 'CFR19_151_91', status: 'verified' },
] as const satisfies readonly JuiceBrixRow[];
