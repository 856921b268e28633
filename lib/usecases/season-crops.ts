/**
 * What each crop has brought and may still bring: table expectation (plants x kg each, the household's own figure), earlier
 * seasons of the place, and this season's pickings and looks. Days count from 1 January of the season's year.
 */
import type { CropPrior } from '#lib/forecast/crop-prior.ts';
import type { PickRecord } from '#lib/forecast/harvest-posterior.ts';
import { learnPrior, type PastSeason, summariseSeason, type TableEntry } from '#lib/forecast/learn-prior.ts';
import type { StoredAct } from '#lib/store/act-store.ts';
import type { Crop } from '#lib/store/place.ts';
import { addDays, daysBetween, type PlainDate, yearOf } from '#lib/units/plain-date.ts';
import { FAILED_SHARE, MID_SD_DAYS, WIDTH_OF_WINDOW, yearSpread } from './season-crop-defaults.ts';
import { SEASON_WEEKS, type SeasonSnapshot } from './season-snapshot.ts';

/** One season of a crop that lies, at least in part, ahead. */
export interface CropSeason {
  year: number;
  prior: CropPrior;
  records: PickRecord[];
  /** The latest estimate by eye of what still hung, and its day; null where nobody gave one. */
  sight: PickRecord | null;
  /** Today on the season's own count. */
  fromDay: number;
  windowFrom: PlainDate;
  windowTo: PlainDate;
}
export interface SeasonCrop {
  id: string;
  code: string;
  label: string;
  foodId: string;
  expectedKg: number;
  /** Plants, and what one is called. */
  count: number;
  unit: string;
  basis: string;
  /** Share of what is picked that is neither sold, eaten fresh nor culled. */
  keptShare: number;
  /** The season under way or next, then the one after where it begins within the year. */
  seasons: CropSeason[];
  /** `mid`: day, from 1 January as 0, on which half had been picked. */
  pastSeasons: { year: number; kg: number; mid: number }[];
}

/** A season is over three weeks after its window unless something was picked in the last ten days. Estimate. */
const OVER_AFTER_DAYS = 21;
const STILL_PICKED_DAYS = 10;

