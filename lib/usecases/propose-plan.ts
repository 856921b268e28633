/**
 * The plan of a place as it stands now: a careful person's plan at once, and beside it the best one found earlier for exactly
 * these data. Reading writes nothing.
 */
import { createHash } from 'node:crypto';
import { checkPlan, type PlanCheck } from '#lib/plan/check-plan.ts';
import type { FirmBatch } from '#lib/plan/firm-days.ts';
import type { GreedyRule } from '#lib/plan/greedy/greedy-state.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import type { FormerPlan, PlanInstance } from '#lib/plan/instance.ts';
import type { LimitPrice } from '#lib/plan/limit-prices.ts';
import type { OneMore } from '#lib/plan/one-more.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { PLAN_AIMS, type PlanAim } from '#lib/plan/plan-aims.ts';
import { choosePlan, loadPlan, planInForce, type StoredPlan, savePlan } from '#lib/store/plan-store.ts';
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type PlanAsked, pinsOf, planQuery } from './plan-asked.ts';
import { expectedPicks } from './plan-expected.ts';
import { planInstance } from './plan-instance.ts';
import { batchesAhead } from './season-plan.ts';

/** Days planned. Two weeks: beyond it the harvest is a guess. */
export const HORIZON = 14;
/** Money per batch moved against the plan chosen on an earlier day: a tenth of a good batch. Estimate. */
export const CHANGE_WEIGHT = 1;
/** What perishes first goes first, then what pays best per hour; the stall, which has had its share, comes after the pan. */
const CAREFUL_RULE: GreedyRule = { urgentFirst: true, leastNet: 1, perHour: true, sellFirst: false };
/** Changes whenever equal data would be planned otherwise. */
const PLAN_VERSION = 'plan-3';

/** What is kept of a search. */
export interface FoundPlan {
  plan: Plan;
  worth: number;
  bound: number | null;
  gap: number | null;
  status: string;
  seconds: number;
  nodes: number;
  seed: number;
  solver: string;
  prices: readonly LimitPrice[];
  /** Plans that look for something else than worth. */
  aims?: readonly { aim: PlanAim; plan: Plan }[];
  /** What one more of a limit would bring, planned again with it. */
  more?: readonly OneMore[];
  /** The next days planned again for a short and a heavy harvest; null where nothing is to come or it took too long. */
  firm?: { batches: readonly FirmBatch[]; shortKg: number; heavyKg: number } | null;
}

export type WhichPlan = 'found' | 'by-hand' | PlanAim;

/** What a page or a form names; the careful person's plan where it names none. */
export const whichPlan = (typed: unknown): WhichPlan =>
  (['found', ...PLAN_AIMS] as const).find((w) => w === typed) ?? 'by-hand';

export interface Proposal {
  instance: PlanInstance;
  /** Name of the data: equal data, equal name. */
  hash: string;
  byHand: { plan: Plan; check: PlanCheck };
  /** The best found for these data, checked again; null when nothing was searched. */
  found: (FoundPlan & { check: PlanCheck }) | null;
  /** A found plan that did not pass the check is not shown; this says so. */
  spoilt: string | null;
  /** The plan in force, whatever data it was made for. */
  chosen: { id: string; day: PlainDate; createdAt: string } | null;
}

export const planId = (placeId: string, hash: string, which: WhichPlan): string => `${placeId}:plan:${hash}:${which}`;

/** Null where there is no fruit, neither there nor coming. */
export async function proposePlan(ctx: Context, asked: PlanAsked): Promise<Proposal | null> {
  const chosen = await planInForce(ctx.db, ctx.place.id, ctx.today);
  const instance = await instanceOf(ctx, asked, chosen);
  if (instance.lots.length === 0) return null;
  const hash = planHash(instance);
  const plan = greedyPlan(instance, CAREFUL_RULE);
  const stored = await loadPlan(ctx.db, ctx.place.id, planId(ctx.place.id, hash, 'found'));
  return {
    instance,
    hash,
    byHand: { plan, check: checkPlan(instance, plan) },
    ...checkedFind(instance, (stored?.result as FoundPlan | undefined) ?? null),
    chosen: chosen ? { id: chosen.id, day: chosen.day, createdAt: chosen.createdAt } : null,
  };
}

export const planHash = (instance: PlanInstance): string =>
  createHash('sha256')
    .update(`${PLAN_VERSION} ${JSON.stringify(instance)}`)
    .digest('hex')
    .slice(0, 32);

/** A plan is shown only when every limit, added up again from the data, holds or is priced. */
export function checkedFind(instance: PlanInstance, found: FoundPlan | null): Pick<Proposal, 'found' | 'spoilt'> {
  if (!found) return { found: null, spoilt: null };
  const check = checkPlan(instance, found.plan);
  const aims = (found.aims ?? []).filter((a) => checkPlan(instance, a.plan).consistent);
  if (check.consistent) return { found: { ...found, aims, check }, spoilt: null };
  const first = check.breaches.find((b) => !b.priced);
  return {
    found: null,
    spoilt: `A plan that was found did not pass the second count (${first?.rule ?? 'a limit'}), so the plain plan is shown.`,
  };
}

