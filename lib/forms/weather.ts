/**
 * Daily weather as a table of text: date, lowest, highest and, where it is there, rain. Comma, semicolon or tab between; a first
 * line of names is read, else the order is date, lowest, highest, rain. What cannot be is refused with its line, what is strange
 * is kept and named.
 */
import { fromFahrenheit } from '#lib/units/convert.ts';
import { parseNumber } from '#lib/units/parse-number.ts';
import { isPlainDate, type PlainDate } from '#lib/units/plain-date.ts';

export type WeatherUnit = 'C' | 'F';
/** One day as it was typed; rain null where none was given. */
export interface TypedDay {
  day: PlainDate;
  low: string;
  high: string;
  rain: string | null;
}
export interface WeatherDay {
  day: PlainDate;
  /** °C. */
  low: number;
  high: number;
  /** Millimetres, as typed. */
  rain: number | null;
}
export interface ReadWeather {
  days: TypedDay[];
  doubtful: string[];
  refused: string[];
  /** Lines without a figure: nothing was measured. */
  blank: number;
}

/** The record of Earth's surface lies within. */
const COLDEST_C = -90;
const HOTTEST_C = 60;
/** Beyond these a day is kept and named: judged by this project. */
const STRANGE = { low: -40, high: 45, swing: 30, step: 20, rain: 200 };
const MOST_LINES = 20_000;
const NAMES = {
  day: /date|day|datum/i,
  low: /min|low/i,
  high: /max|high/i,
  rain: /rain|prec|prcp/i,
};

export function readWeather(text: string, unit: WeatherUnit, today: PlainDate): ReadWeather {
  const read: ReadWeather = { days: [], doubtful: [], refused: [], blank: 0 };
  const lines = text.split(/\r?\n/);
  if (lines.length > MOST_LINES)
    return { ...read, refused: [`${lines.length} lines; ${MOST_LINES} can be read at once`] };
  const first = lines.findIndex((l) => l.trim() !== '');
  if (first < 0) return { ...read, refused: ['there is no line in it'] };
  const mark = [';', '\t', ','].find((m) => (lines[first] as string).includes(m)) ?? ',';
  const columns = columnsOf((lines[first] as string).split(mark));
  if (typeof columns === 'string') return { ...read, refused: [columns] };
  const seen = new Map<PlainDate, number>();
  lines.forEach((line, i) => {
    if (line.trim() === '' || (columns.named && i === first)) return;
    const cells = line.split(mark).map((c) => c.trim().replace(/^"(.*)"$/, '$1'));
    const told = readLine(cells, columns, { unit, today });
    if (told === 'blank') read.blank += 1;
    else if (typeof told === 'string') read.refused.push(`Line ${i + 1}: ${told}`);
    else if (seen.has(told.day))
      read.refused.push(`Line ${i + 1}: ${told.day} stands in line ${seen.get(told.day)} as well`);
    else {
      seen.set(told.day, i + 1);
      read.days.push(told);
    }
  });
  if (read.days.length === 0 && read.refused.length === 0) read.refused.push('no line holds a lowest and a highest');
  read.days.sort((a, b) => (a.day < b.day ? -1 : 1));
  read.doubtful = strangeDays(read.days, unit);
  return read;
}

interface Columns {
  named: boolean;
  day: number;
  low: number;
  high: number;
  rain: number;
}

function columnsOf(cells: string[]): Columns | string {
  if (dayOf(cells[0] ?? '') !== null) return { named: false, day: 0, low: 1, high: 2, rain: 3 };
  const at = (name: RegExp) => cells.findIndex((c) => name.test(c));
  const columns = { named: true, day: at(NAMES.day), low: at(NAMES.low), high: at(NAMES.high), rain: at(NAMES.rain) };
  const missing = [
    columns.day < 0 ? 'date' : null,
    columns.low < 0 ? 'min' : null,
    columns.high < 0 ? 'max' : null,
  ].filter((m) => m !== null);
  return missing.length === 0
    ? columns
    : `The first line is neither a day nor names: no column is called ${missing.join(' or ')}`;
}

