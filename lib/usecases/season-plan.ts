/** The batches of the plan in force that still lie ahead, by recipe and day. */
import { z } from 'zod';
import type { StoredPlan } from '#lib/store/plan-store.ts';
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';

const cookedRow = z.object({ recipe: z.string(), day: z.number(), batches: z.array(z.object({ count: z.number() })) });
const planRow = z.object({ cooked: z.array(cookedRow) });
const resultRow = z.union([planRow, z.object({ plan: planRow }).transform((r) => r.plan)]);

export interface BatchAhead {
  recipeId: string;
  day: PlainDate;
  batches: number;
}

/** None where no plan is in force, or its result is of a kind this reader does not know. */
export function batchesAhead(plan: StoredPlan | null, today: PlainDate): BatchAhead[] {
  const result = resultRow.safeParse(plan?.result);
  if (!plan || !result.success) return [];
  return result.data.cooked
    .map((c) => ({
      recipeId: c.recipe,
      day: addDays(plan.day, c.day),
      batches: c.batches.reduce((n, b) => n + b.count, 0),
    }))
    .filter((b) => b.batches > 0 && daysBetween(today, b.day) >= 0);
}
