/**
 * January's question: which lines will run short, which are on course, which are more than is used; how many to make of each,
 * what to open first, and what the freezer can become.
 */
import { batchesFor, type LearntUse, leftBand, oddsByBatches, usedBy, type YearlyUse } from '#lib/forecast/run-down.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, daysBetween, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type FreezerBatch, fromFreezer } from './season-freezer.ts';
import { type SeasonLine, seasonLines } from './season-lines.ts';
import type { ListedLine, Standing } from './season-listed.ts';
import { type ForecastInput, seasonInput } from './season-scenario.ts';
import { type SeasonSnapshot, seasonSnapshot } from './season-snapshot.ts';
import { calendarOfUse } from './season-use.ts';
import { seasons } from './season-words.ts';

/** Fewer left than this are never called too much. */
const FEW = 6;

/** Lasts to the harvest after with this chance: what "enough" is taken to mean here. */
export const ENOUGH = 0.8;
const YEAR_WEEKS = 52;

export interface OpenFirst {
  code: string;
  line: string;
  slug: string;
  jars: number;
  madeOn: PlainDate;
  bestBefore: PlainDate;
  past: boolean;
  /** Still there on its best-before day at this pace. */
  leftThen: number;
}
export interface SeasonLists {
  today: PlainDate;
  /** The day asked for, where one was. */
  on: PlainDate | null;
  lines: ListedLine[];
  openFirst: OpenFirst[];
  freezer: FreezerBatch[];
}

/** Reads only. `on` asks for every line on one day instead of its own next harvest; a day that is not ahead is left aside. */
export async function readSeasonLists(ctx: Context, on: PlainDate | null): Promise<SeasonLists> {
  const snapshot = await seasonSnapshot(ctx);
  return seasonLists(snapshot, seasonInput(snapshot), on && on > ctx.today ? on : null);
}

/** Nothing here is drawn: closed forms of use, from what stands there now and before anything new is made. */
export function seasonLists(snapshot: SeasonSnapshot, input: ForecastInput, on: PlainDate | null): SeasonLists {
  const of = seasonLines(snapshot);
  const stall = calendarOfUse(of.map((l) => l.weeks)).comingStall;
  const lines = of.map((line, i) => listedLine(input, { line, i, on, stall }));
  return {
    today: input.today,
    on,
    lines,
    openFirst: of.flatMap((line, i) => openFirstOf(input.today, line, lines[i] as ListedLine)).sort(byAge),
    freezer: fromFreezer(input, snapshot.place, of, lines),
  };
}

interface Asked {
  line: SeasonLine;
  i: number;
  on: PlainDate | null;
  stall: readonly boolean[];
}

function listedLine(input: ForecastInput, { line, i, on, stall }: Asked): ListedLine {
  const meta = input.lines[i] as ForecastInput['lines'][number];
  const product = input.scenario.products[i] as ForecastInput['scenario']['products'][number];
  const day = on ?? nextHarvest(input, product.crop) ?? addDays(input.today, 7 * YEAR_WEEKS);
  const weeks = daysBetween(input.today, day) / 7;
  const { eaten, sold, given } = meta.learnt;
  const use: YearlyUse = {
    perYear: eaten.count + given.count,
    sold: sold.count,
    stallWeeks: sold.count > 0 ? sold.weeks : 0,
  };
  const stallWeeks = stall.slice(0, Math.round(weeks)).filter(Boolean).length;
  const used = usedBy(use, weeks, stallWeeks);
  const left = Math.max(0, Math.round(line.onHand - used));
  const profile = product.profile ?? [];
  const weight = (from: number, to: number) => profileWeeks(profile, from, to);
  const learnt: LearntUse = { ...product, usePerWeek: meta.wantedPerWeek };
  const lastYear = { batches: line.batches.length, jars: line.batches.reduce((n, b) => n + b.jars, 0) };
  const odds = meta.made
    ? oddsByBatches({
        onHand: line.onHand,
        use: learnt,
        weeksBefore: weight(0, weeks),
        weeksAfter: YEAR_WEEKS,
        jarsPerBatch: meta.jarsPerBatch,
        mostBatches: Math.max(4, Math.ceil((1.5 * lastYear.jars) / meta.jarsPerBatch)),
      })
    : [];
  const usedYear = eaten.count + sold.count + given.count;
  const band = leftBand(line.onHand, learnt, weight(0, weeks));
  const standing = standingOf(line.onHand, band, 26 * meta.wantedPerWeek);
  const make = toMake({ standing, usedYear, left, jarsPerBatch: meta.jarsPerBatch, odds });
  return {
    id: line.id,
    line: line.line,
    slug: line.slug,
    item: line.item,
    itemLabel: meta.itemLabel,
    foodId: line.foodId,
    unit: line.kind === 'jars' || line.kind === 'cold-jars' ? 'jar' : 'pack',
    onHand: line.onHand,
    standing,
    usedYear,
    eatenYear: eaten.count,
    use,
    on: day,
    weeks,
    stallWeeks,
    used,
    left,
    band,
    lastYear,
    jarsPerBatch: meta.jarsPerBatch,
    odds: odds.slice(0, Math.max(5, make.batches + 2)).map((p, k) => ({
      made: k === 0 ? 'none made' : `${counted(k, 'batch', 'batches')}, ${k * meta.jarsPerBatch}`,
      lasts: seasons(Math.min(1, Math.max(0, p))),
    })),
    make,
    makeSays: makeSays(make, usedYear, lastYear.jars),
    couldGo: standing === 'much' ? Math.max(0, left - Math.ceil(usedYear / 2)) : 0,
  };
}