/** 2025-04-12, 2025/4/12, 20250412 and 12.4.2025. What can be read two ways (4/12/2025) is not read. */
function dayOf(raw: string): PlainDate | null {
  const text = raw
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .replace(/[T ]\d{2}:\d{2}.*$/, '');
  const m = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text) ?? /^(\d{4})(\d{2})(\d{2})$/.exec(text);
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text);
  const parts = m ? [m[1], m[2], m[3]] : dotted ? [dotted[3], dotted[2], dotted[1]] : null;
  if (!parts) return null;
  const day = parts.map((p, i) => (p as string).padStart(i === 0 ? 4 : 2, '0')).join('-');
  return isPlainDate(day) ? day : null;
}

function readLine(
  cells: string[],
  at: Columns,
  o: { unit: WeatherUnit; today: PlainDate },
): TypedDay | 'blank' | string {
  const [low, high, rain] = [cells[at.low] ?? '', cells[at.high] ?? '', cells[at.rain] ?? ''];
  const day = dayOf(cells[at.day] ?? '');
  if (day === null) return `"${cells[at.day] ?? ''}" is not a day of the calendar (2025-04-12)`;
  if (day > o.today) return `${day} has not been yet`;
  if (isBlank(low) || isBlank(high)) return 'blank';
  const [l, h] = [signed(low), signed(high)];
  if (l === null || h === null) return `"${l === null ? low : high}" is not a number`;
  const [lowC, highC] = [toCelsius(l, o.unit), toCelsius(h, o.unit)];
  if (lowC < COLDEST_C || highC > HOTTEST_C) return `${low} to ${high} °${o.unit} is beyond anything measured outdoors`;
  if (highC < lowC) return `the highest, ${high}, is below the lowest, ${low}`;
  if (isBlank(rain)) return { day, low, high, rain: null };
  const wet = parseNumber(rain);
  return wet.ok ? { day, low, high, rain } : `rain: ${wet.reason}`;
}

const isBlank = (text: string): boolean => /^(|-|na|nan|null|-?9999(\.0)?)$/i.test(text);

function signed(text: string): number | null {
  const below = /^[-−]/.test(text);
  const read = parseNumber(below ? text.slice(1) : text);
  return read.ok ? (below ? -read.value : read.value) : null;
}

const toCelsius = (t: number, unit: WeatherUnit): number => (unit === 'F' ? fromFahrenheit(t) : t);

/** A day as typed, in °C and mm; the text was checked by `readWeather`. */
export const weatherDay = (d: TypedDay, unit: WeatherUnit): WeatherDay => ({
  day: d.day,
  low: toCelsius(signed(d.low) as number, unit),
  high: toCelsius(signed(d.high) as number, unit),
  rain: d.rain === null ? null : signed(d.rain),
});

function strangeDays(days: readonly TypedDay[], unit: WeatherUnit): string[] {
  return days.flatMap((typed, i) => {
    const d = weatherDay(typed, unit);
    const before = i > 0 ? weatherDay(days[i - 1] as TypedDay, unit) : null;
    const says = `${typed.low} to ${typed.high} °${unit}`;
    if (d.low < STRANGE.low || d.high > STRANGE.high) return [`${d.day}: ${says} is rare anywhere; is the unit right?`];
    if (d.high - d.low > STRANGE.swing) return [`${d.day}: ${says} is a swing of more than ${STRANGE.swing} °C`];
    if (before && Math.abs(d.high + d.low - before.high - before.low) / 2 > STRANGE.step)
      return [`${d.day}: ${says} is more than ${STRANGE.step} °C from the day before`];
    if ((d.rain ?? 0) > STRANGE.rain) return [`${d.day}: ${typed.rain} mm of rain; millimetres are meant`];
    return [];
  });
}
