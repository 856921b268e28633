/**
 * Finds a plan and keeps improving it: the greedy plan at once, its amounts polished, then better batches from the
 * solver, each told as it is found with the bound that is proven by then. Never called optimal unless it is.
 * With `nodes` instead of `seconds` the same input gives the same plan on every machine.
 */
import { type BuildOptions, buildModel } from './build-model.ts';
import { checkPlan, type PlanCheck } from './check-plan.ts';
import { fitsModel } from './fits-model.ts';
import { greedyPlans } from './greedy-plan.ts';
import type { PlanInstance } from './instance.ts';
import { type LimitPrice, limitPrices } from './limit-prices.ts';
import type { Plan } from './plan.ts';
import { heldBatches, polishAmounts } from './polish-amounts.ts';
import { readPlan } from './read-plan.ts';
import { seededOrder } from './seeded-order.ts';
import { openSolver, type Solver, type SolverAnswer } from './solver.ts';
import type { SparseModel } from './sparse-model.ts';
import { writePlan } from './write-plan.ts';

export interface SolveOptions extends Omit<BuildOptions, 'futures' | 'firstStageDays'> {
  /** Solver seconds, all together (20). Without effect when `nodes` is given. */
  seconds?: number;
  /** Search nodes of the last run; makes the result reproducible. */
  nodes?: number;
  /** Good enough: (bound - worth) / worth (0.001). */
  gap?: number;
  seed?: number;
  /** A plan to begin with, e.g. the former one. */
  start?: Plan;
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

export const planGap = (worth: number, bound: number): number =>
  Math.max(0, bound - worth) / Math.max(1, Math.abs(worth));

export async function solvePlan(
  instance: PlanInstance,
  options: SolveOptions = {},
  hooks: SolveHooks = {},
): Promise<SolvedPlan> {
  const search = new PlanSearch(await openSolver(), instance, options, hooks);
  search.takeByHand();
  await Promise.resolve();
  search.takeRelaxation();
  search.polishByHand();
  await Promise.resolve();
  await search.improve();
  return search.result();
}

/** Whole columns up to which the solver is let loose at once. */
const SMALL = 150;

class PlanSearch {
  private readonly model: SparseModel;
  private best: { plan: Plan; check: PlanCheck; columns: Float64Array | null } | null = null;
  private bound = Infinity;
  private prices: readonly LimitPrice[] = [];
  private seconds = 0;
  private nodes = 0;
  private last: SolverAnswer['status'] = 'time limit';
  private byHand: Plan[] = [];

  constructor(
    private readonly solver: Solver,
    private readonly instance: PlanInstance,
    private readonly options: SolveOptions,
    private readonly hooks: SolveHooks,
  ) {
    this.model = buildModel(instance, options);
  }

  private get cancelled(): boolean {
    return this.hooks.cancelled?.() ?? false;
  }
  private get budget(): number {
    return this.options.nodes === undefined ? (this.options.seconds ?? 20) - this.seconds : Infinity;
  }
  private get target(): number {
    return this.options.gap ?? 0.001;
  }
  private get done(): boolean {
    return (
      this.cancelled ||
      this.budget <= 0.05 ||
      (this.best !== null && planGap(this.best.check.worth.total, this.bound) <= this.target)
    );
  }

  /** Takes a plan when it passes the check and is worth more than the one in hand. */
  private offer(stage: PlanStage, plan: Plan, columns: Float64Array | null = null): boolean {
    const check = checkPlan(this.instance, plan);
    if (
      !check.consistent ||
      !this.isAsked(plan) ||
      (this.best && check.worth.total <= this.best.check.worth.total + 1e-9)
    )
      return false;
    this.best = { plan, check, columns };
    this.tell(stage);
    return true;
  }

  private isAsked(plan: Plan): boolean {
    const forced = this.options.forced;
    return !forced || plan.cooked.some((c) => c.recipe === forced.recipe && c.batches.length > 0) === forced.made;
  }

  private tell(stage: PlanStage): void {
    if (!this.best) return;
    const worth = this.best.check.worth.total;
    const bound = Number.isFinite(this.bound) ? this.bound : null;
    this.hooks.onProgress?.({
      stage,
      plan: this.best.plan,
      worth,
      bound,
      gap: bound === null ? null : planGap(worth, bound),
      seconds: this.seconds,
    });
  }

  takeByHand(): void {
    const without =
      this.options.forced?.made === false
        ? { ...this.instance, recipes: this.instance.recipes.filter((r) => r.id !== this.options.forced?.recipe) }
        : this.instance;
    this.byHand = [
      ...(this.options.start ? [this.options.start] : []),
      ...greedyPlans(without, this.options.forced?.made ? this.options.forced.recipe : undefined),
    ];
    // Whole jars are the solver's business from the first plan on: by hand they are filled in parts.
    if (!this.options.wholeJars) for (const plan of this.byHand) this.offer('by hand', plan);
  }

  takeRelaxation(): void {
    if (this.cancelled) return;
    const answer = this.run({ relaxed: 'all', ...(Number.isFinite(this.budget) ? { seconds: this.budget } : {}) });
    if (answer.status !== 'optimal') return;
    this.bound = Math.min(this.bound, answer.bound);
    if (answer.duals) this.prices = limitPrices(this.model, answer.duals);
    this.tell('bound');
  }

