/** The season page's data: one answer, what fits, what runs out, what is still to be picked. */
import { twoDigits } from '#lib/forecast/words.ts';
import type { WeatherDay } from '#lib/forms/weather.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { nothingToForecast, seasonForecast } from './forecast-season.ts';
import type { ForecastSummary, LineOutlook, StoreOutlook } from './forecast-summary.ts';
import { type PickRow, pickRows } from './season-picking.ts';
import { byUrgency, type EndPicture, endPicture, type LineRow, lineRow, linesSay } from './season-runout.ts';
import type { ForecastInput } from './season-scenario.ts';
import { aboutWeek, between, seasons } from './season-words.ts';
import { weatherDays } from './weather-record.ts';

export interface FitPicture {
  id: string;
  title: string;
  sentence: string;
  unit: string;
  weeks: { week: PlainDate; p10: number; p25: number; p50: number; p75: number; p90: number }[];
  samples: number[][];
  capacity: { value: number; label: string } | null;
  basis: string;
}
export interface LineReasons {
  id: string;
  label: string;
  onHand: number;
  perWeek: string;
  eaten: string;
  sold: string;
  given: string;
  made: string;
}
export interface SeasonView {
  today: PlainDate;
  /** empty: nothing recorded; waiting: not worked out for these records yet; ready: at least the first thousand seasons. */
  state: 'empty' | 'waiting' | 'ready';
  whole: boolean;
  answer: string;
  sub: string;
  fit: FitPicture[];
  weeks: PlainDate[];
  lines: LineRow[];
  linesSay: string;
  ends: EndPicture[];
  picking: PickRow[];
  reasons: LineReasons[];
  restsOn: string[];
  /** What to record first, where something is missing. */
  first: string[];
}

/** Reads only: where nothing is stored for these records yet, the page asks for a run. */
export async function readSeason(ctx: Context): Promise<SeasonView> {
  const [{ input, summary, whole }, weather] = await Promise.all([seasonForecast(ctx), weatherDays(ctx)]);
  return seasonView(input, summary, whole, weather);
}

export function seasonView(
  input: ForecastInput,
  summary: ForecastSummary | null,
  whole: boolean,
  weather: readonly WeatherDay[] = [],
): SeasonView {
  const { today } = input;
  const first = recordFirst(input);
  const nothing = {
    fit: [],
    weeks: [],
    lines: [],
    linesSay: '',
    ends: [],
    picking: [],
    reasons: [],
    restsOn: [],
    first,
  };
  if (nothingToForecast(input))
    return {
      ...nothing,
      today,
      state: 'empty',
      whole: true,
      answer: 'Nothing to look ahead to yet',
      sub: 'The season ahead is reckoned from your crops, your jars and what leaves the shelf.',
    };
  if (!summary)
    return {
      ...nothing,
      today,
      state: 'waiting',
      whole: false,
      answer: 'Working out the 52 weeks ahead',
      sub: `From ${counted(input.lines.length, 'line')} on record and ${counted(input.crops.length, 'crop')}, as of ${longDate(today)}.`,
    };
  return {
    ...nothing,
    today,
    state: 'ready',
    whole,
    ...answerOf(summary, today),
    fit: summary.stores.filter((s) => s.weeks.some((w) => w.p90 > 0)).map((s) => fitPicture(s, today)),
    weeks: Array.from({ length: summary.weeks }, (_, w) => addDays(today, 7 * w)),
    lines: byUrgency(summary.lines).map((l) => lineRow(l, today)),
    linesSay: linesSay(summary.lines),
    ends: byUrgency(summary.lines)
      .filter((l) => l.onHand > 0 && l.none >= 0.1 && l.none <= 0.9)
      .slice(0, 2)
      .map((l) => endPicture(l, today)),
    picking: pickRows(summary.harvest, today, weather),
    reasons: summary.lines.map(reasonsOf),
    restsOn: restsOn(input, summary),
    first,
  };
}

function recordFirst(input: ForecastInput): string[] {
  const say: string[] = [];
  if (input.crops.length === 0)
    say.push('Add your crops with their plants and picking weeks: they say what may ripen.');
  if (input.lines.length === 0) say.push('Make a batch: its jars are followed from the day they stand on the shelf.');
  else if (input.lines.every((l) => l.learnt.eaten.count + l.learnt.sold.count + l.learnt.given.count === 0))
    say.push(
      'Take jars off the shelf here when they are eaten, given or sold: until then every line is reckoned at two a quarter.',
    );
  return say;
}

