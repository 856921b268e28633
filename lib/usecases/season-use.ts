/**
 * What leaves the shelf in a week, learnt from the ledger line by line: eaten through the year, sold in stall weeks, given
 * in the weeks of the year in which gifts were given. Weeks without a jar on hand teach nothing: what was wanted then was
 * not seen.
 */
import { type LearnedUse, learnUse } from '#lib/forecast/use-rate.ts';
import { SEASON_WEEKS } from './season-snapshot.ts';

export interface UseWeek {
  /** Recorded at all, and with the line on hand. */
  there: boolean;
  recorded: boolean;
  eaten: number;
  sold: number;
  given: number;
}

/** Weeks of the year to come in which things are sold and given, and those of the past year in which they were. */
export interface UseCalendar {
  pastStall: boolean[];
  pastGift: boolean[];
  comingStall: boolean[];
  comingGift: boolean[];
}

export interface UseRecord {
  count: number;
  weeks: number;
  perWeek: number;
}
export interface LineUse {
  usePerWeek: number;
  profile: number[];
  rateCv: number;
  dispersion: number;
  /** Share of used jars that comes back, all ways out together. */
  returnShare: number;
  learnt: { eaten: UseRecord; sold: UseRecord; given: UseRecord; before: { perWeek: number; source: string } };
}

/** Before any record: two jars or packs a quarter. Estimate, the same figure as the plan's. */
export const FIRST_YEAR_PER_WEEK = 8 / 52;
/** A generic figure is known to within itself; one the household stated, to within half of itself. */
const GENERIC_WEIGHT = 1;
const STATED_WEIGHT = 4;
/** Where the record does not reach back a year, the stall goes on as in these latest weeks. */
const LATEST_WEEKS = 4;
const LONGEST_GAP = 3;

const anyOf = (lines: readonly UseWeek[][], way: 'sold' | 'given'): boolean[] =>
  Array.from({ length: SEASON_WEEKS }, (_, w) => lines.some((weeks) => (weeks[w]?.[way] ?? 0) > 0));

/** A stall that sold nothing for a week or three between two sales was held all the same. */
function gapsFilled(weeks: readonly boolean[]): boolean[] {
  const filled = [...weeks];
  let last = Number.NEGATIVE_INFINITY;
  weeks.forEach((sold, w) => {
    if (!sold) return;
    if (w - last <= LONGEST_GAP + 1) filled.fill(true, last + 1, w);
    last = w;
  });
  return filled;
}

/** Week w of the year to come is 364 days after week w of the past one. */
export function calendarOfUse(lines: readonly UseWeek[][]): UseCalendar {
  const pastStall = gapsFilled(anyOf(lines, 'sold'));
  const pastGift = anyOf(lines, 'given');
  const stallNow = pastStall.slice(-LATEST_WEEKS).some(Boolean);
  const recorded = Array.from({ length: SEASON_WEEKS }, (_, w) => lines.some((weeks) => weeks[w]?.recorded));
  return {
    pastStall,
    pastGift,
    comingStall: pastStall.map((stall, w) => (recorded[w] ? stall : stallNow)),
    comingGift: pastGift,
  };
}

export interface UseQuestion {
  weeks: readonly UseWeek[];
  calendar: UseCalendar;
  stated: { perWeek: number; source: string } | null;
  /** Sold and given per stall or gift week and line, over all lines that are: the starting figure of the others. */
  usual: { sold: number; given: number };
  back: { eaten: number; sold: number; given: number };
}

export function lineUse(q: UseQuestion): LineUse {
  const there = q.weeks.filter((w) => w.there);
  const eaten = learnUse(
    there.map((w) => w.eaten),
    { mean: q.stated?.perWeek || FIRST_YEAR_PER_WEEK, shape: q.stated ? STATED_WEIGHT : GENERIC_WEIGHT },
  );
  const sold = learnIn(q, 'sold', q.calendar.pastStall);
  const given = learnIn(q, 'given', q.calendar.pastGift);
  const weekly = Array.from({ length: SEASON_WEEKS }, (_, w) => ({
    eaten: eaten.usePerWeek,
    sold: q.calendar.comingStall[w] ? sold.use.usePerWeek : 0,
    given: q.calendar.comingGift[w] ? given.use.usePerWeek : 0,
  }));
  const mean = (of: (w: (typeof weekly)[number]) => number) => weekly.reduce((sum, w) => sum + of(w), 0) / SEASON_WEEKS;
  const usePerWeek = mean((w) => w.eaten + w.sold + w.given);
  const parts = [
    { share: mean((w) => w.eaten), use: eaten, back: q.back.eaten },
    { share: mean((w) => w.sold), use: sold.use, back: q.back.sold },
    { share: mean((w) => w.given), use: given.use, back: q.back.given },
  ];
  const weighted = (of: (p: (typeof parts)[number]) => number) =>
    usePerWeek > 0 ? parts.reduce((sum, p) => sum + p.share * of(p), 0) / usePerWeek : 0;
  return {
    usePerWeek,
    profile: weekly.map((w) => (usePerWeek > 0 ? (w.eaten + w.sold + w.given) / usePerWeek : 1)),
    // The three rates are learnt apart: their errors add as variances.
    rateCv: usePerWeek > 0 ? Math.hypot(...parts.map((p) => p.share * p.use.rateCv)) / usePerWeek : 0,
    dispersion: Math.max(
      1,
      weighted((p) => p.use.dispersion),
    ),
    returnShare: weighted((p) => p.back),
    learnt: {
      eaten: { count: there.reduce((n, w) => n + w.eaten, 0), weeks: there.length, perWeek: eaten.usePerWeek },
      sold: sold.record,
      given: given.record,
      before: q.stated ?? { perWeek: FIRST_YEAR_PER_WEEK, source: 'two a quarter; estimate' },
    },
  };
}

/** Rate per stall or gift week. A line that has never gone that way is not expected to. */
function learnIn(
  q: UseQuestion,
  way: 'sold' | 'given',
  open: readonly boolean[],
): { use: LearnedUse; record: UseRecord } {
  const counts = q.weeks.filter((w, i) => w.there && open[i]).map((w) => w[way]);
  const count = counts.reduce((n, x) => n + x, 0);
  if (count === 0 || !(q.usual[way] > 0))
    return { use: { usePerWeek: 0, rateCv: 0, dispersion: 1 }, record: { count: 0, weeks: counts.length, perWeek: 0 } };
  const use = learnUse(counts, { mean: q.usual[way], shape: GENERIC_WEIGHT });
  return { use, record: { count, weeks: counts.length, perWeek: use.usePerWeek } };
}
