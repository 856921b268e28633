/** Daily weather of the place: brought in as acts that move nothing; of two records of a day the later one counts. */
import { readWeather, type TypedDay, type WeatherDay, type WeatherUnit, weatherDay } from '#lib/forms/weather.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

export interface WeatherInput {
  id: string;
  unit: WeatherUnit;
  text: string;
}
export interface WeatherTold {
  said: string;
  doubtful: string[];
}

/** Refuses the whole when any line cannot be, naming the lines; blank days are left out and counted. */
export const recordWeather = (ctx: Context, input: WeatherInput): Promise<Written<WeatherTold>> =>
  writeAct<WeatherTold>(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async () => {
    const read = readWeather(input.text, input.unit, ctx.today);
    if (read.refused.length > 0) return { refused: linesText(read.refused) };
    const { days, doubtful, blank } = read;
    const payload = { unit: input.unit, days: days.map((d) => [d.day, d.low, d.high, d.rain]), doubtful };
    const [first, last] = [days[0] as TypedDay, days.at(-1) as TypedDay];
    return {
      entry: { act: actOf(ctx, input.id, 'weather', payload), lots: [], movements: [], changes: [] },
      tell: {
        said: `${counted(days.length, 'day')} of weather taken, ${longDate(first.day)} to ${longDate(last.day)}.${blank > 0 ? ` ${counted(blank, 'line')} without a figure left out.` : ''}`,
        doubtful,
      },
    };
  });

const SHOWN = 8;
const linesText = (refused: readonly string[]): string =>
  [
    ...refused.slice(0, SHOWN),
    ...(refused.length > SHOWN ? [`and ${counted(refused.length - SHOWN, 'more line')}`] : []),
  ].join('\n');

/** All days on record up to today, oldest first. */
export async function weatherDays(ctx: Context): Promise<WeatherDay[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['weather'] });
  const days = new Map<PlainDate, WeatherDay>();
  for (const act of acts.reverse()) {
    const { unit, days: typed } = act.payload as {
      unit: WeatherUnit;
      days: [PlainDate, string, string, string | null][];
    };
    for (const [day, low, high, rain] of typed)
      if (day <= ctx.today) days.set(day, weatherDay({ day, low, high, rain }, unit));
  }
  return [...days.values()].sort((a, b) => (a.day < b.day ? -1 : 1));
}
