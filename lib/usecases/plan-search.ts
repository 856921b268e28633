/** One search, from plain input to what is kept of it. Runs in the thread, or in place where there is none. */
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { type PlanProgress, planGap } from '#lib/plan/solve-options.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import type { FoundPlan } from './propose-plan.ts';

/** One seed for every search: what differs between two then comes from their data and their time. */
export const PLAN_SEED = 1;

export interface SearchInput {
  instance: PlanInstance;
  seconds: number;
  /** Best plan and proven bound of an earlier search of the same data. */
  start: { plan: Plan; bound: number | null } | null;
  /** One word of memory shared with the page's process: 1 = stop and give the best so far. */
  stop: SharedArrayBuffer;
}

export async function searchPlan(q: SearchInput, progress: (p: PlanProgress) => void): Promise<FoundPlan> {
  const stop = new Int32Array(q.stop);
  const solved = await solvePlan(
    q.instance,
    { seconds: q.seconds, seed: PLAN_SEED, ...(q.start ? { start: q.start.plan } : {}) },
    { onProgress: progress, cancelled: () => Atomics.load(stop, 0) === 1 },
  );
  const bound = Math.min(solved.bound, q.start?.bound ?? Number.POSITIVE_INFINITY);
  return {
    plan: solved.plan,
    worth: solved.worth,
    bound: Number.isFinite(bound) ? bound : null,
    gap: Number.isFinite(bound) ? planGap(solved.worth, bound) : null,
    status: solved.status,
    seconds: solved.seconds,
    nodes: solved.nodes,
    seed: solved.seed,
    solver: solved.solver,
    prices: solved.prices,
  };
}
