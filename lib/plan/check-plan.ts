/**
 * The second opinion on every plan, whoever made it: each limit is added up again from the data, never from the
 * solver's matrix. Answers with every breach, in trade words, by how much.
 */

import type { Breach } from './check/breach.ts';
import { fruitBreaches } from './check/fruit-breaches.ts';
import { kitchenBreaches } from './check/kitchen-breaches.ts';
import { panBreaches } from './check/pan-breaches.ts';
import { supplyBreaches } from './check/supply-breaches.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import { type PlanTally, planTally } from './plan-tally.ts';
import { type PlanWorth, planWorth } from './plan-worth.ts';

export interface PlanCheck {
  breaches: readonly Breach[];
  /** No breach at all: the plan can be carried out. */
  doable: boolean;
  /** No breach but priced ones: the plan fits the model. */
  consistent: boolean;
  worth: PlanWorth;
  tally: PlanTally;
}

export function checkPlan(instance: PlanInstance, plan: Plan): PlanCheck {
  const tally = planTally(instance, plan);
  const breaches = [
    ...fruitBreaches(instance, plan),
    ...panBreaches(instance, plan),
    ...kitchenBreaches(instance, plan, tally),
    ...supplyBreaches(instance, plan, tally),
  ];
  return {
    breaches,
    doable: breaches.length === 0,
    consistent: breaches.every((b) => b.priced),
    worth: planWorth(instance, plan, tally),
    tally,
  };
}
