/** The search behind `solvePlan`: the best plan in hand, the proven bound, and the steps that improve either. */
import { buildModel } from './build-model.ts';
import { checkPlan, type PlanCheck } from './check-plan.ts';
import { fitsModel } from './fits-model.ts';
import { greedyPlan, greedyPlans } from './greedy-plan.ts';
import type { PlanInstance } from './instance.ts';
import { type LimitPrice, limitPrices } from './limit-prices.ts';
import type { Plan } from './plan.ts';
import { planMoves } from './plan-moves.ts';
import { heldBatches, polishAmounts } from './polish-amounts.ts';
import { readPlan } from './read-plan.ts';
import { seededOrder } from './seeded-order.ts';
import { type PlanStage, planGap, type SolvedPlan, type SolveHooks, type SolveOptions } from './solve-options.ts';
import type { Solver, SolverAnswer } from './solver.ts';
import type { SparseModel } from './sparse-model.ts';
import { writePlan } from './write-plan.ts';

/** Whole columns up to which the solver is let loose at once. */
const SMALL = 150;

/**
 * Measured on four invented 14-day seasons at 12 s: freeing everything first and moving in the last fifth was best or
 * within 0.2 % of the best on each; moving first was up to 6 % worse.
 */
const FREE_SHARE = 0.8;
/**
 * Share of the time for the batches the relaxation uses at all, those of the plan in hand among them, the others held at
 * none: about a seventh of the columns. Measured on the demonstration's weeks of 1 and 8 September and 13 October: in some four
 * seconds of processor time 3.1 %, 2.7 % and 0.5 % more worth than the polished plan by hand, where the whole model had found
 * 0.1 %, 0.7 % and nothing after ten.
 */
const NEAR_SHARE = 0.4;
const NEAR_SECONDS = 12;
const NEAR_NODES = 50;
/** Below this the relaxation does not use a column. */
const UNUSED = 1e-6;
const MOVE_SECONDS = 1;
const MOVE_NODES = 20;

