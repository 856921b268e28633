import { z } from 'zod';
import { actId, count, word } from './fields.ts';

/** Jars leaving a line. A bare "take one" is one jar, eaten. */
export const takeForm = z.object({
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
});
