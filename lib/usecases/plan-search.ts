/** One search, from plain input to what is kept of it. Runs in the thread, or in place where there is none. */
import { checkPlan } from '#lib/plan/check-plan.ts';
import { firmDays } from '#lib/plan/firm-days.ts';
import type { PlanInstance, PlanLot } from '#lib/plan/instance.ts';
import { MORE_OF, nextDays, type OneMore, oneMore } from '#lib/plan/one-more.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { aimedAt, PLAN_AIMS, type PlanAim } from '#lib/plan/plan-aims.ts';
import { type PlanProgress, planGap } from '#lib/plan/solve-options.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { isExpected } from './plan-lots.ts';
import type { FoundPlan } from './propose-plan.ts';

/** One seed for every search: what differs between two then comes from their data and their time. */
export const PLAN_SEED = 1;

export interface SearchInput {
  instance: PlanInstance;
  seconds: number;
  /** Best plan and proven bound of an earlier search of the same data. */
  start: { plan: Plan; bound: number | null } | null;
  /** Litres a metre of shelf holds. */
  shelfMetreL: number;
  /** The fruit when what is still to be picked comes short and heavy; null when nothing is. */
  spread: { short: readonly PlanLot[]; heavy: readonly PlanLot[] } | null;
  /** Money per batch moved, as against a plan chosen before. */
  changeWeight: number;
  /** One word of memory shared with the page's process: 1 = stop and give the best so far. */
  stop: SharedArrayBuffer;
}

/** Solver seconds for each other aim, and for each "one more". */
const AIM_SECONDS = 2;
const MORE_SECONDS = 1.5;
/** Solver seconds for the short and for the heavy harvest, and how near is near enough there. */
const FIRM_SECONDS = 4;
const FIRM_GAP = 0.005;

export async function searchPlan(q: SearchInput, progress: (p: PlanProgress) => void): Promise<FoundPlan> {
  const stop = new Int32Array(q.stop);
  const cancelled = () => Atomics.load(stop, 0) === 1;
  const solved = await solvePlan(
    q.instance,
    { seconds: q.seconds, seed: PLAN_SEED, ...(q.start ? { start: q.start.plan } : {}) },
    { onProgress: progress, cancelled },
  );
  const bound = Math.min(solved.bound, q.start?.bound ?? Number.POSITIVE_INFINITY);
  const aims = await otherAims(q.instance, solved.plan, cancelled);
  const best = bestOf(q.instance, [solved.plan, ...aims.map((a) => a.plan)]);
  const { more, plan, worth } = await moreOfEach(q, best, cancelled);
  const firm =
    q.spread && !cancelled()
      ? await firmDays(q.instance, plan, {
          ...q.spread,
          changeWeight: q.changeWeight,
          limits: { seconds: FIRM_SECONDS, gap: FIRM_GAP, seed: PLAN_SEED, cancelled },
        })
      : null;
  return {
    plan,
    worth,
    bound: Number.isFinite(bound) ? bound : null,
    gap: Number.isFinite(bound) ? planGap(worth, bound) : null,
    status: solved.status,
    seconds: solved.seconds,
    nodes: solved.nodes,
    seed: solved.seed,
    solver: solved.solver,
    prices: solved.prices,
    aims,
    more,
    firm: firm && q.spread ? { batches: firm, shortKg: kgOf(q.spread.short), heavyKg: kgOf(q.spread.heavy) } : null,
  };
}

const kgOf = (lots: readonly PlanLot[]): number => lots.filter((l) => isExpected(l.id)).reduce((n, l) => n + l.kg, 0);

/** Looking for something else a search may come by a plan that is worth more, too. */
function bestOf(p: PlanInstance, plans: readonly Plan[]): Plan {
  const worth = (plan: Plan) => {
    const check = checkPlan(p, plan);
    return check.consistent ? check.worth.total : Number.NEGATIVE_INFINITY;
  };
  return plans.reduce((best, plan) => (worth(plan) > worth(best) + 1e-9 ? plan : best));
}

/** From the best plan on, what each other aim would rather do. */
async function otherAims(
  instance: PlanInstance,
  start: Plan,
  cancelled: () => boolean,
): Promise<{ aim: PlanAim; plan: Plan }[]> {
  const plans: { aim: PlanAim; plan: Plan }[] = [];
  for (const aim of PLAN_AIMS) {
    if (cancelled()) return plans;
    const options = { seconds: AIM_SECONDS, seed: PLAN_SEED, start, fromStart: true };
    plans.push({ aim, plan: (await solvePlan(aimedAt(instance, aim), options, { cancelled })).plan });
  }
  return plans;
}

async function moreOfEach(
  q: SearchInput,
  plan: Plan,
  cancelled: () => boolean,
): Promise<{ plan: Plan; worth: number; more: OneMore[] }> {
  const ask = { shelfMetreL: q.shelfMetreL, seconds: MORE_SECONDS, seed: PLAN_SEED };
  // What the same move finds with no more of anything is not the limit's doing.
  const alone = await solvePlan(
    q.instance,
    { seconds: ask.seconds, seed: ask.seed, start: plan, fromStart: true, focus: nextDays },
    { cancelled },
  );
  const more: OneMore[] = [];
  for (const what of MORE_OF)
    if (!cancelled()) more.push(await oneMore(q.instance, alone.plan, { ...ask, what }, { cancelled }));
  return { plan: alone.plan, worth: alone.worth, more };
}
