/** Warmth of a year up to a day of it, beside the years before: single sine (source: `degree-days.ts`). */
import { type DayTemperatures, degreeDays } from './degree-days.ts';

export interface DatedDay extends DayTemperatures {
  /** YYYY-MM-DD. */
  readonly day: string;
}
export interface YearWarmth {
  readonly year: number;
  /** Degree-days above the base from 1 January to the day asked, single sine. */
  readonly sum: number;
  readonly days: number;
}

/** Share of the days that must be on record for a year to be set beside another. */
const LEAST_SHARE = 0.97;

/** Every year whose days from 1 January to `monthDay` ("09-12") are on record but for 3 in 100; the days missing count for nothing. */
export function yearWarmth(days: readonly DatedDay[], monthDay: string, base: number): YearWarmth[] {
  const years = new Map<number, { sum: number; days: number }>();
  for (const d of days) {
    if (d.day.slice(5) > monthDay) continue;
    const year = Number(d.day.slice(0, 4));
    const known = years.get(year) ?? { sum: 0, days: 0 };
    years.set(year, { sum: known.sum + degreeDays(d, base), days: known.days + 1 });
  }
  const span =
    (Date.UTC(2001, Number(monthDay.slice(0, 2)) - 1, Number(monthDay.slice(3))) - Date.UTC(2001, 0, 1)) / 864e5 + 1;
  return [...years.entries()]
    .filter(([, y]) => y.days >= LEAST_SHARE * span)
    .map(([year, y]) => ({ year, ...y }))
    .sort((a, b) => a.year - b.year);
}
