/** A freezer or fridge that has stopped: which, when; and what became of the things in it. */
import { z } from 'zod';
import { actId, massKg, optional, plainDay, word } from './fields.ts';

const clock = (what: string) =>
  z
    .string()
    .trim()
    .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, `${what} is a time of day, 02:10`);

export const outageForm = z.object({
  id: actId,
  room: word('which one', 60),
  failedDay: plainDay,
  failedTime: optional(clock('when it failed')),
  foundTime: clock('when it was found'),
});

const base = { id: actId, outage: word('the failure', 120) };
/** One or more lines of what is in it, by their names in addresses, the first to go first. */
const lines = z
  .string()
  .transform((v) => v.split(',').filter((l) => l !== ''))
  .pipe(z.array(z.string().max(80)).min(1, 'say which things').max(60));

export const rescueForm = z.object({
  ...base,
  lines,
  did: z.enum(['kept', 'fridge', 'thawed', 'moved', 'thrown', 'back'], 'say what became of it'),
  /** Empty: all that is left of it. */
  kg: optional(massKg({ what: 'how much', min: 0.05, max: 1000 })),
  to: z
    .string()
    .trim()
    .max(60)
    .optional()
    .transform((v) => v || null),
});
