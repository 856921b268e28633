/** What a check finds, and small helpers with which the checks state a limit once. */

/** Tolerance on every sum: the solver works to 1e-6 or so. */
export const CHECK_TOLERANCE = 1e-5;

export interface Breach {
  rule: string;
  /** What it is about, as ids. */
  ids: readonly string[];
  day: number | null;
  used: number;
  limit: number;
  /** True when the plan pays for it (a shortage of a pinned plan, a full shelf): possible on paper, not in the kitchen. */
  priced: boolean;
}

type Where = Pick<Breach, 'rule' | 'ids' | 'day'>;

/** A breach when `used` is above `limit` (or not a number). */
export const above = (at: Where, used: number, limit: number, priced = false): Breach[] =>
  used <= limit + CHECK_TOLERANCE * Math.max(1, Math.abs(limit) === Infinity ? 1 : Math.abs(limit))
    ? []
    : [{ ...at, used, limit, priced }];

/** A breach when `used` is below `limit`. */
export const below = (at: Where, used: number, limit: number, priced = false): Breach[] =>
  used >= limit - CHECK_TOLERANCE * Math.max(1, Math.abs(limit)) ? [] : [{ ...at, used, limit, priced }];

/** A breach when the two differ. */
export const unequal = (at: Where, used: number, limit: number): Breach[] => [
  ...above(at, used, limit),
  ...below(at, used, limit),
];

/** A breach for something that may not be at all. */
export const forbidden = (at: Where, used: number): Breach[] => [{ ...at, used, limit: 0, priced: false }];

/** Adds up amounts by a key. */
export function totals<T>(list: readonly T[], key: (x: T) => string, amount: (x: T) => number): Map<string, number> {
  const sums = new Map<string, number>();
  for (const x of list) sums.set(key(x), (sums.get(key(x)) ?? 0) + amount(x));
  return sums;
}
