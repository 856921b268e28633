/** One line of January's lists: what is left at its next harvest, and what it would take to last to the one after. */
import type { YearlyUse } from '#lib/forecast/run-down.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';

/** None on hand; gone before its next harvest in half of the seasons; half a year's use left even in a lean one; on course. */
export type Standing = 'none' | 'short' | 'course' | 'much';
export interface ListedLine {
  id: string;
  line: string;
  slug: string;
  item: string;
  itemLabel: string;
  foodId: string;
  unit: string;
  onHand: number;
  standing: Standing;
  /** Eaten, given and sold in the last year. */
  usedYear: number;
  use: YearlyUse;
  eatenYear: number;
  /** The day it is asked for: the next harvest of its fruit, or the day asked. */
  on: PlainDate;
  weeks: number;
  stallWeeks: number;
  used: number;
  left: number;
  band: { p10: number; p50: number; p90: number };
  lastYear: { batches: number; jars: number };
  jarsPerBatch: number;
  /** Chance, in words, of lasting from the next harvest to the one after, by batches made: 0, 1, 2 … */
  odds: { made: string; lasts: string }[];
  make: { batches: number; jars: number; why: 'enough' | 'pace' | 'none' | 'unknown' };
  makeSays: string;
  /** What could go and leave half a year's use at the next harvest; 0 unless it is too much. */
  couldGo: number;
}
