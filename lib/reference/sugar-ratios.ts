/** Usual sugar per part of fruit, juice or pulp, and finished Brix, as planning ranges. From memory of handbooks (sure). */
import type { Cited } from './source.ts';

export interface SugarRatioRow extends Cited {
  readonly product: string;
  readonly per: 'fruit' | 'juice' | 'pulp' | null;
  readonly ratio: readonly [low: number, high: number] | null;
  readonly finishBrix: readonly [low: number, high: number];
}

const sure = { source: 'MEMORY', status: 'memory' } as const;

// biome-ignore format: one printed row to a line
export const SUGAR_RATIOS = [
  { product: 'jam', per: 'fruit', ratio: [0.75, 1.2], finishBrix: [65, 68], ...sure },
  { product: 'low-sugar jam', per: 'fruit', ratio: [0.2, 0.5], finishBrix: [30, 50], ...sure },
  { product: 'jelly', per: 'juice', ratio: [0.7, 1], finishBrix: [65, 67], ...sure },
  { product: 'marmalade', per: 'fruit', ratio: [1.5, 2.3], finishBrix: [65, 68], ...sure },
  { product: 'fruit butter', per: 'pulp', ratio: [0.2, 0.5], finishBrix: [43, 55], ...sure },
  { product: 'fruit paste', per: 'pulp', ratio: [0.8, 1], finishBrix: [72, 78], ...sure },
  { product: 'freezer jam', per: 'fruit', ratio: [1.4, 1.9], finishBrix: [55, 65], ...sure },
  { product: 'compote or sauce', per: 'fruit', ratio: [0, 0.25], finishBrix: [12, 25], ...sure },
  { product: 'conserve', per: 'fruit', ratio: [0.6, 0.9], finishBrix: [62, 66], ...sure },
  { product: 'candied whole fruit in heavy syrup', per: null, ratio: null, finishBrix: [65, 75], ...sure },
] as const satisfies readonly SugarRatioRow[];