function standingOf(onHand: number, band: ListedLine['band'], halfYear: number): Standing {
  if (onHand === 0) return 'none';
  if (band.p50 === 0) return 'short';
  return band.p10 >= FEW && band.p10 > halfYear ? 'much' : 'course';
}

/** Use up to a week as a number of average weeks: the profile's share of those weeks. */
function profileWeeks(profile: readonly number[], from: number, to: number): number {
  if (profile.length === 0) return to - from;
  let sum = 0;
  for (let w = from; w < Math.min(profile.length, to); w++) sum += (profile[w] as number) * Math.min(1, to - w);
  return sum + Math.max(0, to - profile.length);
}

/** Middle of the picking window of the first crop of the pool that is still ahead; bought fruit: its week. */
function nextHarvest(input: ForecastInput, poolIndex: number): PlainDate | null {
  const pool = input.pools[poolIndex];
  if (!pool) return null;
  const ahead = pool.crops
    .flatMap((c) => input.crops[c]?.seasons ?? [])
    .filter((s) => s.windowFrom > input.today)
    .sort((a, b) => (a.windowFrom < b.windowFrom ? -1 : 1))[0];
  if (ahead) return addDays(ahead.windowFrom, Math.floor((daysBetween(ahead.windowFrom, ahead.windowTo) + 1) / 2));
  const week = pool.bought.map((b) => b.week).sort((a, b) => a - b)[0];
  return week === undefined ? null : addDays(input.today, 7 * Math.max(1, week));
}

/**
 * Where there is more than is used: nothing while a year's use is left, else a year's use, so that the rest stays as it is.
 * Otherwise the fewest batches that last to the harvest after in eight seasons of ten.
 */
function toMake(q: {
  standing: Standing;
  usedYear: number;
  left: number;
  jarsPerBatch: number;
  odds: readonly number[];
}): ListedLine['make'] {
  if (q.odds.length === 0) return { batches: 0, jars: 0, why: 'unknown' };
  if (q.standing === 'much') {
    const batches = q.left >= q.usedYear ? 0 : Math.ceil(q.usedYear / q.jarsPerBatch - 1e-9);
    return { batches, jars: batches * q.jarsPerBatch, why: batches === 0 ? 'none' : 'pace' };
  }
  const batches = batchesFor(q.odds, ENOUGH) ?? q.odds.length - 1;
  return { batches, jars: batches * q.jarsPerBatch, why: batches === 0 ? 'none' : 'enough' };
}

/** "make 27 (3 batches), about half of last year’s 54". */
function makeSays(make: ListedLine['make'], usedYear: number, lastYear: number): string {
  if (make.why === 'none') return lastYear > 0 ? `none this time (last year ${lastYear})` : 'none this time';
  const of = lastYear > 0 ? `, ${shareOf(make.jars / lastYear)} last year’s ${lastYear}` : '';
  const pace = make.why === 'pace' ? `; a year uses ${usedYear}` : '';
  return `${make.jars} (${counted(make.batches, 'batch', 'batches')})${of}${pace}`;
}
function shareOf(share: number): string {
  if (share < 0.4) return 'less than half of';
  if (share <= 0.6) return 'about half of';
  if (share < 0.9) return 'less than';
  return share <= 1.1 ? 'about as many as' : 'more than';
}

/** The page's sentence: how many lines run short, are too much, and are on course. */
export function listsAnswer(view: SeasonLists): { answer: string; sub: string } {
  if (view.lines.length === 0)
    return { answer: 'No jar to choose from yet', sub: 'The lists are made from what leaves the shelf week by week.' };
  const n = (s: Standing) => view.lines.filter((l) => l.standing === s).length;
  return {
    answer: `${counted(n('short'), 'line')} will run short, ${n('course')} on course, ${n('much')} too much`,
    sub: `As of ${longDate(view.today)}, from what stands there now and before anything new is made${view.on ? `; left on ${longDate(view.on)}` : '; left at the middle of the next harvest of its fruit'}.`,
  };
}

/** Lots past their best-before day, and lots of which some will still be there on it, the oldest of a line going first. */
function openFirstOf(today: PlainDate, line: SeasonLine, listed: ListedLine): OpenFirst[] {
  let ahead = 0;
  return [...line.lots]
    .sort((a, b) => ((a.bestBefore ?? '9') < (b.bestBefore ?? '9') ? -1 : 1))
    .flatMap((lot) => {
      ahead += lot.onHand;
      if (lot.bestBefore === null) return [];
      const past = lot.bestBefore < today;
      const weeks = Math.max(0, daysBetween(today, lot.bestBefore) / 7);
      const leftThen = Math.min(lot.onHand, Math.max(0, Math.round(ahead - (listed.usedYear * weeks) / YEAR_WEEKS)));
      if (!past && leftThen === 0) return [];
      return [
        {
          code: lot.code,
          line: line.line,
          slug: line.slug,
          jars: lot.onHand,
          madeOn: lot.madeOn,
          bestBefore: lot.bestBefore,
          past,
          leftThen,
        },
      ];
    });
}

const byAge = (a: OpenFirst, b: OpenFirst): number =>
  a.bestBefore < b.bestBefore ? -1 : a.bestBefore > b.bestBefore ? 1 : a.code < b.code ? -1 : 1;
