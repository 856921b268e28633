/** The shed screen's form where the browser runs no script. */
import { z } from 'zod';
import { actId, count, number, optional, plainDay, tick, word } from './fields.ts';

const weight = (what: string) => number({ what, min: 0, max: 2000 });

export const plainHarvest = z.object({
  id: actId,
  day: plainDay,
  row: word('the row'),
  gross: weight('the weight'),
  unit: z.enum(['kg', 'lb']),
  container: word('the container'),
  containerCount: count({ what: 'how many containers', min: 0, max: 99 }),
  'grade-blemished': optional(weight('blemished')),
  'grade-soft': optional(weight('soft')),
  'grade-cull': optional(weight('cull')),
  groundFall: tick.optional().transform((v) => v ?? false),
});
export type PlainHarvest = z.infer<typeof plainHarvest>;
