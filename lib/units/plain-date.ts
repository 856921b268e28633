/**
 * Days without a clock: `YYYY-MM-DD` in the place's own calendar. Instants are for audit only.
 * Nothing here reads the clock; "today" is always handed in.
 */
declare const plain: unique symbol;
export type PlainDate = string & { readonly [plain]: 'date' };

const DAY_MS = 86_400_000;
const toUtc = (d: PlainDate): number =>
  Date.UTC(Number(d.slice(0, 4)), Number(d.slice(5, 7)) - 1, Number(d.slice(8, 10)));
const fromUtc = (ms: number): PlainDate => new Date(ms).toISOString().slice(0, 10) as PlainDate;

/** True for a day that exists, written `YYYY-MM-DD` (2026-02-31 is not one). */
export function isPlainDate(text: string): text is PlainDate {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && fromUtc(toUtc(text as PlainDate)) === text;
}

/** The day itself, or a RangeError naming what was given. */
export function plainDate(text: string): PlainDate {
  if (!isPlainDate(text)) throw new RangeError(`"${text}" is not a day written as YYYY-MM-DD`);
  return text;
}

export const addDays = (d: PlainDate, days: number): PlainDate => fromUtc(toUtc(d) + days * DAY_MS);
/** Whole days from `a` to `b`; negative when `b` is earlier. */
export const daysBetween = (a: PlainDate, b: PlainDate): number => Math.round((toUtc(b) - toUtc(a)) / DAY_MS);
/** The later of two days. */
export const laterOf = (a: PlainDate, b: PlainDate): PlainDate => {
  if (b > a) return b;
  return a;
};
/** 0 = Monday … 6 = Sunday (ISO 8601). */
export const weekday = (d: PlainDate): number => (new Date(toUtc(d)).getUTCDay() + 6) % 7;
export const mondayOf = (d: PlainDate): PlainDate => addDays(d, -weekday(d));
export const yearOf = (d: PlainDate): number => Number(d.slice(0, 4));
/** 1 January = 1. */
export const dayOfYear = (d: PlainDate): number => daysBetween(`${d.slice(0, 4)}-01-01` as PlainDate, d) + 1;
/** Two-digit year and three-digit day of year, as in lot codes: 13 September 2025 = 25256. */
export const yearAndDay = (d: PlainDate): string => d.slice(2, 4) + String(dayOfYear(d)).padStart(3, '0');
/** Every day from `a` to `b`, both included. */
export const daysFrom = (a: PlainDate, b: PlainDate): PlainDate[] =>
  Array.from({ length: Math.max(0, daysBetween(a, b) + 1) }, (_, i) => addDays(a, i));

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
export const weekdayName = (d: PlainDate): string => WEEKDAYS[weekday(d)] as string;
export const monthName = (d: PlainDate): string => MONTHS[Number(d.slice(5, 7)) - 1] as string;
/** "12 September 2025". */
export const longDate = (d: PlainDate): string => `${Number(d.slice(8, 10))} ${monthName(d)} ${d.slice(0, 4)}`;
/** "Fri 12 Sep": the weekday is shown back so that day and month cannot be mistaken for each other. */
export const shortDate = (d: PlainDate): string =>
  `${weekdayName(d).slice(0, 3)} ${Number(d.slice(8, 10))} ${monthName(d).slice(0, 3)}`;

/** The calendar day of an instant in a time zone (IANA name), e.g. for a place's own "today". */
export function dayInZone(instant: Date, timeZone: string): PlainDate {
  return new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    instant,
  ) as PlainDate;
}

/** The instant at which a clock in a time zone shows this day and time (`HH:MM`); in the hour that DST skips, an hour later; in the hour that comes twice, the first. */
export function instantInZone(day: PlainDate, time: string, timeZone: string): Date {
  const asUtc = new Date(`${day}T${time}:00.000Z`);
  const shown = (at: Date): number => {
    const parts = new Intl.DateTimeFormat('en-CA', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    }).formatToParts(at);
    const of = (type: string) => parts.find((p) => p.type === type)?.value ?? '00';
    return Date.parse(`${of('year')}-${of('month')}-${of('day')}T${of('hour')}:${of('minute')}:00.000Z`);
  };
  const under = (rulesAt: number) => new Date(asUtc.getTime() - (shown(new Date(rulesAt)) - rulesAt));
  const before = under(asUtc.getTime() - DAY_MS);
  const after = under(asUtc.getTime() + DAY_MS);
  return shown(after) === asUtc.getTime() && shown(before) !== asUtc.getTime() ? after : before;
}
