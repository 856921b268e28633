/**
 * What a person asked of the plan, as it stands in the address of the page: hours today and from when, lids counted tonight,
 * batches to keep, recipes to leave out.
 */
import { z } from 'zod';
import type { PlanPin } from '#lib/plan/instance.ts';
import { addDays, daysBetween, isPlainDate, type PlainDate } from '#lib/units/plain-date.ts';

export interface PlanAsked {
  /** Free hours today, all people together; null = as the week says. */
  hours: number | null;
  /** Minutes after midnight the kitchen is lit today; null = as the week says, and not before now. */
  from: number | null;
  /** Lids at hand, counted tonight; null = as the book says. */
  lids: number | null;
  /** 0 batches: not on that day. */
  keep: readonly { recipe: string; day: PlainDate; batches: number }[];
  without: readonly string[];
}

export const NOTHING_ASKED: PlanAsked = { hours: null, from: null, lids: null, keep: [], without: [] };
const MOST_HOURS = 24;
const MOST_LIDS = 9999;

const typedHours = z.preprocess(
  (v) => (typeof v === 'string' ? v.trim().replace(',', '.') : v),
  z.union([z.literal('').transform(() => null), z.coerce.number().min(0).max(MOST_HOURS)]),
);
const list = (v: unknown): string[] => [v ?? []].flat().filter((x): x is string => typeof x === 'string');

const typedLids = z.preprocess(
  (v) => (typeof v === 'string' ? v.trim() : v),
  z.union([z.literal('').transform(() => null), z.coerce.number().int().min(0).max(MOST_LIDS)]),
);
/** "20:30" or "" in minutes after midnight. */
const typedFrom = z.union([
  z.literal('').transform(() => null),
  z
    .string()
    .trim()
    .regex(/^([01]?\d|2[0-3]):[0-5]\d$/)
    .transform((t) => Number(t.split(':')[0]) * 60 + Number(t.split(':')[1])),
]);

/** Reads what it can; what it cannot read is left out, and figures out of range are named. */
export function planAsked(typed: Record<string, unknown>): { asked: PlanAsked; wrong: string | null } {
  const hours = typedHours.safeParse(typed.hours ?? '');
  const from = typedFrom.safeParse(typed.from ?? '');
  const lids = typedLids.safeParse(typed.lids ?? '');
  const keep = list(typed.keep).flatMap((text) => {
    const [, recipe, day, batches] = /^([a-z0-9-]+)@(\d{4}-\d{2}-\d{2})\*(\d)$/.exec(text) ?? [];
    return recipe && day && isPlainDate(day) ? [{ recipe, day, batches: Number(batches) }] : [];
  });
  const without = [...new Set(list(typed.without).filter((x) => /^[a-z0-9-]+$/.test(x)))].sort();
  const wrong = [
    hours.success ? '' : `Hours free today are a number from 0 to ${MOST_HOURS}.`,
    from.success ? '' : 'The time to begin is hours and minutes, such as 20:30.',
    lids.success ? '' : `Lids at hand are a whole number from 0 to ${MOST_LIDS}.`,
  ].filter((w) => w !== '');
  return {
    asked: {
      hours: hours.success ? hours.data : null,
      from: from.success ? from.data : null,
      lids: lids.success ? lids.data : null,
      keep: keep.filter((k) => !without.includes(k.recipe)),
      without,
    },
    wrong: wrong.length > 0 ? wrong.join(' ') : null,
  };
}

export const timeText = (minutes: number): string =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

/** What stands in an address, asked again. */
export function askedOfQuery(query: string): PlanAsked {
  const q = new URLSearchParams(query);
  const one = (key: string) => q.get(key) ?? '';
  return planAsked({
    hours: one('hours'),
    from: one('from'),
    lids: one('lids'),
    keep: q.getAll('keep'),
    without: q.getAll('without'),
  }).asked;
}

/** The same as an address query, in one order, so that equal askings are one address. */
export function planQuery(a: PlanAsked): string {
  const q = new URLSearchParams();
  if (a.hours !== null) q.set('hours', String(a.hours));
  if (a.from !== null) q.set('from', timeText(a.from));
  if (a.lids !== null) q.set('lids', String(a.lids));
  for (const k of [...a.keep].sort((x, y) => (x.day + x.recipe < y.day + y.recipe ? -1 : 1)))
    q.append('keep', `${k.recipe}@${k.day}*${k.batches}`);
  for (const w of a.without) q.append('without', w);
  return q.toString();
}

export const planHref = (a: PlanAsked): string => {
  const query = planQuery(a);
  return query ? `/plan?${query}` : '/plan';
};

export const pinsOf = (a: PlanAsked, today: PlainDate, horizon: number): PlanPin[] =>
  a.keep
    .map((k) => ({
      recipe: k.recipe,
      day: daysBetween(today, k.day),
      batches: k.batches,
      ...(k.batches === 0 ? { exact: true } : {}),
    }))
    .filter((p) => p.day >= 0 && p.day < horizon);

export const dayOfPlan = (today: PlainDate, day: number): PlainDate => addDays(today, day);
