/**
 * Warmth of a day above a threshold, degree-days, from its lowest and highest temperature.
 *
 * Single sine: the day is taken as one sine wave between them (Baskerville and Emin 1969, Ecology 50:514-517, from memory as
 * to the place; the formula is checked by numerical integration in its test). Any unit of temperature, the same throughout.
 * For picking dates of apples and pears sums of degree-days did no better than the plain calendar (long-term observations at
 * Klein-Altendorf 1958-2019, doi:10.60507/FK2/MZIELI: leave-one-out error 10 to 18 days against 6 to 9 for five apples), so
 * the forecast does not run on them.
 */
export interface DayTemperatures {
  readonly low: number;
  readonly high: number;
}

/** Degree-days above `base`; with `top`, warmth above that counts no further (horizontal cut-off). Throws RangeError for a high below the low. */
export function degreeDays({ low, high }: DayTemperatures, base: number, top = Number.POSITIVE_INFINITY): number {
  if (!(high >= low)) throw new RangeError(`A day with a high of ${high} and a low of ${low}`);
  return above(low, high, base) - (Number.isFinite(top) ? above(low, high, top) : 0);
}

function above(low: number, high: number, base: number): number {
  const mean = (low + high) / 2;
  if (low >= base) return mean - base;
  if (high <= base) return 0;
  const swing = (high - low) / 2;
  const from = Math.asin((base - mean) / swing);
  return ((mean - base) * (Math.PI / 2 - from) + swing * Math.cos(from)) / Math.PI;
}

/** The plain average method: mean of low and high less the base, never below 0. */
export const averageDegreeDays = ({ low, high }: DayTemperatures, base: number): number =>
  Math.max(0, (low + high) / 2 - base);

/** Running sum over days. */
export function degreeDaySum(days: readonly DayTemperatures[], base: number): number[] {
  let sum = 0;
  return days.map((d) => {
    sum += degreeDays(d, base);
    return sum;
  });
}
