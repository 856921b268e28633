/**
 * Chances as counted seasons. Frequencies with the class named read better than bare percentages (Gigerenzer et al. 2005,
 * Risk Analysis 25:623-629); words alone are misread, words with the number beside them less so (Wintle et al. 2019, PLoS ONE
 * 14:e0213522). No word here stands for a chance without its number.
 */

/** "about 3 times in 10", for a share of simulated seasons from 0 to 1. Exactly 0 and 1 mean none and all of those tried. */
export function times(p: number): string {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`${p} is not a share of seasons`);
  if (p === 0) return 'not in any of the seasons tried';
  if (p === 1) return 'in all the seasons tried';
  if (p < 0.01) return 'hardly ever (fewer than 1 time in 100)';
  if (p < 0.03) return 'about 1 time in 50';
  if (p < 0.07) return 'about 1 time in 20';
  if (p > 0.99) return 'almost always (more than 99 times in 100)';
  if (p > 0.97) return 'about 49 times in 50';
  if (p > 0.93) return 'about 19 times in 20';
  const tenths = Math.round(p * 10);
  if (tenths === 1) return 'about 1 time in 10';
  return tenths === 5 ? 'about 5 times in 10 (as often as not)' : `about ${tenths} times in 10`;
}

/** "between 10 and 26 kg": two digits are all that such a range deserves. */
export function range(low: number, high: number, unit: string): string {
  const [a, b] = [twoDigits(low), twoDigits(high)];
  return a === b ? `about ${a} ${unit}` : `between ${a} and ${b} ${unit}`;
}

/** Two significant digits, whole numbers from 10 up: 17.6 -> 18, 1.26 -> 1.3, 342 -> 340. */
export function twoDigits(x: number): string {
  if (x === 0) return '0';
  const rounded = Number(x.toPrecision(2));
  return Math.abs(rounded) >= 10 ? rounded.toFixed(0) : String(rounded);
}

/** How long a product lasts: seasons it lasts through, and the week it is gone half the time, already as text ("mid-March"). */
export function lasts(found: { name: string; lastsShare: number; goneHalfTheTime: string | null }): string {
  const through = `${found.name} lasts to next harvest ${times(found.lastsShare)}.`;
  return found.goneHalfTheTime === null ? through : `${through} Half the time it is gone by ${found.goneHalfTheTime}.`;
}

/** "60 lids will be enough about 9 times in 10". `what` in the plural. */
export function enough(n: number, what: string, p: number): string {
  return `${n} ${what} will be enough ${times(p)}`;
}

/** A week by its part of the month: "early March", "mid-March", "late March". Day of month 1 to 31. */
export function partOfMonth(dayOfMonth: number, month: string): string {
  if (dayOfMonth <= 10) return `early ${month}`;
  return dayOfMonth <= 20 ? `mid-${month}` : `late ${month}`;
}
