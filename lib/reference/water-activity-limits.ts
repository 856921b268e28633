/** Lowest water activity at which organisms grow, and the limits food law and dried food use. Source beside each row. */
import type { Cited } from './source.ts';

export interface WaterActivityLimit extends Cited {
  readonly what: string;
  readonly waterActivity: number;
}

export const WATER_ACTIVITY_LIMITS = [
  { what: 'most bacteria', waterActivity: 0.91, source: 'BEUCHAT', status: 'verified' },
  { what: 'normal yeasts', waterActivity: 0.88, source: 'PMC7150035', status: 'verified' },
  { what: 'Staphylococcus aureus', waterActivity: 0.86, source: 'MEMORY', status: 'memory' },
  { what: 'limit for a food stable on the shelf (US)', waterActivity: 0.85, source: 'CFR114', status: 'verified' },
  { what: 'normal moulds', waterActivity: 0.8, source: 'PMC7150035', status: 'verified' },
  { what: 'xerophilic moulds', waterActivity: 0.65, source: 'PMC7150035', status: 'verified' },
  { what: 'osmophilic yeasts', waterActivity: 0.6, source: 'PMC7150035', status: 'verified' },
  { what: 'limit for dried food', waterActivity: 0.6, source: 'AW06', status: 'verified' },
] as const satisfies readonly WaterActivityLimit[];