  polishByHand(): void {
    const worth = (plan: Plan) => checkPlan(this.instance, plan).worth.total;
    const distinct = [
      ...new Map(
        this.byHand.map((p) => [JSON.stringify(p.cooked.map((c) => [c.recipe, c.mode, c.day, c.batches])), p]),
      ).values(),
    ];
    for (const plan of this.options.wholeJars ? [] : distinct.sort((a, b) => worth(b) - worth(a)).slice(0, 4)) {
      if (this.done) return;
      const polished = polishAmounts(this.solver, this.instance, plan);
      this.seconds += polished?.seconds ?? 0;
      if (polished) this.offer('amounts', polished.plan);
    }
  }

  async improve(): Promise<void> {
    const whole = this.model.columns.filter((c) => c.whole).length;
    if (whole > SMALL && !this.options.wholeJars) await this.fixAndOptimise();
    if (this.done) return;
    const answer = this.run({
      ...this.limits(this.budget, this.options.nodes),
      ...this.startOf(),
      onImproved: this.onImproved,
    });
    this.nodes += answer.nodes;
    this.last = answer.status;
    this.bound = Math.min(this.bound, answer.bound);
    if (answer.columns) this.offer('improved', readPlan(this.instance, this.model, answer.columns), answer.columns);
    this.tell('bound');
  }

  /** All batches held except those of a few days or of a few products, in seeded order, until the share of time is up or every move failed twice. */
  private async fixAndOptimise(): Promise<void> {
    const until = this.options.nodes === undefined ? this.seconds + this.budget * 0.5 : Infinity;
    const order = seededOrder(this.options.seed ?? 0);
    const moves = neighbourhoods(this.instance, order);
    let failed = 0;
    for (
      let round = 0;
      failed < moves.length * 2 && (this.options.nodes === undefined || round < moves.length);
      round++
    ) {
      const move = moves[round % moves.length];
      const start = this.startOf().start;
      if (!move || !start || this.done || this.seconds >= until) return;
      const held = heldBatches(this.model, start, (j) =>
        move(this.model.columns[j]?.ref.ids[0] ?? '', this.model.columns[j]?.ref.day ?? -1),
      );
      const answer = this.run({
        ...held,
        start,
        ...this.limits(Math.min(2, until - this.seconds), this.options.nodes === undefined ? undefined : 20),
      });
      this.nodes += answer.nodes;
      const better =
        answer.columns !== null &&
        this.offer('improved', readPlan(this.instance, this.model, answer.columns), answer.columns);
      failed = better ? 0 : failed + 1;
      await Promise.resolve();
    }
  }

  private limits(
    seconds: number,
    nodes: number | undefined,
  ): { gap: number; seed: number; seconds?: number; nodes?: number; cancelled?: () => boolean } {
    return {
      gap: this.target,
      seed: this.options.seed ?? 0,
      ...(nodes === undefined ? { seconds } : { nodes }),
      ...(this.hooks.cancelled ? { cancelled: this.hooks.cancelled } : {}),
    };
  }

  private startOf(): { start?: Float64Array } {
    if (!this.best) return {};
    const start = this.best.columns ?? writePlan(this.instance, this.model, this.best.plan);
    return start && fitsModel(this.model, start) ? { start } : {};
  }

  private run(request: Parameters<Solver['run']>[1]): SolverAnswer {
    const answer = this.solver.run(this.model, request);
    this.seconds += answer.seconds;
    return answer;
  }

  private onImproved = (found: { bound: number; columns: Float64Array; seconds: number }): void => {
    this.bound = Math.min(this.bound, found.bound);
    const before = this.seconds;
    this.seconds += found.seconds;
    this.offer('improved', readPlan(this.instance, this.model, found.columns), Float64Array.from(found.columns));
    this.seconds = before;
  };

  result(): SolvedPlan {
    if (!this.best) throw new Error(`no plan was found: ${this.last}`);
    const worth = this.best.check.worth.total;
    const gap = planGap(worth, this.bound);
    return {
      plan: this.best.plan,
      check: this.best.check,
      worth,
      bound: this.bound,
      gap,
      seed: this.options.seed ?? 0,
      solver: this.solver.version,
      status:
        gap <= 1e-6
          ? 'optimal'
          : this.cancelled
            ? 'cancelled'
            : gap <= this.target
              ? 'gap reached'
              : this.options.nodes === undefined
                ? 'time limit'
                : 'node limit',
      seconds: this.seconds,
      nodes: this.nodes,
      prices: this.prices,
    };
  }
}

/** Which batches are free in a move: four neighbouring days, or a fifth of the products. */
function neighbourhoods(
  p: PlanInstance,
  order: <T>(list: readonly T[]) => T[],
): ((recipe: string, day: number) => boolean)[] {
  const windows = Array.from({ length: Math.max(1, Math.ceil((p.horizon - 1) / 2)) }, (_, i) => i * 2).map(
    (from) => (_: string, day: number) => day >= from && day < from + 4,
  );
  const recipes = order(p.recipes.map((r) => r.id));
  const fifth = Math.max(1, Math.ceil(recipes.length / 5));
  const groups = Array.from(
    { length: Math.ceil(recipes.length / fifth) },
    (_, i) => new Set(recipes.slice(i * fifth, (i + 1) * fifth)),
  ).map((set) => (recipe: string) => set.has(recipe));
  return order([...windows, ...groups]);
}
