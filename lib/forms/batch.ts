/** The batch sheet's forms. */
import { z } from 'zod';
import { OWN_ACIDS, OWN_PECTINS, type OwnPectin } from '#lib/reference/recipes/own-recipe.ts';
import { actId, count, massG, measure, number, optional, tick, word } from './fields.ts';

const PECTINS = Object.keys(OWN_PECTINS) as OwnPectin[];
const grams = (what: string, max = 200_000) => massG({ what, min: 0, max });

/** What stands in the sheet's address: recipe, lots with their weights, and what the cook set. Weights in kg as typed. */
export const batchAskForm = z.object({
  recipe: word('the recipe'),
  lot: z.array(z.string().max(200)).min(1, 'choose the fruit first'),
  kg: z.array(number({ what: 'a weight', min: 0, max: 2000 })),
  trim: optional(number({ what: 'the trim', min: 0, max: 500 })),
  brix: optional(number({ what: 'the refractometer', min: 1, max: 85 })),
  water: optional(number({ what: 'the boiling water', min: 80, max: 103 })),
  pan: z.string().max(60).optional(),
  kitchen: z.string().max(120).optional(),
  jar: z.string().max(20).optional(),
  batches: optional(count({ what: 'how many batches', min: 1, max: 20 })),
  sugar: optional(measure('the sugar for each batch', 'kg')),
  pectin: optional(measure('the pectin for each batch', 'g')),
  acid: optional(measure('the acid for each batch', 'g')),
  stock: optional(grams('the pectin stock for each batch', 10_000)),
  pectinFrom: z.enum(['', 'none', ...PECTINS]).optional(),
  acidFrom: z.enum(['', 'none', ...OWN_ACIDS]).optional(),
  softset: z.enum(['', 'accept', 'sauce']).optional(),
  addwater: optional(number({ what: 'the water for each batch', min: 0, max: 30 })),
});
export type BatchAskForm = z.infer<typeof batchAskForm>;
export const BATCH_LISTS = ['lot', 'kg'] as const;

export const startForm = z.object({ id: actId });

export const readingForm = z.object({
  id: actId,
  code: word('the batch'),
  kind: z.enum(['temperature', 'weight', 'brix', 'set-test']),
  value: number({ what: 'the reading', min: 0, max: 200 }),
});

export const stoveMarkForm = z.object({ id: actId, code: word('the batch') });

export const setTestForm = z.object({
  id: actId,
  code: word('the batch'),
  result: count({ what: 'the set test', min: 0, max: 2 }),
  tempC: optional(number({ what: 'the thermometer', min: 0, max: 200 })),
});

export const fillForm = z.object({
  id: actId,
  code: word('the batch'),
  jars: count({ what: 'jars filled', min: 0, max: 500 }),
  partialG: grams('the partial jar'),
  skimmingsG: grams('the skimmings'),
  panLossG: grams('what stuck to the pan'),
  trimG: optional(grams('the trim')),
  keepTrim: tick,
  seedsOut: tick,
  brownCore: tick,
});

export const setForm = z.object({
  id: actId,
  code: word('the batch'),
  set: z.enum(['0', '1', '2'], { error: 'say how it set' }).transform((v) => Number(v) as 0 | 1 | 2),
});

export const processForm = z.object({
  id: actId,
  codes: z.array(z.string().max(60)).min(1, 'no batch was named'),
  step: z.enum(['boiling', 'out']),
  whole: tick,
  minutes: optional(count({ what: 'minutes at a full boil', min: 0, max: 600 })),
  deviation: z
    .string()
    .trim()
    .max(120)
    .optional()
    .transform((v) => v || null),
});

/** Numbers of the jars ticked, and the way they go. */
export const takeOutForm = z.object({
  id: actId,
  code: word('the batch'),
  pieces: z
    .array(count({ what: 'the number of a jar', min: 1, max: 999 }), 'tick the jars first')
    .min(1, 'tick the jars first'),
  way: z.enum(['fridge', 'freezer', 'process again', 'discard']),
});
export const remakeForm = takeOutForm.omit({ way: true });
export const OUT_LISTS = ['pieces'] as const;

export const deviationForm = z.object({ id: actId, code: word('the batch'), what: word('what was different') });

export const sealForm = z.object({ id: actId, code: word('the batch'), address: word('the shelf', 20) });
