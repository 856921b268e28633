/** What the weather on record says of each crop of this season: frost at blossom and heat on the fruit. It moves no forecast. */
import type { WeatherDay } from '#lib/forms/weather.ts';
import { BLOSSOM_FROST_C, BLOSSOM_WITHIN_DAYS, blossomToPicking, HEAT_DAY_C } from '#lib/reference/blossom.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, daysBetween, longDate, monthName, type PlainDate } from '#lib/units/plain-date.ts';

/** Share of the days of blossom that must be on record before a frost is ruled out. */
const LEAST_SHARE = 0.9;

export interface CropWeather {
  blossomFrom: PlainDate;
  blossomTo: PlainDate;
  /** Days of blossom on record, and nights of frost among them. */
  days: number;
  frosts: number;
  coldest: WeatherDay | null;
  heat: number;
}

interface Picked {
  foodId: string;
  windowFrom: PlainDate;
  windowTo: PlainDate;
}

/** Null where the fruit has no blossom figure, or no day of its blossom or growth is on record. */
export function cropWeather(days: readonly WeatherDay[], crop: Picked): CropWeather | null {
  const before = blossomToPicking(crop.foodId);
  if (before === null) return null;
  const middle = addDays(crop.windowFrom, Math.round(daysBetween(crop.windowFrom, crop.windowTo) / 2));
  const blossomFrom = addDays(middle, -before - BLOSSOM_WITHIN_DAYS);
  const blossomTo = addDays(middle, -before + BLOSSOM_WITHIN_DAYS);
  const blossom = days.filter((d) => d.day >= blossomFrom && d.day <= blossomTo);
  const after = days.filter((d) => d.day > blossomTo && d.day <= crop.windowTo);
  if (blossom.length + after.length === 0) return null;
  return {
    blossomFrom,
    blossomTo,
    days: blossom.length,
    frosts: blossom.filter((d) => d.low <= BLOSSOM_FROST_C).length,
    coldest: blossom.reduce<WeatherDay | null>((cold, d) => (cold && cold.low <= d.low ? cold : d), null),
    heat: after.filter((d) => d.high >= HEAT_DAY_C).length,
  };
}

const dayMonth = (d: PlainDate): string => `${Number(d.slice(8))} ${monthName(d)}`;

/** The same in columns: blossom, nights of frost, days of heat since. */
export function cropWeatherCells(w: CropWeather): { blossom: string; frost: string; heat: string } {
  const whole = w.days >= LEAST_SHARE * (2 * BLOSSOM_WITHIN_DAYS + 1);
  return {
    blossom: `${dayMonth(w.blossomFrom)} to ${dayMonth(w.blossomTo)}`,
    frost: whole ? String(w.frosts) : `only ${counted(w.days, 'day')} on record`,
    heat: String(w.heat),
  };
}

/** "Frost at blossom: 2 nights …; 3 days of 35 °C or more since. The forecast does not move by it." */
export function cropWeatherSays(w: CropWeather): string {
  const when = `${dayMonth(w.blossomFrom)} to ${dayMonth(w.blossomTo)}`;
  const frost =
    w.days < LEAST_SHARE * (2 * BLOSSOM_WITHIN_DAYS + 1)
      ? `Blossom (about ${when}): only ${counted(w.days, 'day')} of it on record`
      : w.frosts === 0
        ? `No frost at blossom (about ${when}): no night down to ${BLOSSOM_FROST_C} °C`
        : `Frost at blossom (about ${when}): ${counted(w.frosts, 'night')} down to ${BLOSSOM_FROST_C} °C or below, the coldest ${w.coldest?.low.toFixed(1)} °C on ${longDate((w.coldest as WeatherDay).day)}`;
  const heat = w.heat > 0 ? `; ${counted(w.heat, 'day')} of ${HEAT_DAY_C} °C or more since` : '';
  return `${frost}${heat}. The forecast does not move by it: count what hangs.`;
}
