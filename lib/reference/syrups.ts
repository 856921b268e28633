/**
 * Syrups for packing fruit: cups of water and of sugar for a canner load of 9 pints (or 4 quarts) and of 7 quarts.
 * AIB 539 as reprinted in MSU sheet 01600377 and the extension sheets on apples and grapes. The per cent is nominal
 * sugar by weight. Sugar here is for quality only and may be left out (from memory of AIB 539, sure).
 */
import type { Cited } from './source.ts';

export interface SyrupRow extends Cited {
  readonly id: 'very-light' | 'light' | 'medium' | 'heavy' | 'very-heavy';
  readonly sugarPct: number;
  readonly for9Pints: { readonly waterCups: number; readonly sugarCups: number };
  readonly for7Quarts: { readonly waterCups: number; readonly sugarCups: number };
}

// biome-ignore format: one printed row to a line
export const SYRUPS = [
  { id: 'very-light', sugarPct: 10, for9Pints: { waterCups: 6.5, sugarCups: 0.75 }, for7Quarts: { waterCups: 10.5, sugarCups: 1.25 }, source: 'MSU_CHERRY', status: 'verified' },
  { id: 'light', sugarPct: 20, for9Pints: { waterCups: 5.75, sugarCups: 1.5 }, for7Quarts: { waterCups: 9, sugarCups: 2.25 }, source: 'MSU_CHERRY', status: 'verified' },
  { id: 'medium', sugarPct: 30, for9Pints: { waterCups: 5.25, sugarCups: 2.25 }, for7Quarts: { waterCups: 8.25, sugarCups: 3.75 }, source: 'MSU_CHERRY', status: 'verified' },
  { id: 'heavy', sugarPct: 40, for9Pints: { waterCups: 5, sugarCups: 3.25 }, for7Quarts: { waterCups: 7.75, sugarCups: 5.25 }, source: 'MSU_CHERRY', status: 'verified' },
  { id: 'very-heavy', sugarPct: 50, for9Pints: { waterCups: 4.25, sugarCups: 4.25 }, for7Quarts: { waterCups: 6.5, sugarCups: 6.75 }, source: 'UNL_GRAPE', status: 'memory' },
] as const satisfies readonly SyrupRow[];
