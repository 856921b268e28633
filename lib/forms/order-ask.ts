/** What an order is asked with: it stands in the page's address, so that the same list can be opened, printed and sent again. */
import { z } from 'zod';
import { isPlainDate, type PlainDate } from '#lib/units/plain-date.ts';

const count = (what: string, most: number) =>
  z
    .string()
    .trim()
    .regex(/^\d+$/, `${what} is a whole number, 0 to ${most}`)
    .transform(Number)
    .refine((n) => n <= most, `${what} is at most ${most}`);

export interface OrderAsk {
  by: PlainDate | null;
  /** By jar kind: fills of the year, of them before the date, and jars expected back by then; what is left out is reckoned. */
  jars: Record<string, { fills?: number; before?: number; back?: number; per?: number }>;
  boxOf?: number;
  bagKg?: number;
}
export interface ReadOrderAsk {
  ask: OrderAsk;
  /** What was typed and is not a number that can be ordered by; it is named and left aside. */
  problems: string[];
}

const FIELDS = {
  fills: ['Fills', 20_000],
  before: ['Before the date', 20_000],
  back: ['Expected back', 20_000],
} as const;

/** `fills-HP=530&before-HP=500&back-HP=176&per-HP=12&by=2026-11-01&box=12&bag=25`. */
export function readOrderAsk(
  query: Record<string, string | string[] | undefined>,
  codes: readonly string[],
): ReadOrderAsk {
  const problems: string[] = [];
  const text = (key: string) => {
    const value = query[key];
    return typeof value === 'string' && value.trim() !== '' ? value : undefined;
  };
  const number = (key: string, what: string, most: number, least = 0): number | undefined => {
    const typed = text(key);
    if (typed === undefined) return undefined;
    const read = count(what, most).safeParse(typed);
    if (read.success && read.data >= least) return read.data;
    problems.push(`${what}: “${typed}” is not a whole number from ${least} to ${most}`);
    return undefined;
  };
  const jars: OrderAsk['jars'] = {};
  for (const code of codes) {
    const row: OrderAsk['jars'][string] = {};
    for (const [field, [what, most]] of Object.entries(FIELDS) as [keyof typeof FIELDS, readonly [string, number]][]) {
      const n = number(`${field}-${code}`, `${what}, ${code}`, most);
      if (n !== undefined) row[field] = n;
    }
    const per = number(`per-${code}`, `Jars in a case, ${code}`, 144, 1);
    if (per !== undefined) row.per = per;
    jars[code] = row;
  }
  const by = text('by');
  if (by !== undefined && !isPlainDate(by)) problems.push(`“${by}” is not a day`);
  const boxOf = number('box', 'Lids in a box', 1000, 1);
  const bagKg = number('bag', 'Kilograms in a bag of sugar', 50, 1);
  return {
    ask: {
      by: by !== undefined && isPlainDate(by) ? by : null,
      jars,
      ...(boxOf === undefined ? {} : { boxOf }),
      ...(bagKg === undefined ? {} : { bagKg }),
    },
    problems,
  };
}