export function seasonCrops(s: SeasonSnapshot): SeasonCrop[] {
  return s.place.crops
    .filter((crop) => crop.count * crop.gPerUnit > 0)
    .map((crop) => seasonCrop(s, crop))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function seasonCrop(s: SeasonSnapshot, crop: Crop): SeasonCrop {
  const expectedKg = (crop.count * crop.gPerUnit) / 1000;
  const picks = picksOf(s.harvests, crop);
  const first = openYear(s.today, crop, picks);
  const past = pastSeasons(picks, crop, first, expectedKg);
  const table = tableEntry(crop, expectedKg);
  const seasons = [first, first + 1]
    .filter((year) => addDays(windowOf(crop, year).from, -OVER_AFTER_DAYS) < addDays(s.today, 7 * SEASON_WEEKS))
    .map((year): CropSeason => {
      const window = windowOf(crop, year);
      return {
        year,
        prior: learnPrior(table, [...ownFigures(table), ...past.map((p) => p.season)]),
        records: recordsOf(picks, crop, year),
        sight: sightOf(s, crop, year),
        fromDay: dayCount(year, s.today),
        windowFrom: window.from,
        windowTo: window.to,
      };
    });
  return {
    id: crop.id,
    code: crop.code,
    label: crop.label,
    foodId: crop.foodId,
    expectedKg,
    count: crop.count,
    unit: crop.unit,
    basis: `${crop.count} x ${Number((crop.gPerUnit / 1000).toFixed(2))} kg a ${crop.unit}`,
    keptShare: Math.max(0, 100 - crop.soldPercent - crop.eatenPercent - crop.cullPercent) / 100,
    seasons,
    pastSeasons: past.map((p) => ({ year: p.year, kg: p.season.total, mid: p.season.t50 })),
  };
}

/**
 * Plants x kg and the picking window are what the household says of its own trees, not figures of a table: they stand for
 * two seasons of the place. Estimate.
 */
const ownFigures = (t: TableEntry): PastSeason[] =>
  Array.from({ length: 2 }, () => ({
    total: t.expected,
    expected: t.expected,
    t10: t.mid - t.width / 2,
    t50: t.mid,
    t90: t.mid + t.width / 2,
  }));

const dayCount = (year: number, day: PlainDate): number => daysBetween(`${year}-01-01` as PlainDate, day);

/** The picking window of a season; one that runs past New Year belongs to the year it begins in. */
export function windowOf(
  crop: Pick<Crop, 'windowFrom' | 'windowTo'>,
  year: number,
): { from: PlainDate; to: PlainDate } {
  const ends = crop.windowTo < crop.windowFrom ? year + 1 : year;
  return { from: `${year}-${crop.windowFrom}` as PlainDate, to: `${ends}-${crop.windowTo}` as PlainDate };
}

interface DayPick {
  day: PlainDate;
  kg: number;
}

/** Pickings by day, looks that found nothing as 0 kg; all that left the tree counts, also what was sold or culled at once. */
function picksOf(harvests: readonly StoredAct[], crop: Crop): DayPick[] {
  const byDay = new Map<PlainDate, number>();
  for (const act of harvests) {
    if (act.payload.cropId !== crop.id && act.payload.crop !== crop.code) continue;
    const grams = act.movements.reduce(
      (g, m) => g + ('sink' in m.from && m.from.sink === 'harvest' ? (m.grams ?? 0) : 0),
      0,
    );
    byDay.set(act.day, (byDay.get(act.day) ?? 0) + grams / 1000);
  }
  return [...byDay.entries()].map(([day, kg]) => ({ day, kg })).sort((a, b) => (a.day < b.day ? -1 : 1));
}

/** Year of the season under way or next. */
function openYear(today: PlainDate, crop: Crop, picks: readonly DayPick[]): number {
  const lastPick = picks.filter((p) => p.kg > 0).at(-1)?.day;
  for (let year = yearOf(today) - 1; ; year++) {
    const { to } = windowOf(crop, year);
    const stillPicked =
      lastPick !== undefined && seasonOf(crop, lastPick) === year && daysBetween(lastPick, today) <= STILL_PICKED_DAYS;
    if (addDays(to, OVER_AFTER_DAYS) >= today || (stillPicked && addDays(to, 60) >= today)) return year;
  }
}

/** Season a picking belongs to: the one whose window lies nearest. */
function seasonOf(crop: Crop, day: PlainDate): number {
  const year = yearOf(day);
  const off = (y: number) => {
    const { from, to } = windowOf(crop, y);
    return day < from ? daysBetween(day, from) : day > to ? daysBetween(to, day) : 0;
  };
  return [year - 1, year, year + 1].reduce((best, y) => (off(y) < off(best) ? y : best), year);
}

const recordsOf = (picks: readonly DayPick[], crop: Crop, year: number): PickRecord[] =>
  picks.filter((p) => seasonOf(crop, p.day) === year).map((p) => ({ t: dayCount(year, p.day), kg: p.kg }));

/** Two estimates of one eye hang together, so only the latest counts. */
function sightOf(s: SeasonSnapshot, crop: Crop, year: number): PickRecord | null {
  const seen = s.sights.find((a) => a.payload.cropId === crop.id && seasonOf(crop, a.day) === year);
  return seen ? { t: dayCount(year, seen.day), kg: Number(seen.payload.kg) } : null;
}

function pastSeasons(
  picks: readonly DayPick[],
  crop: Crop,
  before: number,
  expectedKg: number,
): { year: number; season: PastSeason }[] {
  const years = [...new Set(picks.map((p) => seasonOf(crop, p.day)))].filter((y) => y < before);
  return years.flatMap((year) => {
    const season = summariseSeason(recordsOf(picks, crop, year), expectedKg);
    return season ? [{ year, season }] : [];
  });
}

function tableEntry(crop: Crop, expectedKg: number): TableEntry {
  const { from, to } = windowOf(crop, 2025);
  const days = daysBetween(from, to) + 1;
  const { cv, failProb } = yearSpread(crop.foodId);
  return {
    expected: expectedKg,
    cv,
    mid: dayCount(2025, from) + days / 2,
    midSd: MID_SD_DAYS,
    width: Math.max(3, WIDTH_OF_WINDOW * days),
    failProb,
    failShare: FAILED_SHARE,
  };
}
