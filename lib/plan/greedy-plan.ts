/**
 * A careful person's plan, in milliseconds and feasible by construction: day by day, eat and sell fresh, then cook the
 * batch that pays best per hour, what perishes first going first; dry the leftovers; keep or compost the rest.
 * Pinned batches are cooked first on their day, as far as they fit. Purchases are entered on the last shop day before they are needed, so nothing is bought in vain.
 */
import { cookBest, cookPinned } from './greedy/cook-best.ts';
import { dryLeftovers } from './greedy/dry-leftovers.ts';
import { finishFruit, sellFresh } from './greedy/fresh-outlets.ts';
import { type GreedyRule, GreedyState } from './greedy/greedy-state.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import { planWorth } from './plan-worth.ts';

const RULES: readonly GreedyRule[] = [true, false].flatMap((urgentFirst) =>
  [0.5, 3].flatMap((leastNet) =>
    [true, false].flatMap((perHour) =>
      [true, false].map((sellFirst) => ({ urgentFirst, leastNet, perHour, sellFirst })),
    ),
  ),
);

/** The plan by one rule. */
export function greedyPlan(
  instance: PlanInstance,
  rule: GreedyRule = { urgentFirst: true, leastNet: 1, perHour: true, sellFirst: true },
): Plan {
  const state = new GreedyState(instance);
  let wanted = rule.must !== undefined;
  for (let day = 0; day < instance.horizon; day++) {
    for (const pin of (instance.pins ?? []).filter((x) => x.day === day))
      for (let i = 0; i < pin.batches && cookPinned(state, day, pin); i++);
    if (wanted && rule.must !== undefined && cookPinned(state, day, { recipe: rule.must })) wanted = false;
    sellFresh(state, day, rule.sellFirst ? ['eat', 'sell', 'press'] : ['eat']);
    while (cookBest(state, day, rule));
    dryLeftovers(state, day);
    finishFruit(state, day);
  }
  return state.finish();
}

/** The plans by all rules (each with a batch of `must` if that can be), best worth first; equal worth keeps the order of the rules. */
export function greedyPlans(instance: PlanInstance, must?: string): Plan[] {
  const plans = RULES.map((rule) => greedyPlan(instance, must === undefined ? rule : { ...rule, must })).map(
    (plan) => ({ plan, worth: planWorth(instance, plan).total }),
  );
  return plans.sort((a, b) => b.worth - a.worth).map((x) => x.plan);
}
