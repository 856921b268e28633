/** A picking, as the shed screen or the queue of a phone sends it. */
import { z } from 'zod';
import { actId, word } from './fields.ts';

const grams = z.number().int().min(-100_000, 'a weight is far below zero').max(2_000_000, 'a weight is above 2 000 kg');

export const harvestAct = z.object({
  id: actId,
  rowId: word('the row'),
  day: z.string().trim(),
  at: z.iso.datetime({ offset: true }).nullable().default(null),
  readings: z
    .array(
      z.object({
        text: z.string().max(20).default(''),
        unit: z.enum(['kg', 'lb']).default('kg'),
        containerId: z.string().max(80).default(''),
        containerCount: z.number().int().min(0).max(99).default(1),
        grossG: grams,
        tareG: grams,
      }),
    )
    .max(60),
  grades: z.partialRecord(z.enum(['perfect', 'blemished', 'soft', 'cull']), grams),
  groundFall: z.boolean().default(false),
  nothing: z.string().max(80).nullable().default(null),
  /** Containers that stand full and were not weighed yet. */
  unweighed: z
    .object({ containerId: z.string().max(80), count: z.number().int().min(1).max(99) })
    .nullable()
    .default(null),
  person: z.string().max(40).nullable().default(null),
  device: z.string().max(80).nullable().default(null),
});
export type HarvestForm = z.infer<typeof harvestAct>;