export class PlanSearch {
  private readonly model: SparseModel;
  private best: { plan: Plan; check: PlanCheck; columns: Float64Array | null } | null = null;
  private bound = Infinity;
  private prices: readonly LimitPrice[] = [];
  private relaxed: Float64Array | null = null;
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
    // One rule first: something to look at within milliseconds, and its best amounts within a second.
    if (!this.options.wholeJars) {
      const first = this.options.start ?? greedyPlan(without);
      if (this.offer('by hand', first) && !this.options.start) this.polish(first);
    }
    this.byHand = [
      ...(this.options.start ? [this.options.start] : []),
      ...(this.options.start && this.options.fromStart
        ? []
        : greedyPlans(without, this.options.forced?.made ? this.options.forced.recipe : undefined)),
    ];
    // Whole jars are the solver's business from the first plan on: by hand they are filled in parts.
    if (!this.options.wholeJars) for (const plan of this.byHand) this.offer('by hand', plan);
  }

  takeRelaxation(): void {
    if (this.cancelled) return;
    const answer = this.run({ relaxed: 'all', ...(Number.isFinite(this.budget) ? { seconds: this.budget } : {}) });
    if (answer.status !== 'optimal') return;
    this.bound = Math.min(this.bound, answer.bound);
    this.relaxed = answer.columns;
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
    for (const [i, plan] of (this.options.wholeJars
      ? []
      : distinct.sort((a, b) => worth(b) - worth(a)).slice(0, 4)
    ).entries()) {
      // The first is polished even when it is good enough: it takes no time and by hand amounts are only near the best.
      if (this.cancelled || (i > 0 && this.done)) return;
      this.polish(plan);
    }
  }

  private polish(plan: Plan): void {
    const polished = polishAmounts(this.solver, this.instance, plan);
    this.seconds += polished?.seconds ?? 0;
    if (polished) this.offer('amounts', polished.plan);
  }

  async improve(): Promise<void> {
    const whole = this.model.columns.filter((c) => c.whole).length;
    const moves = whole > SMALL && !this.options.wholeJars;
    if (moves && this.options.moveShare) await this.fixAndOptimise(this.seconds + this.budget * this.options.moveShare);
    if (moves) this.solveNearRelaxation(Math.min(NEAR_SECONDS, this.budget * NEAR_SHARE));
    this.solveFreely(moves ? this.budget * FREE_SHARE : this.budget);
    if (moves) await this.fixAndOptimise(this.seconds + this.budget);
  }

  /** One move on the batches asked about, all the others held. */
  improveFocus(focus: (recipe: string, day: number) => boolean): void {
    const { start } = this.startOf();
    if (start && !this.cancelled) this.tryMove(focus, start, this.budget, this.budget);
  }

  /** Only batches free that the relaxation or the plan in hand makes. Proves nothing for the others, so its bound is not taken. */
  private solveNearRelaxation(seconds: number): void {
    const { relaxed } = this;
    if (this.done || !relaxed) return;
    const { start } = this.startOf();
    const used = (j: number) => (relaxed[j] ?? 0) > UNUSED || (start?.[j] ?? 0) > 0.5;
    const answer = this.run({
      ...heldBatches(this.model, start ?? new Float64Array(relaxed.length), used),
      ...(start ? { start } : {}),
      ...this.limits(seconds, this.options.nodes === undefined ? undefined : NEAR_NODES),
      onImproved: ({ columns, seconds: after }) => this.offerFound(columns, after),
    });
    this.nodes += answer.nodes;
    if (answer.columns) this.offer('improved', readPlan(this.instance, this.model, answer.columns), answer.columns);
  }

  /** All batches free, from the plan in hand; the only step besides the relaxation that lowers the bound. */
  private solveFreely(seconds: number): void {
    if (this.done) return;
    const answer = this.run({
      ...this.limits(seconds, this.options.nodes),
      ...this.startOf(),
      onImproved: this.onImproved,
    });
    this.nodes += answer.nodes;
    this.last = answer.status;
    this.bound = Math.min(this.bound, answer.bound);
    if (answer.columns) this.offer('improved', readPlan(this.instance, this.model, answer.columns), answer.columns);
    this.tell('bound');
  }

  /** All batches held except those of a few days or of a few products, in seeded order, until the time is up or every move failed twice. */
  private async fixAndOptimise(until: number): Promise<void> {
    const byNodes = this.options.nodes !== undefined;
    const moves = planMoves(this.instance, seededOrder(this.options.seed ?? 0));
    let failed = 0;
    for (let round = 0; failed < moves.length * 2 && !(byNodes && round >= moves.length); round++) {
      const move = moves[round % moves.length];
      const start = this.startOf().start;
      if (!move || !start || this.done || (!byNodes && this.seconds >= until - 0.05)) return;
      failed = this.tryMove(move, start, until - this.seconds) ? 0 : failed + 1;
      await Promise.resolve();
    }
  }

  private tryMove(
    isFree: (recipe: string, day: number) => boolean,
    start: Float64Array,
    seconds: number,
    most = MOVE_SECONDS,
  ): boolean {
    const held = heldBatches(this.model, start, (j) => {
      const { ids, day } = this.model.columns[j]?.ref ?? { ids: [], day: null };
      return isFree(ids[0] ?? '', day ?? -1);
    });
    const nodes = this.options.nodes === undefined ? undefined : MOVE_NODES;
    const answer = this.run({ ...held, start, ...this.limits(Math.min(most, seconds), nodes) });
    this.nodes += answer.nodes;
    return (
      answer.columns !== null &&
      this.offer('improved', readPlan(this.instance, this.model, answer.columns), answer.columns)
    );
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
    this.offerFound(found.columns, found.seconds);
  };

  /** A plan the solver tells of `after` seconds of its run. */
  private offerFound(columns: Float64Array, after: number): void {
    const before = this.seconds;
    this.seconds += after;
    this.offer('improved', readPlan(this.instance, this.model, columns), Float64Array.from(columns));
    this.seconds = before;
  }

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
