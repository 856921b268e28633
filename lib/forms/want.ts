/** What the household wants of a line. */
import { z } from 'zod';
import { actId, count, word } from './fields.ts';

export const wantForm = z.object({
  id: actId,
  recipe: word('the line'),
  pieces: z.union([z.literal('').transform(() => null), count({ what: 'jars or packs a year', min: 0, max: 5000 })]),
});
