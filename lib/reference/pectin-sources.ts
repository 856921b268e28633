/**
 * Pectin in what is left of fruit, per cent of dry matter (low, high), and its grade: grams of sugar a gram carries in a
 * 65 % jelly at its best acidity. Source beside each row. Home-dried powder is some 30 to 50 times weaker than a bought
 * pectin of grade 150; every lot is learnt from its own batches.
 */
import type { Cited } from './source.ts';

export interface PectinSourceRow extends Cited {
  readonly id: string;
  readonly name: string;
  readonly pctOfDryMatter: readonly [low: number, high: number];
  readonly grade: readonly [low: number, high: number] | null;
}

// biome-ignore format: one printed row to a line
export const PECTIN_SOURCES = [
  { id: 'apple-pomace-dried', name: 'dried apple pomace', pctOfDryMatter: [13.3, 13.3], grade: [110, 110], source: 'SHARMA', status: 'verified', note: 'water takes out 3.4, acid 10.5 of it' },
  { id: 'apple-peel-dried', name: 'dried apple peel', pctOfDryMatter: [8, 15], grade: [90, 120], source: 'MEMORY', status: 'memory' },
  { id: 'apple-core-dried', name: 'dried apple cores', pctOfDryMatter: [6, 12], grade: [80, 110], source: 'ESTIMATE', status: 'estimate', note: 'stalks and pips dilute' },
  { id: 'lemon-peel-dried', name: 'dried lemon peel', pctOfDryMatter: [22, 32], grade: [150, 200], source: 'MEMORY', status: 'memory' },
  { id: 'orange-peel-dried', name: 'dried orange peel', pctOfDryMatter: [16, 25], grade: [120, 160], source: 'MEMORY', status: 'memory' },
  { id: 'grapefruit-peel-dried', name: 'dried grapefruit peel', pctOfDryMatter: [25, 25], grade: null, source: 'UNOFFICIAL_PAGE', status: 'secondary', note: 'MOJ Food Processing and Technology 02-00029' },
  { id: 'rhubarb-pomace-dried', name: 'dried rhubarb pomace', pctOfDryMatter: [21, 24], grade: null, source: 'RHUB', status: 'verified' },
  { id: 'quince-core-peel-dried', name: 'dried quince cores and peel', pctOfDryMatter: [8, 15], grade: null, source: 'ESTIMATE', status: 'estimate' },
] as const satisfies readonly PectinSourceRow[];

export interface PowderStrengthRow extends Cited {
  readonly id: string;
  readonly name: string;
  /** Grams of sugar one gram of powder carries in a jam. */
  readonly sugarPerG: { readonly low: number; readonly typ: number; readonly high: number };
}

/** total pectin x (1 - moisture) x extraction x grade; for apple 0.133 x 0.92 x 0.45 x 110 = 6.1. */
export const POWDER_STRENGTH = [
  {
    id: 'apple-powder',
    name: 'apple peel and core powder',
    sugarPerG: { low: 3, typ: 5.5, high: 9 },
    source: 'COMPUTED',
    status: 'estimate',
    also: ['SHARMA'],
  },
  {
    id: 'lemon-peel-powder',
    name: 'lemon peel powder',
    sugarPerG: { low: 10, typ: 18, high: 28 },
    source: 'COMPUTED',
    status: 'estimate',
  },
] as const satisfies readonly PowderStrengthRow[];

export interface RipenessRow extends Cited {
  readonly ripeness: 'under-ripe' | 'just ripe' | 'ripe and soft' | 'overripe';
  /** Factor on the pectin of the table. */
  readonly total: number;
  /** Factor on what still sets. */
  readonly effective: number;
}

export const RIPENESS = [
  { ripeness: 'under-ripe', total: 1.2, effective: 1.1, source: 'ESTIMATE', status: 'estimate' },
  { ripeness: 'just ripe', total: 1, effective: 1, source: 'ESTIMATE', status: 'estimate' },
  { ripeness: 'ripe and soft', total: 0.85, effective: 0.7, source: 'ESTIMATE', status: 'estimate' },
  { ripeness: 'overripe', total: 0.7, effective: 0.45, source: 'ESTIMATE', status: 'estimate' },
] as const satisfies readonly RipenessRow[];

export interface ClotRow extends Cited {
  readonly result: string;
  readonly pectin: 'high' | 'medium' | 'low';
  /** Band of pectin in the juice, per cent: an estimate. */
  readonly pectinPct: readonly [low: number, high: number];
  readonly sugarCupsPerCup: number;
}

/** Alcohol test: 1 tsp juice in 1 tbsp rubbing alcohol, never tasted. MSU sheet 01600545; the bands are estimates. */
export const CLOT_TEST = [
  {
    result: 'one solid lump that can be lifted',
    pectin: 'high',
    pectinPct: [0.8, 1.5],
    sugarCupsPerCup: 1,
    source: 'MSU_CLOT',
    status: 'verified',
    note: 'the per cent bands are estimates',
  },
  {
    result: 'several lumps',
    pectin: 'medium',
    pectinPct: [0.4, 0.8],
    sugarCupsPerCup: 0.75,
    source: 'MSU_CLOT',
    status: 'verified',
    note: 'the per cent bands are estimates',
  },
  {
    result: 'flakes or nothing',
    pectin: 'low',
    pectinPct: [0, 0.4],
    sugarCupsPerCup: 0.5,
    source: 'MSU_CLOT',
    status: 'verified',
    note: 'the per cent bands are estimates',
  },
] as const satisfies readonly ClotRow[];
