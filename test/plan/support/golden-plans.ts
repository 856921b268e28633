/** The small plans with a known best worth, as typed instances. */

import type { PlanFuture, PlanInstance } from '#lib/plan/instance.ts';
import type { Tightenings } from '#lib/plan/tightenings.ts';
import golden from '#test/golden/planner-instances.json' with { type: 'json' };

export interface GoldenPlan {
  id: string;
  teaches: string;
  instance: PlanInstance;
  futures?: readonly PlanFuture[];
  firstStageDays?: number;
  tightenings?: Partial<Tightenings>;
  expect: { worth: number; relaxation: number; batches?: Record<string, number>; bought?: Record<string, number> };
}

export const goldenPlans = golden.cases as unknown as readonly GoldenPlan[];

export const goldenPlan = (id: string): GoldenPlan => {
  const found = goldenPlans.find((g) => g.id === id);
  if (!found) throw new RangeError(`no golden plan called ${id}`);
  return found;
};
