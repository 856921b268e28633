/**
 * Remaking soft jam or jelly with powdered pectin, in household measures as printed: for so many cups at the most, by its
 * hard boil. Powdered and liquid pectin do not stand in for each other. Older sheets allow 8 cups; the later 4 is taken.
 */
import type { Cited } from './source.ts';

export interface RemakeRow extends Cited {
  readonly cups: number;
  readonly sugarCups: number;
  readonly waterCups: number;
  readonly lemonTbsp: number;
  readonly pectinTsp: number;
  readonly hardBoilS: number;
}

export const REMAKE = [
  {
    cups: 4,
    sugarCups: 0.25,
    waterCups: 0.5,
    lemonTbsp: 2,
    pectinTsp: 4,
    hardBoilS: 30,
    source: 'OKSTATE_REMAKE',
    status: 'verified',
    also: ['NDSU_REMAKE'],
    note: 'printed for a quart; one sheet allows 4 cups at a time, the other 4 to 6',
  },
] as const satisfies readonly RemakeRow[];

/** Days a jam that stayed thin a second time keeps as a syrup in the fridge (NDSU FN2103). */
export const SYRUP_FRIDGE_DAYS = 14;

/** Hours before which a jar is not touched, hours at which a set is judged, and days of the slow kinds (plums and some others). */
export const SET_CLOCK = { leaveH: 12, judgeH: 48, slowDays: 14 } as const;
const SLOW_SETTERS: readonly string[] = ['plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'];

/** Hours after the canner at which the set of such a fruit is judged (NCHFP, problems with jellied products). */
export const judgedAfterH = (foodIds: readonly string[]): number =>
  foodIds.some((f) => SLOW_SETTERS.includes(f)) ? SET_CLOCK.slowDays * 24 : SET_CLOCK.judgeH;
