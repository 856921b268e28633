/** What is still to be picked, crop by crop, in words and as a picture. */

import { twoDigits } from '#lib/forecast/words.ts';
import type { WeatherDay } from '#lib/forms/weather.ts';
import { addDays, longDate, type PlainDate, yearOf } from '#lib/units/plain-date.ts';
import { cropWeather, cropWeatherSays } from './crop-weather.ts';
import type { CropOutlook, Quantiles } from './forecast-harvest.ts';
import { aboutDay, between, parts, seasons } from './season-words.ts';

export interface PickRow {
  id: string;
  label: string;
  /** Crop code and food, for the colour. */
  code: string;
  foodId: string;
  /** Being picked, or about to be within four weeks: drawn. The others stand in a table. */
  soon: boolean;
  pickedKg: string;
  comingKg: string;
  middle: string;
  sentence: string;
  because: string;
  /** The figure before any record of the season. */
  restsOn: string;
  picked: { day: PlainDate; kg: number }[];
  coming: ({ day: PlainDate } & Quantiles)[];
}

/** Under way with much still to come, then about to begin, then all but over, then later in the year; by mid-season within each. */
export function pickRows(
  crops: readonly CropOutlook[],
  today: PlainDate,
  weather: readonly WeatherDay[] = [],
): PickRow[] {
  const rank = (c: CropOutlook) => {
    if (!isSoon(c, today)) return 3;
    if (c.pickedKg <= 0) return 1;
    return c.comingMean > NEARLY_OVER * (c.pickedKg + c.comingMean) ? 0 : 2;
  };
  const byMid = (a: CropOutlook, b: CropOutlook) => (a.mid < b.mid ? -1 : a.mid > b.mid ? 1 : a.id < b.id ? -1 : 1);
  return [...crops]
    .sort((a, b) => rank(a) - rank(b) || byMid(a, b))
    .map((c) => ({
      id: c.id,
      label: c.label,
      code: c.code,
      foodId: c.foodId,
      soon: isSoon(c, today),
      pickedKg: c.pickedKg > 0 ? `${twoDigits(c.pickedKg)} kg` : 'none yet',
      comingKg: between(c.coming.p10, c.coming.p90, 'kg'),
      middle: yearOf(c.mid) === yearOf(today) ? aboutDay(c.mid) : `${aboutDay(c.mid)} ${yearOf(c.mid)}`,
      sentence: sentenceOf(c),
      because: [becauseOf(c), weatherOf(c, weather)].filter((x) => x !== null).join(' '),
      restsOn: restsOn(c),
      picked: c.picked,
      coming: c.curve,
    }));
}

function weatherOf(c: CropOutlook, days: readonly WeatherDay[]): string | null {
  const weather = cropWeather(days, c);
  return weather && cropWeatherSays(weather);
}

/** Share still to come under which a crop is all but over. */
const NEARLY_OVER = 0.2;
const isSoon = (c: CropOutlook, today: PlainDate): boolean =>
  c.pickings + c.looks > 0 || c.windowFrom <= addDays(today, 28);

function sentenceOf(c: CropOutlook): string {
  const range = `8 seasons in 10 ${between(c.coming.p10, c.coming.p90, 'kg')}`;
  if (c.pickedKg <= 0)
    return `${c.label}: nothing picked yet. About ${twoDigits(c.coming.p50)} kg to come; ${range}, half of it by ${aboutDay(c.mid)}.`;
  const share = c.pickedKg / (c.pickedKg + c.comingMean);
  return `${c.label}: ${twoDigits(c.pickedKg)} kg picked, ${parts(share)}. Another ${twoDigits(c.coming.p50)} kg or so; ${range}.`;
}

/** The two weights: what this season's records say, what was believed before, and how much the records count. */
function becauseOf(c: CropOutlook): string {
  const before = restsOn(c);
  const eye = c.sight
    ? ` Seen hanging on ${longDate(c.sight.day)}, about ${twoDigits(c.sight.kg)} kg, is among the records.`
    : '';
  const poor =
    c.failed > 0.15 && c.failed > c.failedBefore + 0.05
      ? ` It is a poor year ${seasons(c.failed)} that fit these records.`
      : '';
  if (c.recordsSay === null || c.recordsWeight < 0.005)
    return `Your own figure (${before}) says ${twoDigits(c.priorSays)} kg; no record of this season yet.`;
  return `Your records say ${twoDigits(c.recordsSay)} kg, your own figure and past seasons (${before}) say ${twoDigits(c.priorSays)} kg; the records count ${parts(c.recordsWeight)}, so about ${twoDigits(c.totalMean)} kg in all.${eye}${poor}`;
}

function restsOn(c: CropOutlook): string {
  const years = c.pastSeasons.map((p) => `${p.year} brought ${twoDigits(p.kg)} kg`).join(', ');
  return `${c.basis}${years ? `; ${years}` : ''}`;
}