/** The first of these that is so: a store fills up in one season of twenty or more; a line runs out; all fits and lasts. */
function answerOf(summary: ForecastSummary, today: PlainDate): { answer: string; sub: string } {
  const sub = `As of ${longDate(today)}: ${summary.n.toLocaleString('en')} possible seasons of ${summary.weeks} weeks, from your own records.`;
  const full = [...summary.stores].sort((a, b) => b.over.share - a.over.share)[0];
  if (full && full.over.share >= 0.05) {
    const when =
      full.over.mostOftenFrom === null ? '' : `, most often from ${aboutWeek(today, full.over.mostOftenFrom)}`;
    return { answer: `${capital(full.label)} fills up ${seasons(full.over.share)}${when}`, sub };
  }
  const running = byUrgency(summary.lines).filter((l) => l.onHand > 0 && l.none >= 0.1);
  // A line that is made again has a next harvest to last to: those come before what is only being used up.
  const short = running.find((l) => l.made) ?? running[0];
  if (short) {
    const half = short.goneHalf === null ? '' : `, half the time by ${aboutWeek(today, short.goneHalf)}`;
    const until = short.made ? 'before the next harvest ' : '';
    return { answer: `${short.line} will be gone ${until}${seasons(short.none)}${half}`, sub };
  }
  const lines = summary.lines.filter((l) => l.onHand > 0).length;
  if (lines > 0)
    return { answer: `All ${lines} lines last to their next harvest in 9 seasons in 10 or more, and it all fits`, sub };
  const kg = summary.harvest.reduce((sum, h) => sum + h.coming.p50, 0);
  return { answer: `About ${twoDigits(kg)} kg of fruit may come in the year ahead, and no jar is on record yet`, sub };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function fitPicture(store: StoreOutlook, today: PlainDate): FitPicture {
  const peak = store.weeks.reduce((best, w, i) => (w.p50 > (store.weeks[best]?.p50 ?? 0) ? i : best), 0);
  const at = store.weeks[peak] ?? { p10: 0, p90: 0 };
  const unit = store.unit === 'cm' ? 'cm of shelf front' : 'litres';
  const fullest = `fullest in ${aboutWeek(today, peak)} with ${between(at.p10, at.p90, unit)} taken, 8 seasons in 10`;
  const full =
    store.over.share > 0
      ? `Fills up ${seasons(store.over.share)}${store.over.mostOftenFrom === null ? '' : `, most often from ${aboutWeek(today, store.over.mostOftenFrom)}`}; `
      : 'Never over its room in the seasons tried; ';
  const capacity = Math.round(store.capacity);
  return {
    id: store.id,
    title: capital(store.label),
    sentence:
      store.capacity > 0
        ? `${full}${fullest}.`
        : `${capital(fullest)}. Its size is not on record, so whether it fits is not said.`,
    unit,
    weeks: store.weeks.map((w, i) => ({ week: addDays(today, 7 * i), ...w })),
    samples: store.samples,
    capacity: store.capacity > 0 ? { value: capacity, label: `full at ${capacity} ${store.unit}` } : null,
    basis: store.basis,
  };
}

function reasonsOf(l: LineOutlook): LineReasons {
  const { eaten, sold, given, before } = l.learnt;
  const inWeeks = (r: { count: number; weeks: number }, which = '') =>
    r.weeks === 0 ? 'no week on record' : `${r.count} in ${r.weeks} ${which}weeks`;
  const held = l.heldBack > 0 ? `; ${l.heldBack} more on hold` : '';
  return {
    id: l.id,
    label: `${l.line}, ${l.itemLabel}`,
    onHand: l.onHand,
    perWeek: `${twoDigits(l.usePerWeek)} a week over the year${held}`,
    eaten:
      eaten.count === 0
        ? `none yet: reckoned from ${twoDigits(before.perWeek)} a week (${before.source})`
        : inWeeks(eaten),
    sold: sold.count === 0 ? 'none on record' : inWeeks(sold, 'stall '),
    given: given.count === 0 ? 'none on record' : inWeeks(given, 'gift '),
    made: l.made ? `${l.madeJars.p10} to ${l.madeJars.p90} in 8 seasons in 10 (${l.madeBasis})` : capital(l.madeBasis),
  };
}

function restsOn(input: ForecastInput, summary: ForecastSummary): string[] {
  const stall = input.lines.reduce((most, l) => Math.max(most, l.learnt.sold.weeks), 0);
  return [
    `Use is learnt from what left the shelf week by week in the last year: weeks with none of a line on hand are left out${stall > 0 ? `; sales only in stall weeks (${stall} on record)` : ''}.`,
    `Fruit to come: plants times kilograms each, earlier seasons, and every picking of this one. What is sold fresh, eaten fresh or culled does not reach the kitchen.`,
    `In the kitchen ${twoDigits(summary.hoursPerWeek)} hours a week, of which one week in eight falls through (from memory). The batch most wanted for its hours is made first, as whole batches of the size made last year.`,
    summary.plannedBatches > 0
      ? `${counted(summary.plannedBatches, 'batch', 'batches')} of the plan in force ${summary.plannedBatches === 1 ? 'is' : 'are'} made first, each in 9 seasons in 10 (from memory).`
      : 'No plan is in force, so no batch is taken as settled.',
    'Jars, lids and sugar are taken to be bought when they run short: how many stands under “What to order”.',
    'A jar is kept half a year past its best-before day (estimate); best-before is about quality.',
    'How much years differ, and how lumpy use is, are first figures of this program (estimates) until your own records overrule them.',
  ];
}
