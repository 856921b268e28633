/** How good were we: the place's own past beside what would have been said of it. */
import { twoDigits } from '#lib/forecast/words.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { nothingToForecast, seasonForecast } from './forecast-season.ts';
import type { Checked } from './season-checks.ts';

export interface HeldRow {
  id: string;
  what: string;
  n: number;
  five: number;
  eight: number;
  nineteen: number;
}
export interface ChecksView {
  state: 'empty' | 'waiting' | 'ready';
  whole: boolean;
  answer: string;
  sub: string;
  held: HeldRow[];
  /** What was said and what came, the latest first. */
  said: { id: string; asOf: string; what: string; said: string; came: string; held: boolean }[];
  /** Where it was off the same way again and again. */
  leaning: string[];
}

const SHOWN = 100;
/** Fewer than this say nothing about how often bands hold. */
const ENOUGH = 10;

export async function readChecks(ctx: Context): Promise<ChecksView> {
  const { input, summary, whole } = await seasonForecast(ctx);
  const nothing = { held: [], said: [], leaning: [] };
  const sub = `As of ${longDate(input.today)}: every eight weeks back, what this program would have said from the records of that day alone.`;
  if (nothingToForecast(input))
    return { ...nothing, state: 'empty', whole: true, answer: 'Nothing to look back on yet', sub };
  if (!summary || !whole) return { ...nothing, state: 'waiting', whole: false, answer: 'Looking back', sub };
  const { checks } = summary;
  if (checks.length < ENOUGH)
    return {
      ...nothing,
      state: 'empty',
      whole,
      answer: `${checks.length} past statements to check: too few to say`,
      sub: 'A finished harvest, or a line on hand for thirteen weeks, is the first thing that can be checked.',
    };
  const eight = checks.filter((c) => c.held.eight).length;
  return {
    state: 'ready',
    whole,
    answer: `Of ${checks.length} ranges meant for 8 in 10, ${eight} held: ${twoDigits((10 * eight) / checks.length)} in 10`,
    sub,
    held: (['harvest', 'use'] as const).map((kind) =>
      heldRow(
        kind,
        checks.filter((c) => c.kind === kind),
      ),
    ),
    said: [...checks]
      .sort((a, b) => (a.asOf > b.asOf ? -1 : a.asOf < b.asOf ? 1 : a.id < b.id ? -1 : 1))
      .slice(0, SHOWN)
      .map((c) => ({
        id: `${c.kind} ${c.id} ${c.asOf}`,
        asOf: longDate(c.asOf),
        what: c.kind === 'harvest' ? `${c.label}, still to be picked` : `${c.label}, used in 13 weeks`,
        said: `${amount(c, c.p10)} to ${amount(c, c.p90)}, half above ${amount(c, c.p50)}`,
        came: amount(c, c.came),
        held: c.held.eight,
      })),
    leaning: leaning(checks),
  };
}

const amount = (c: Checked, x: number): string => (c.kind === 'harvest' ? `${twoDigits(x)} kg` : String(Math.round(x)));

const heldRow = (kind: Checked['kind'], of: readonly Checked[]): HeldRow => ({
  id: kind,
  what: kind === 'harvest' ? 'Fruit still to be picked' : 'Used in the next 13 weeks',
  n: of.length,
  five: of.filter((c) => c.held.five).length,
  eight: of.filter((c) => c.held.eight).length,
  nineteen: of.filter((c) => c.held.nineteen).length,
});

/** Three looks or more of one thing, and all on one side of the range. */
function leaning(checks: readonly Checked[]): string[] {
  const by = new Map<string, Checked[]>();
  for (const c of checks) by.set(`${c.kind} ${c.id}`, [...(by.get(`${c.kind} ${c.id}`) ?? []), c]);
  return [...by.values()].flatMap((of) => {
    const first = of[0];
    if (!first || of.length < 3) return [];
    const what = first.kind === 'harvest' ? 'came' : 'was used';
    if (of.every((c) => c.came > c.p90))
      return [`${first.label}: more ${what} than the range said, ${of.length} times of ${of.length}.`];
    if (of.every((c) => c.came < c.p10))
      return [`${first.label}: less ${what} than the range said, ${of.length} times of ${of.length}.`];
    return [];
  });
}
