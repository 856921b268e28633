/** The weather page: this year's warmth beside the years before, frost and heat by crop, and whether any of it helps. */
import { clockErrors, LEAST_SEASONS } from '#lib/forecast/warmth-clock.ts';
import type { WeatherDay } from '#lib/forms/weather.ts';
import { BLOSSOM_FROST_C, BLOSSOM_WITHIN_DAYS, HEAT_DAY_C, WARMTH_BASE_C } from '#lib/reference/blossom.ts';
import { degreeDaySum } from '#lib/science/degree-days.ts';
import { type YearWarmth, yearWarmth } from '#lib/science/year-warmth.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, longDate, monthName, type PlainDate, yearOf } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { cropWeather, cropWeatherCells } from './crop-weather.ts';
import { type SeasonCrop, seasonCrops } from './season-crops.ts';
import { seasonSnapshot } from './season-snapshot.ts';
import { weatherDays } from './weather-record.ts';

export interface WeatherView {
  answer: string;
  sub: string;
  years: { year: string; sum: string; against: string }[];
  crops: { id: string; label: string; blossom: string; frost: string; heat: string }[];
  countedSays: string;
  helps: string[];
}

export async function readWeatherPage(ctx: Context): Promise<WeatherView> {
  const [days, snapshot] = await Promise.all([weatherDays(ctx), seasonSnapshot(ctx)]);
  return weatherView(days, seasonCrops(snapshot), ctx.today);
}

export function weatherView(days: readonly WeatherDay[], crops: readonly SeasonCrop[], today: PlainDate): WeatherView {
  const last = days.at(-1)?.day ?? today;
  const rows = yearWarmth(days, last.slice(5), WARMTH_BASE_C);
  const now = rows.find((r) => r.year === yearOf(last));
  const past = rows.filter((r) => r.year < yearOf(last));
  return {
    ...answerOf({ now, past, days, last }),
    years: rows.reverse().map((r) => ({
      year: String(r.year),
      sum: String(Math.round(r.sum)),
      against: now && r !== now ? signed(r.sum - now.sum) : '',
    })),
    crops: crops.flatMap((c) => {
      const season = c.seasons[0];
      const weather = season && cropWeather(days, { ...season, foodId: c.foodId });
      return weather ? [{ id: c.id, label: c.label, ...cropWeatherCells(weather) }] : [];
    }),
    countedSays: `Nights down to ${BLOSSOM_FROST_C} °C or below within ${BLOSSOM_WITHIN_DAYS} days of full blossom, reckoned back from the picking weeks, and days of ${HEAT_DAY_C} °C or more since. A tenth of open blossoms is lost at that frost (from memory).`,
    helps: helps(days, crops),
  };
}

const signed = (x: number): string => `${x < 0 ? '−' : '+'}${Math.abs(Math.round(x))}`;
const mean = (rows: readonly YearWarmth[]): number => rows.reduce((sum, r) => sum + r.sum, 0) / rows.length;

function answerOf(o: {
  now: YearWarmth | undefined;
  past: YearWarmth[];
  days: readonly WeatherDay[];
  last: PlainDate;
}) {
  const { now, past, days, last } = o;
  const first = days[0];
  if (!first)
    return {
      answer: 'No weather on record yet',
      sub: 'Paste or upload daily lows and highs of a station near you: the year’s warmth, frost at blossom and days of heat are read from them.',
    };
  const sub = `${counted(days.length, 'day')} on record, ${longDate(first.day)} to ${longDate(last)}. Degree-days above ${WARMTH_BASE_C} °C by the single sine, from 1 January.`;
  const to = `${Number(last.slice(8))} ${monthName(last)}`;
  if (!now) return { answer: `Too few days of ${yearOf(last)} on record to add up its warmth to ${to}`, sub };
  const sum = `${Math.round(now.sum)} degree-days to ${to}`;
  if (past.length === 0) return { answer: `${sum}; no earlier year on record to set beside it`, sub };
  const more = now.sum - mean(past);
  const years = past.length === 1 ? `than ${past[0]?.year}` : `than the mean of ${past.length} years before`;
  return { answer: `${sum}: ${Math.abs(Math.round(more))} ${more < 0 ? 'fewer' : 'more'} ${years}`, sub };
}

/** Sums of degree-days by year, from 1 January to the first gap. */
function sumsOf(days: readonly WeatherDay[]): Map<number, number[]> {
  const years = new Map<number, WeatherDay[]>();
  for (const d of days) {
    const of = years.get(yearOf(d.day)) ?? [];
    if (d.day === addDays(`${yearOf(d.day)}-01-01` as PlainDate, of.length)) years.set(yearOf(d.day), [...of, d]);
  }
  return new Map([...years.entries()].map(([year, of]) => [year, degreeDaySum(of, WARMTH_BASE_C)]));
}

function helps(days: readonly WeatherDay[], crops: readonly SeasonCrop[]): string[] {
  const published =
    'The forecast runs on the calendar and your pickings; the weather does not move it. For five apples picked over 32 to 58 years, adding up degree-days was 10 to 18 days out in the picking date, the plain calendar 6 to 9 (Klein-Altendorf 1958-2019, doi:10.60507/FK2/MZIELI). Rain is kept and used for nothing yet.';
  const sums = sumsOf(days);
  const own = crops.flatMap((c) => {
    const errors = clockErrors(
      c.pastSeasons.flatMap((p) => (sums.has(p.year) ? [{ mid: p.mid, sums: sums.get(p.year) as number[] }] : [])),
    );
    if (!errors) return [];
    const better =
      errors.warmth < errors.calendar
        ? 'Here it would have been closer; it is shown and not yet counted in'
        : 'It would not have helped';
    return [
      `${c.label}, your own seasons: ${errors.warmth.toFixed(1)} days out by degree-days, ${errors.calendar.toFixed(1)} by the calendar. ${better}.`,
    ];
  });
  return own.length > 0
    ? [published, ...own]
    : [
        published,
        `In your own past it has not been shown to help: ${LEAST_SEASONS} finished seasons of a crop with their weather are needed before that can be asked.`,
      ];
}
