/**
 * "Why not this recipe?" and "why this one?": the plan is solved again with at least one batch of it, or with none, from
 * the plan in hand. The drop in worth is the answer; what is displaced is told with it.
 */
import type { Breach } from './check/breach.ts';
import type { PlanInstance } from './instance.ts';
import { fruitThere, kitchenSlots } from './kitchen-slots.ts';
import { batchCount, type Plan } from './plan.ts';
import type { SolvedPlan, SolveHooks, SolveOptions } from './solve-options.ts';
import { solvePlan } from './solve-plan.ts';
import { ALL_TIGHTENINGS } from './tightenings.ts';

export interface WhyNot {
  recipe: string;
  /** True: the other plan makes it; false: the other plan leaves it out. */
  made: boolean;
  /** 'solved', or why no plan can hold it. */
  answer: 'solved' | 'no fruit for the least batch on any day' | 'no day has both hands and fruit for the least batch';
  /** Money by which the other plan is worth less; null when there is none. */
  loss: number | null;
  /** The loss lies within what is not proven: call the two as good as equal. */
  withinGap: boolean;
  /** Batches by recipe, other plan minus plan in hand; only those that differ. */
  changed: Readonly<Record<string, number>>;
  shortages: readonly Breach[];
  /** The other plan; null when there is none. */
  plan: Plan | null;
}

export async function whyNot(
  instance: PlanInstance,
  recipe: string,
  inHand: Pick<SolvedPlan, 'plan' | 'worth' | 'bound'>,
  ask: { options?: SolveOptions; hooks?: SolveHooks } = {},
): Promise<WhyNot> {
  const made = !inHand.plan.cooked.some((c) => c.recipe === recipe && batchCount(c) > 0);
  const hopeless = made ? noChance(instance, recipe) : null;
  const none = { recipe, made, loss: null, withinGap: false, changed: {}, shortages: [], plan: null };
  if (hopeless) return { ...none, answer: hopeless };
  const other = await solvePlan(instance, { ...ask.options, forced: { recipe, made } }, ask.hooks);
  const loss = inHand.worth - other.worth;
  const unproven = inHand.bound - inHand.worth + (other.bound - other.worth);
  return {
    ...none,
    answer: 'solved',
    loss,
    withinGap: Math.abs(loss) <= Math.max(1e-6, unproven),
    changed: changedBatches(inHand.plan, other.plan),
    shortages: other.check.breaches.filter((b) => b.priced),
    plan: other.plan,
  };
}

/** No solver is needed when no day has room for the least batch. */
function noChance(p: PlanInstance, id: string): WhyNot['answer'] | null {
  const recipe = p.recipes.find((r) => r.id === id);
  if (!recipe) throw new RangeError(`no recipe called ${id}`);
  const one = { ...p, recipes: [recipe] };
  if (kitchenSlots(one, { tightenings: ALL_TIGHTENINGS, pinned: () => 0 }).length > 0) return null;
  const least = Math.min(...recipe.modes.map((m) => m.minKg));
  const fruit = p.days.some((_, day) => fruitThere(p, recipe, day) >= Math.max(least, 1e-9));
  return fruit ? 'no day has both hands and fruit for the least batch' : 'no fruit for the least batch on any day';
}

function changedBatches(from: Plan, to: Plan): Record<string, number> {
  const count = (plan: Plan, recipe: string) =>
    plan.cooked.filter((c) => c.recipe === recipe).reduce((n, c) => n + batchCount(c), 0);
  const recipes = [...new Set([...from.cooked, ...to.cooked].map((c) => c.recipe))];
  return Object.fromEntries(recipes.map((r) => [r, count(to, r) - count(from, r)] as const).filter(([, n]) => n !== 0));
}
