/**
 * What a household uses, and what happens to jars: starting values for the forecast until the household's own records
 * speak. UK purchases, grams per person and week (Defra family food series); US home-canning surveys of 2000-01 and 2005.
 */
import type { Cited } from './source.ts';

export interface WeeklyUseRow extends Cited {
  readonly food: string;
  readonly year: number;
  /** Grams (millilitres for juice) per person and week. */
  readonly perPersonWeek: number;
}

const nfs = { source: 'NFS', status: 'verified' } as const;

// biome-ignore format: one printed row to a line
export const WEEKLY_USE = [
  { food: 'jam and curd', year: 1974, perPersonWeek: 36, ...nfs },
  { food: 'jam and curd', year: 1990, perPersonWeek: 25, ...nfs },
  { food: 'jam and curd', year: 2000, perPersonWeek: 17, ...nfs },
  { food: 'jam and curd', year: 2014, perPersonWeek: 14, ...nfs },
  { food: 'marmalade', year: 1974, perPersonWeek: 27, ...nfs },
  { food: 'marmalade', year: 1990, perPersonWeek: 17, ...nfs },
  { food: 'marmalade', year: 2000, perPersonWeek: 13, ...nfs },
  { food: 'marmalade', year: 2014, perPersonWeek: 6, ...nfs },
  { food: 'honey', year: 2014, perPersonWeek: 7, ...nfs },
  { food: 'dried fruit', year: 2014, perPersonWeek: 17, ...nfs },
  { food: 'tinned or bottled fruit', year: 1974, perPersonWeek: 139, ...nfs },
  { food: 'tinned or bottled fruit', year: 2014, perPersonWeek: 26, ...nfs },
  { food: 'frozen fruit', year: 2014, perPersonWeek: 3, ...nfs },
  { food: 'pure juice', year: 2014, perPersonWeek: 247, ...nfs },
] as const satisfies readonly WeeklyUseRow[];

/** A preserving household eats this many times the national purchases. */
export const PRESERVING_MULTIPLE = { low: 2, high: 4, source: 'ESTIMATE', status: 'estimate' } as const;
/** Share of jars given away or swapped. */
export const GIFT_SHARE = { low: 0.1, typ: 0.2, high: 0.35, source: 'ESTIMATE', status: 'estimate' } as const;
/** Weekly use against the mean of the year, by season. */
export const USE_SEASON = { winter: 1.3, summer: 0.7, source: 'ESTIMATE', status: 'estimate' } as const;

export interface SealFailureRow extends Cited {
  readonly survey: string;
  /** Share of canning households that had jars which did not seal (not a share of jars). */
  readonly householdsWithFailure: number;
}

export const SEAL_FAILURE = [
  { survey: 'US 2000-01, 501 households', householdsWithFailure: 0.38, source: 'NCHS', status: 'verified' },
  { survey: 'US 2005, 801 households', householdsWithFailure: 0.32, source: 'NC2005', status: 'verified' },
] as const satisfies readonly SealFailureRow[];
