/** Fruit groups of 21 CFR 150.160(b): 34 names as printed. Two of Group II are from memory. A fruit's own group is its `labelGroup`. */
import type { Cited } from './source.ts';

export interface JamGroupRow extends Cited {
  readonly group: 'I' | 'II';
  readonly fruit: string;
}

// biome-ignore format: one printed row to a line
export const JAM_GROUPS = [
  { group: 'I', fruit: 'blackberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'black raspberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'blueberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'boysenberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'cherry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'crabapple', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'dewberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'elderberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'grape', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'grapefruit', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'huckleberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'loganberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'orange', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'pineapple', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'red raspberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'rhubarb', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'strawberry', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'tangerine', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'tomato', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'yellow tomato', source: 'CFR150_160', status: 'verified' },
  { group: 'I', fruit: 'youngberry', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'apricot', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'cranberry', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'damson', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'fig', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'gooseberry', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'greengage', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'guava', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'nectarine', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'peach', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'pear', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'plum', source: 'CFR150_160', status: 'verified' },
  { group: 'II', fruit: 'quince', source: 'CFR150_160', status: 'memory' },
  { group: 'II', fruit: 'currant', source: 'CFR150_160', status: 'memory' },
] as const satisfies readonly JamGroupRow[];
