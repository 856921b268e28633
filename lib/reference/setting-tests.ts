/**
 * How to tell that a spread is done, and the printed finish temperatures. The temperature is a difference above water
 * boiling in the same kitchen on the same day: 8 °F (4.44 K) for jelly and jam; the older Home and Garden Bulletin 56 prints
 * 9 °F (5 K) for jams, conserves and marmalades. In this program 8 °F is the guide for every full-sugar spread.
 */
import type { Cited } from './source.ts';

export interface SettingRise extends Cited {
  readonly what: string;
  /** Difference above boiling water, °F. */
  readonly riseF: number;
}

export const SETTING_RISES = [
  { what: 'jelly and jam', riseF: 8, source: 'MSU_JAM', status: 'verified' },
  { what: 'jam, conserve, marmalade, preserve (bulletin 56)', riseF: 9, source: 'HGB_BLACKBERRY', status: 'verified' },
] as const satisfies readonly SettingRise[];

export interface SettingTest extends Cited {
  readonly id: 'sheet' | 'cold-plate' | 'mound';
  readonly name: string;
  readonly how: string;
}

export const SETTING_TESTS = [
  {
    id: 'sheet',
    name: 'Sheet test',
    how: 'Dip a cool metal spoon and tip it: done when two drops join and slide off as a sheet.',
    source: 'MSU_JAM',
    status: 'verified',
  },
  {
    id: 'cold-plate',
    name: 'Cold plate',
    how: 'Take the pan off the heat. Put a little on a cold plate in the freezer for a few minutes: done when it wrinkles.',
    source: 'MSU_CONSERVE',
    status: 'verified',
  },
  {
    id: 'mound',
    name: 'Mound (fruit butter)',
    how: 'Hold a spoonful away from the steam for 2 minutes: done when it stays mounded and no liquid rims it on a plate.',
    source: 'AIB_APPLEBUTTER',
    status: 'verified',
  },
] as const satisfies readonly SettingTest[];

export interface JellyFinishRow extends Cited {
  readonly altitudeFt: number;
  readonly finishF: number;
}

/** Printed jelly finish temperatures, °F, rounded by the publication; for comparison, a reading beats them. */
export const JELLY_FINISH = [
  { altitudeFt: 0, finishF: 220, source: 'MSU_JAM', status: 'verified' },
  { altitudeFt: 1000, finishF: 218, source: 'MSU_JAM', status: 'verified' },
  { altitudeFt: 2000, finishF: 216, source: 'MSU_JAM', status: 'verified' },
  { altitudeFt: 4000, finishF: 212, source: 'MSU_JAM', status: 'verified' },
  { altitudeFt: 6000, finishF: 209, source: 'MSU_JAM', status: 'verified' },
  { altitudeFt: 8000, finishF: 205, source: 'MSU_JAM', status: 'verified' },
] as const satisfies readonly JellyFinishRow[];
