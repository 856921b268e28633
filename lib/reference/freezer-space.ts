/**
 * What a freezer holds. North Carolina State University, freezer load (35 lb per cubic foot when blocks fit well); the
 * rest are estimates of this project or from memory.
 */
import type { Cited } from './source.ts';

export interface FreezerFigure extends Cited {
  readonly what: string;
  readonly low: number;
  readonly high: number;
  readonly unit: 'kg/L' | 'share' | 'per cent';
}

// biome-ignore format: one printed row to a line
export const FREEZER_SPACE = [
  { what: 'most a freezer holds, blocks that fit well', low: 0.56, high: 0.56, unit: 'kg/L', source: 'FT3', status: 'verified', note: '35 lb per cubic foot' },
  { what: 'usable part of the gross litres', low: 0.7, high: 0.8, unit: 'share', source: 'ESTIMATE', status: 'estimate' },
  { what: 'whole berries in a bag', low: 0.5, high: 0.6, unit: 'kg/L', source: 'ESTIMATE', status: 'estimate' },
  { what: 'sugared or syrup pack', low: 0.95, high: 1.05, unit: 'kg/L', source: 'ESTIMATE', status: 'estimate' },
  { what: 'puree', low: 1.03, high: 1.03, unit: 'kg/L', source: 'ESTIMATE', status: 'estimate' },
  { what: 'growth of the water in it on freezing', low: 9, high: 9, unit: 'per cent', source: 'MEMORY', status: 'memory' },
] as const satisfies readonly FreezerFigure[];

/** Litres of rigid freezer boxes. */
export const FREEZER_BOXES_L = {
  litres: [0.35, 0.47, 0.71, 0.95, 1.4, 1.9],
  source: 'MEMORY',
  status: 'memory',
} as const;
