import { z } from 'zod';
import { actId, count, number, optional, word } from './fields.ts';

/** Jars leaving a line. A bare "take one" is one jar, eaten. */
const fields = z.object({
  id: actId,
  slug: word('the line'),
  count: z.preprocess((v) => v ?? '1', count({ what: 'how many', min: 1, max: 500 })),
  to: z.enum(['eaten', 'given', 'sold', 'spoiled']).default('eaten'),
  who: z
    .string()
    .trim()
    .max(80)
    .optional()
    .transform((v) => v || null),
  lot: z
    .string()
    .trim()
    .max(60)
    .optional()
    .transform((v) => v || null),
  /** Typed in the household's money, kept in its smallest coin. */
  price: optional(number({ what: 'what was paid', min: 0, max: 10_000 }).transform((n) => Math.round(n * 100))),
});

/** A button with a name on it gives to that person, whatever stands in the field beside it. */
export const takeForm = z.preprocess((raw) => {
  const typed = raw as Record<string, unknown>;
  return typed?.give ? { ...typed, to: 'given', who: typed.give } : raw;
}, fields);

/** The same as an act from a device. */
export const takeAct = fields.and(
  z.object({ what: z.literal('take'), at: z.iso.datetime({ offset: true }).nullable().default(null) }),
);

export const bringBackForm = z.object({
  id: actId,
  jar: word('the jar', 12),
  count: count({ what: 'how many', min: 1, max: 500 }),
});
