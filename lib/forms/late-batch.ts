/** A batch that is logged late, from memory; later what stands there and how it was processed. */
import { z } from 'zod';
import { actId, count, number, optional, plainDay, tick, word } from './fields.ts';

export const lateBatchForm = z.object({
  id: actId,
  recipeId: word('the recipe'),
  day: plainDay,
  jar: word('the jar', 12),
  about: count({ what: 'about how many jars', min: 1, max: 500 }),
});

export const stateLateForm = z.object({
  id: actId,
  lot: word('the lot', 60),
  sealed: count({ what: 'the sealed jars', min: 0, max: 500 }),
  minutes: optional(number({ what: 'minutes at a full boil', min: 1, max: 300 })),
  asWritten: tick.optional().transform((v) => v ?? false),
});
