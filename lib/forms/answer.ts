/** What a question turned out to be. */
import { z } from 'zod';
import { actId, massKg, optional, word } from './fields.ts';

export const answerForm = z
  .object({
    id: actId,
    question: word('the question'),
    way: z.enum(['none', 'left', 'all', 'line', 'same', 'other']),
    line: optional(z.string().trim().max(120)),
    kg: optional(massKg({ what: 'the other bucket', min: 0.001, max: 2000 })),
  })
  .transform(({ kg, ...a }) => ({ ...a, grams: kg }));
