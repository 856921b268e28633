/**
 * Finds a plan and keeps improving it: the greedy plan at once, its amounts polished, then better batches from the
 * solver, each told as it is found with the bound that is proven by then. Never called optimal unless it is.
 * With `nodes` instead of `seconds` the same input gives the same plan on every machine.
 */
import type { PlanInstance } from './instance.ts';
import { PlanSearch } from './plan-search.ts';
import type { SolvedPlan, SolveHooks, SolveOptions } from './solve-options.ts';
import { openSolver } from './solver.ts';

export type { PlanProgress, SolvedPlan, SolveHooks, SolveOptions } from './solve-options.ts';
export { planGap } from './solve-options.ts';

/** Throws RangeError for data that do not fit together, Error when the time was too short for any plan (only with pins or a forced recipe). */
export async function solvePlan(
  instance: PlanInstance,
  options: SolveOptions = {},
  hooks: SolveHooks = {},
): Promise<SolvedPlan> {
  const search = new PlanSearch(await openSolver(), instance, options, hooks);
  search.takeByHand();
  if (options.focus) {
    search.improveFocus(options.focus);
    return search.result();
  }
  await Promise.resolve();
  search.takeRelaxation();
  search.polishByHand();
  await Promise.resolve();
  await search.improve();
  return search.result();
}
