/** What can be asked of the plan search, what it tells on the way, and what it hands back. */
import type { BuildOptions } from './build-model.ts';
import type { PlanCheck } from './check-plan.ts';
import type { LimitPrice } from './limit-prices.ts';
import type { Plan } from './plan.ts';

export interface SolveOptions extends Omit<BuildOptions, 'futures' | 'firstStageDays'> {
  /** Solver seconds, all together (20). Without effect when `nodes` is given. */
  seconds?: number;
  /** Search nodes of the last run; makes the result reproducible. */
  nodes?: number;
  /** Good enough: (bound - worth) / worth (0.001). */
  gap?: number;
  seed?: number;
  /** Share of the time spent on moves that hold most batches fast, before the solver has all of them free (0; may help far above 14 days). */
  moveShare?: number;
  /** A plan to begin with, e.g. the former one. */
  start?: Plan;
  /** Makes no plans by hand but goes from `start` at once: for small changes to data already searched. */
  fromStart?: boolean;
  /** Only these batches may change against `start`; no bound is proven then. */
  focus?: (recipe: string, day: number) => boolean;
}

export type PlanStage = 'by hand' | 'amounts' | 'improved' | 'bound';

export interface PlanProgress {
  stage: PlanStage;
  plan: Plan;
  worth: number;
  /** Proven: no plan is worth more. null until the relaxation is solved. */
  bound: number | null;
  gap: number | null;
  /** Solver seconds so far. */
  seconds: number;
}

export interface SolveHooks {
  onProgress?: (progress: PlanProgress) => void;
  cancelled?: () => boolean;
}

export interface SolvedPlan {
  plan: Plan;
  check: PlanCheck;
  worth: number;
  bound: number;
  gap: number;
  status: 'optimal' | 'gap reached' | 'time limit' | 'node limit' | 'cancelled';
  seed: number;
  solver: string;
  seconds: number;
  nodes: number;
  /** What one more of each limit would be worth. */
  prices: readonly LimitPrice[];
}

/** (bound - worth) / worth, never below 0. */
export const planGap = (worth: number, bound: number): number =>
  Math.max(0, bound - worth) / Math.max(1, Math.abs(worth));
