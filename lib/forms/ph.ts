/** The form of a pH reading with its two buffers, and the one that forgets what was learnt. */
import { z } from 'zod';
import { actId, number, word } from './fields.ts';

const onMeter = (what: string) => number({ what, min: 0, max: 14 });

export const phForm = z.object({
  id: actId,
  code: word('the batch'),
  pH: onMeter('the pH of the product'),
  lowRead: onMeter('what the meter read in the 4.01 buffer'),
  highNominal: z.enum(['7.00', '6.86']).transform(Number),
  highRead: onMeter('what the meter read in the upper buffer'),
  jar: z
    .string()
    .trim()
    .max(60)
    .optional()
    .transform((v) => v || null),
});

export const forgetForm = z.object({ id: actId });
