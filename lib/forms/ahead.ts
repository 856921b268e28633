/** The questions of "think it through", as they stand in the address: how much, where, and what is exchanged. */
import { z } from 'zod';
import { OWN_ACIDS, OWN_PECTINS, type OwnPectin } from '#lib/reference/recipes/own-recipe.ts';
import { count, number, optional } from './fields.ts';

const PECTINS = ['none', ...(Object.keys(OWN_PECTINS) as OwnPectin[])] as const;
const ACIDS = ['none', ...OWN_ACIDS] as const;
const oneOf = <T extends string>(list: readonly T[]) =>
  z
    .string()
    .optional()
    .transform((v): T | null => list.find((x) => x === v) ?? null);
const code = z
  .string()
  .max(120)
  .optional()
  .transform((v) => v || null);

export const aheadForm = z
  .object({
    by: z.enum(['kg', 'jars', 'pan']).optional(),
    amount: optional(number({ what: 'how much', min: 0.05, max: 2000 })),
    kitchen: code,
    pan: code,
    jar: code,
    pectin: oneOf(PECTINS),
    pectinG: optional(number({ what: 'the pectin', min: 0, max: 1000 })),
    acid: oneOf(ACIDS),
    acidG: optional(number({ what: 'the acid', min: 0, max: 500 })),
    measuredPh: optional(number({ what: 'the measured pH', min: 2, max: 7 })),
  })
  .transform(({ by, amount, pectin, pectinG, acid, acidG, ...rest }, ctx) => {
    if (
      by === 'jars' &&
      amount !== null &&
      !count({ what: 'jars', min: 1, max: 2000 }).safeParse(String(amount)).success
    )
      ctx.addIssue({ code: 'custom', message: `jars is ${amount}; it must be a whole number from 1 to 2000` });
    return {
      ...rest,
      jars: by === 'jars' ? amount : null,
      fillPan: by === 'pan',
      kg: by === 'kg' || by === undefined ? amount : null,
      pectin: pectin && { item: pectin, gPerKg: pectinG },
      acid: acid && { item: acid, gPerKg: acidG },
    };
  });
