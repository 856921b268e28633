/** How many weeks each line lasts once a plan is carried out: what is on hand and what it makes, by what left in the last year. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Plan } from '#lib/plan/plan.ts';

export interface SupplyAfter {
  name: string;
  weeks: number;
}

const WEEKS_A_YEAR = 365 / 7;
/** Longer than this nobody counts weeks. */
const MOST_WEEKS = 260;

/** Lines the plan makes in jars and of which the household's use is known, shortest first. */
export function supplyAfter(
  p: PlanInstance,
  plan: Plan,
  q: { lots: readonly HeldLot[]; used: ReadonlyMap<string, number> },
): SupplyAfter[] {
  const made = new Map<string, number>();
  for (const j of plan.jars) made.set(j.recipe, (made.get(j.recipe) ?? 0) + j.count);
  return [...made.entries()]
    .flatMap(([recipe, count]): SupplyAfter[] => {
      const yearly = q.used.get(recipe);
      if (!yearly || count < 0.5) return [];
      const onHand = q.lots.filter((l) => l.kind === 'jars' && l.recipeId === recipe).reduce((n, l) => n + l.onHand, 0);
      const weeks = Math.min(MOST_WEEKS, ((onHand + count) / yearly) * WEEKS_A_YEAR);
      return [{ name: p.recipes.find((r) => r.id === recipe)?.name ?? recipe, weeks }];
    })
    .sort((a, b) => a.weeks - b.weeks);
}
