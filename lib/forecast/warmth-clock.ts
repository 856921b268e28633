// biome-ignore-all lint/style/noNonNullAssertion: indices run over the lists given
/** Would a sum of degree-days have told the middle of picking better than the calendar? Each season is left out in turn. */
export interface ClockSeason {
  /** Day of the year half of the crop was picked. */
  readonly mid: number;
  /** Degree-days from 1 January to the end of each day of that year, by day of the year from 0. */
  readonly sums: readonly number[];
}

/** Under this many seasons nothing is said. */
export const LEAST_SEASONS = 5;

/** Root mean square errors, days, of the mean date and of the day on which the mean sum was reached; null with too few seasons. */
export function clockErrors(seasons: readonly ClockSeason[]): { calendar: number; warmth: number } | null {
  const usable = seasons.filter((s) => s.sums.length > s.mid);
  if (usable.length < LEAST_SEASONS) return null;
  const errors = usable.map((left) => {
    const others = usable.filter((s) => s !== left);
    const date = mean(others.map((s) => s.mid));
    const sum = mean(others.map((s) => s.sums[Math.round(s.mid)]!));
    const reached = left.sums.findIndex((x) => x >= sum);
    return { calendar: date - left.mid, warmth: (reached < 0 ? left.sums.length : reached) - left.mid };
  });
  return { calendar: rms(errors.map((e) => e.calendar)), warmth: rms(errors.map((e) => e.warmth)) };
}

const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / x.length;
const rms = (x: readonly number[]): number => Math.sqrt(mean(x.map((v) => v * v)));
