/**
 * Keeps a plan's whole batches and finds the best amounts for them: fruit, powders, jars, purchases, drying. One
 * relaxation, under a second; worth doing to any plan made by hand.
 */
import { buildModel } from './build-model.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import { readPlan } from './read-plan.ts';
import type { Solver } from './solver.ts';
import type { ColumnKind, SparseModel } from './sparse-model.ts';
import { LOOSE } from './tightenings.ts';
import { writePlan } from './write-plan.ts';

const HELD: readonly ColumnKind[] = ['batches', 'loads', 'setUp'];

export interface Polished {
  plan: Plan;
  seconds: number;
}

/** Bounds that hold the whole batches of column values, except where `free` says so. */
export function heldBatches(
  model: SparseModel,
  values: ArrayLike<number>,
  free: (column: number) => boolean = () => false,
): { lower: Float64Array; upper: Float64Array } {
  const lower = Float64Array.from(model.columns, (c) => c.lower);
  const upper = Float64Array.from(model.columns, (c) => c.upper);
  model.columns.forEach((c, j) => {
    if (!HELD.includes(c.ref.kind) || free(j)) return;
    lower[j] = Math.round(values[j] ?? 0);
    upper[j] = lower[j] as number;
  });
  return { lower, upper };
}

/** null when the batches cannot be kept at all (which a plan that passed the check never meets). */
export function polishAmounts(solver: Solver, instance: PlanInstance, plan: Plan): Polished | null {
  const model = buildModel(instance, { tightenings: LOOSE });
  const values = writePlan(instance, model, plan);
  if (!values) return null;
  const answer = solver.run(model, { ...heldBatches(model, values), relaxed: 'all' });
  return answer.columns && { plan: readPlan(instance, model, answer.columns), seconds: answer.seconds };
}
