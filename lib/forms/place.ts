/** What is changed about a place. */
import { z } from 'zod';
import { actId, count, number, temperature, word } from './fields.ts';

export const boughtForm = z.object({
  id: actId,
  item: word('what was bought'),
  qty: number({ what: 'how much', min: 0.001, max: 200_000 }),
  supplier: z
    .string()
    .trim()
    .max(80)
    .optional()
    .transform((v) => v || null),
});

const monthDay = (what: string) =>
  z.iso.date({ error: `${what} is not a day of the calendar` }).transform((d) => d.slice(5));

export const cropForm = z
  .object({
    foodId: word('the fruit'),
    label: word('its name', 60),
    row: word('the row', 12),
    count: count({ what: 'how many', min: 1, max: 10_000 }),
    unit: z.enum(['tree', 'bush', 'plant', 'crown', 'metre of row']),
    kgPerUnit: number({ what: 'kilograms of each in an ordinary year', min: 0.05, max: 400 }),
    windowFrom: monthDay('the first picking day'),
    windowTo: monthDay('the last picking day'),
  })
  .refine((c) => c.windowFrom < c.windowTo, {
    message: 'the last picking day must come after the first',
    path: ['windowTo'],
  });

export const waterForm = z.object({
  id: actId,
  kitchenId: word('the kitchen'),
  centiC: temperature({ what: 'the boiling water', min: 80, max: 103 }),
});
