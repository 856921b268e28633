/** Fruit that was bought or given: what, from whom, how much, the grade, the day. */
import { z } from 'zod';
import { actId, number, plainDay, tick, toGrams, word } from './fields.ts';

const maybeWord = (what: string, longest: number) =>
  z
    .string()
    .trim()
    .max(longest, `${what} is longer than ${longest} letters`)
    .optional()
    .transform((v) => v || null);

export const fruitReceivedForm = z
  .object({
    id: actId,
    foodId: word('the fruit'),
    supplier: word('from whom', 80),
    weight: number({ what: 'the weight', min: 0.01, max: 2000 }),
    unit: z.enum(['kg', 'lb']),
    grade: z.enum(['perfect', 'blemished', 'soft'], { error: 'choose a grade' }),
    groundFall: tick.optional().transform((v) => v ?? false),
    day: plainDay,
    boxLot: maybeWord('the lot on the box', 60),
  })
  .transform(({ weight, unit, ...rest }) => ({ ...rest, grams: toGrams(weight, unit), typed: `${weight} ${unit}` }));
export type FruitReceived = z.infer<typeof fruitReceivedForm>;
