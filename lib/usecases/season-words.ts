/** Chances and weeks in the words of the season page: the class is always named, and no word stands for a chance by itself. */
import { partOfMonth, times, twoDigits } from '#lib/forecast/words.ts';
import { addDays, monthName, type PlainDate } from '#lib/units/plain-date.ts';

/** "in about 3 seasons in 10"; "in all the seasons tried". */
export function seasons(p: number): string {
  const text = times(p)
    .replace(' (as often as not)', '')
    .replace(/\btimes\b/g, 'seasons')
    .replace(/\btime\b/g, 'season');
  if (text.startsWith('in ') || text.startsWith('not ')) return text;
  return text.startsWith('about') ? `in ${text}` : text;
}

/** A part of the whole in tenths: "about 4 parts in 10". */
export function parts(share: number): string {
  const tenths = Math.round(Math.min(1, Math.max(0, share)) * 10);
  if (tenths === 0) return 'next to nothing';
  return tenths === 10 ? 'nearly all' : `about ${tenths} ${tenths === 1 ? 'part' : 'parts'} in 10`;
}

/** The part of the month a week lies in, by its middle: "mid-March". */
export const aboutWeek = (today: PlainDate, week: number): string => aboutDay(addDays(today, 7 * week + 3));
export const aboutDay = (day: PlainDate): string => partOfMonth(Number(day.slice(8, 10)), monthName(day));

/** "between 10 and 26 kg", rounded to what such a range deserves. */
export function between(low: number, high: number, unit: string): string {
  const [a, b] = [twoDigits(low), twoDigits(high)];
  return a === b ? `about ${a} ${unit}` : `between ${a} and ${b} ${unit}`;
}
