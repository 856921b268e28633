/** One week of a fan: weeks begin on Monday. Quantiles of the simulated years. */
import type { PlainDate } from '#lib/units/plain-date.ts';
import { monthName } from '#lib/units/plain-date.ts';

export type FanWeek = {
  readonly week: PlainDate;
  readonly p10: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p90: number;
};
export type FanRow = {
  readonly week: PlainDate;
  readonly eight: readonly [number, number];
  readonly five: readonly [number, number];
  readonly middle: number;
  readonly [sample: `year${number}`]: number;
};

/** Rows for the drawing: bands as pairs, sample years as `year0`, `year1` … */
export const fanRows = (weeks: readonly FanWeek[], samples: readonly (readonly number[])[]): FanRow[] =>
  weeks.map((w, i) => ({
    week: w.week,
    eight: [w.p10, w.p90],
    five: [w.p25, w.p75],
    middle: w.p50,
    ...Object.fromEntries(samples.map((s, n) => [`year${n}`, s[i]])),
  }));

/** The first week of each month, for the axis: no more than `most` of them. */
export function monthTicks(weeks: readonly { readonly week: PlainDate }[], most = 14): PlainDate[] {
  const firsts = weeks
    .filter((w, i) => i === 0 || w.week.slice(0, 7) !== weeks[i - 1]?.week.slice(0, 7))
    .map((w) => w.week);
  const step = Math.ceil(firsts.length / most);
  return firsts.filter((_, i) => i % step === 0);
}

export const monthShort = (week: PlainDate): string => monthName(week).slice(0, 3);

export type FanChartProps = {
  title: string;
  /** "It fills up before next harvest in about 3 years out of 10." */
  sentence: string;
  /** What the scale counts: "jars", "cm of shelf". */
  unit: string;
  weeks: readonly FanWeek[];
  /** Three to five possible years, a figure a week. */
  samples?: readonly (readonly number[])[];
  capacity?: { value: number; label: string };
  /** Of a fruit, if it is one fruit's fan; blue-grey otherwise. */
  colour?: string;
};