/** The same data with a recipe taken in that the household's own lines would have kept out. */
export const instanceWith = async (ctx: Context, asked: PlanAsked, recipe: string): Promise<PlanInstance> =>
  instanceOf(ctx, asked, await planInForce(ctx.db, ctx.place.id, ctx.today), [recipe]);

async function instanceOf(
  ctx: Context,
  asked: PlanAsked,
  chosen: StoredPlan | null,
  also: readonly string[] = [],
): Promise<PlanInstance> {
  const expected = await expectedPicks(ctx, HORIZON);
  const pins = pinsOf(asked, ctx.today, HORIZON);
  const former = formerOf(ctx, chosen);
  return planInstance(ctx, {
    horizon: HORIZON,
    expected,
    pins,
    without: asked.without,
    also,
    hoursToday: asked.hours,
    lidsToday: asked.lids,
    ...(former ? { former } : {}),
  });
}

/** Batches still ahead of a plan chosen on an earlier day hold the new one steady; one chosen today is being looked at again. */
function formerOf(ctx: Context, chosen: StoredPlan | null): FormerPlan | null {
  if (!chosen || chosen.day >= ctx.today || chosen.day < addDays(ctx.today, -HORIZON)) return null;
  const batches = batchesAhead(chosen, ctx.today)
    .map((b) => ({ recipe: b.recipeId, day: daysBetween(ctx.today, b.day), batches: b.batches }))
    .filter((b) => b.day < HORIZON);
  return batches.length > 0 ? { batches, weight: CHANGE_WEIGHT } : null;
}

/** Keeps what a search found: the data it was found for, seed, solver, seconds and bound with it. */
export async function keepFound(
  ctx: Context,
  p: { instance: PlanInstance; hash: string; asked: PlanAsked },
  found: FoundPlan,
): Promise<void> {
  const id = planId(ctx.place.id, p.hash, 'found');
  const before = await loadPlan(ctx.db, ctx.place.id, id);
  await savePlan(ctx.db, ctx.place.id, storedOf(ctx, p, { id, chosen: before?.chosen ?? false, found }));
}

type Keeping = { id: string; chosen: boolean; found: FoundPlan };

const storedOf = (
  ctx: Context,
  p: { instance: PlanInstance; hash: string; asked: PlanAsked },
  k: Keeping,
): StoredPlan => ({
  id: k.id,
  day: ctx.today,
  createdAt: ctx.enteredAt.toISOString(),
  state: k.found.status,
  options: {
    inputHash: p.hash,
    asked: planQuery(p.asked),
    seed: k.found.seed,
    seconds: k.found.seconds,
    bound: k.found.bound,
    horizon: p.instance.horizon,
  },
  snapshot: p.instance,
  result: k.found,
  chosen: k.chosen,
  solver: k.found.solver,
});

/** Marks a plan as the one to go by. Refused when fruit, stores or hours have changed since it was shown. */
export async function chooseProposal(
  ctx: Context,
  asked: PlanAsked,
  shown: { hash: string; which: WhichPlan },
): Promise<{ said: string } | { refused: string }> {
  const p = await proposePlan(ctx, asked);
  if (!p || p.hash !== shown.hash)
    return { refused: 'Fruit, stores or hours have changed since this plan was shown. Look at the new one first.' };
  const id = planId(ctx.place.id, p.hash, shown.which);
  const plan = planOf(p, shown.which);
  if (!plan) return { refused: 'That plan is not kept any more.' };
  await ctx.db.$transaction(async (tx) => {
    if (shown.which !== 'found')
      await savePlan(
        tx,
        ctx.place.id,
        storedOf(ctx, { ...p, asked }, { id, chosen: true, found: withoutSearch(p, shown.which, plan) }),
      );
    await choosePlan(tx, ctx.place.id, id);
  });
  return { said: 'This is the plan to go by now.' };
}

/** The plan of a card; null when it is not kept. */
export const planOf = (p: Pick<Proposal, 'byHand' | 'found'>, which: WhichPlan): Plan | null => {
  if (which === 'by-hand') return p.byHand.plan;
  if (which === 'found') return p.found?.plan ?? null;
  return p.found?.aims?.find((a) => a.aim === which)?.plan ?? null;
};

const withoutSearch = (p: Proposal, which: WhichPlan, plan: Plan): FoundPlan => ({
  plan,
  worth: checkPlan(p.instance, plan).worth.total,
  bound: p.found?.bound ?? null,
  gap: null,
  status: which === 'by-hand' ? 'by hand' : which,
  seconds: 0,
  nodes: 0,
  seed: p.found?.seed ?? 0,
  solver: which === 'by-hand' ? 'by hand' : (p.found?.solver ?? ''),
  prices: [],
});
