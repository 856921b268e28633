/** "Why not this recipe?", planned again with a batch of it; where that cannot be, with it pinned, so that the clashing limits are named. */
import { checkPlan } from '#lib/plan/check-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { fruitThere } from '#lib/plan/kitchen-slots.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { whyNot } from '#lib/plan/why-not.ts';
import { PLAN_SEED } from './plan-search.ts';

export interface WhyInput {
  instance: PlanInstance;
  recipe: string;
  plan: Plan;
  /** Proven for these data; null when nothing is. */
  bound: number | null;
}

export interface WhySolved {
  /** The other plan makes it (else leaves it out). */
  made: boolean;
  /** Money the other plan is worth less; null where none was found. */
  loss: number | null;
  equal: boolean;
  /** Batches by recipe, other plan minus plan in hand. */
  changed: Readonly<Record<string, number>>;
  plan: Plan;
  /** The data it was planned with: the recipe by itself where no whole plan was found, with a pin where that does not fit either. */
  instance: PlanInstance;
  /** Day of its first batch; null when it makes none, or none that can be carried out. */
  day: number | null;
}

const WHY_SECONDS = 4;

export async function solveWhy(q: WhyInput): Promise<WhySolved> {
  const inHand = {
    plan: q.plan,
    worth: checkPlan(q.instance, q.plan).worth.total,
    bound: q.bound ?? Number.POSITIVE_INFINITY,
  };
  const options = { seconds: WHY_SECONDS, seed: PLAN_SEED };
  const other = await whyNot(q.instance, q.recipe, inHand, { options }).catch(() => null);
  if (other?.plan)
    return {
      made: other.made,
      loss: other.loss,
      equal: other.withinGap,
      changed: other.changed,
      plan: other.plan,
      instance: q.instance,
      day: other.plan.cooked.find((c) => c.recipe === q.recipe)?.day ?? null,
    };
  const none = { made: true, loss: null, equal: false, changed: {} };
  const alone = byItself(q.instance, q.recipe);
  const fits = await solvePlan(alone, { ...options, forced: { recipe: q.recipe, made: true } }).catch(() => null);
  if (fits)
    return {
      ...none,
      plan: fits.plan,
      instance: alone,
      day: fits.plan.cooked.find((c) => c.recipe === q.recipe)?.day ?? null,
    };
  const instance = pinned(alone, q.recipe);
  return { ...none, plan: (await solvePlan(instance, options)).plan, instance, day: null };
}

/** The recipe and what a person keeps, and nothing else in the kitchen: what does not fit so, fits in no plan. */
function byItself({ former: _, variety: __, ...p }: PlanInstance, id: string): PlanInstance {
  const recipes = p.recipes.filter((r) => r.id === id || p.pins?.some((x) => x.recipe === r.id));
  return { ...p, recipes, products: p.products.filter((x) => recipes.some((r) => r.product === x.id)) };
}

/** One batch on the day with most of its fruit. */
function pinned(p: PlanInstance, id: string): PlanInstance {
  const recipe = p.recipes.find((r) => r.id === id);
  if (!recipe) throw new RangeError(`no recipe called ${id}`);
  const fruit = p.days.map((_, day) => fruitThere(p, recipe, day));
  const day = fruit.indexOf(Math.max(...fruit));
  return { ...p, pins: [...(p.pins ?? []), { recipe: id, day, batches: 1 }] };
}
