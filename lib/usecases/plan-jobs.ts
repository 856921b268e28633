/**
 * Searches under way in this process. One map for the whole process, whichever bundle a page or an address was built into;
 * one search at a time for a place, for two would only slow each other.
 */
import { Worker } from 'node:worker_threads';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { type PlanProgress, planGap } from '#lib/plan/solve-options.ts';
import type { Context } from './context.ts';
import type { PlanAsked } from './plan-asked.ts';
import { harvestSpread } from './plan-expected.ts';
import { isExpected, lotsComing } from './plan-lots.ts';
import { type SearchInput, searchPlan } from './plan-search.ts';
import { shelfMetreLitres } from './plan-stores.ts';
import { CHANGE_WEIGHT, type FoundPlan, keepFound, type Proposal, proposePlan } from './propose-plan.ts';
import { converse } from './thread-talk.ts';

export interface PlanJob {
  /** The hash of the data searched. */
  id: string;
  placeId: string;
  state: 'running' | 'done' | 'stopped' | 'failed';
  startedAt: number;
  endedAt: number | null;
  limit: number;
  /** Improvements so far. */
  found: number;
  best: PlanProgress | null;
  byHandWorth: number;
  totalKg: number;
  failed: string | null;
  stop: SharedArrayBuffer;
  abort: AbortController;
  done: Promise<void>;
}

/** What the page asks every second while it waits. */
export interface JobReport {
  id: string;
  state: PlanJob['state'] | 'unknown';
  seconds: number;
  limit: number;
  found: number;
  worth: number | null;
  gain: number | null;
  keptKg: number | null;
  totalKg: number;
  gap: number | null;
  failed: string | null;
}

/** Seconds a first search may take, and the longest one. */
export const FIRST_SECONDS = 10;
export const LONGEST_SECONDS = 120;
/** Finished searches are forgotten after so many: their plans are stored. */
const KEPT_JOBS = 20;

const shared = globalThis as typeof globalThis & { stillroomPlanJobs?: Map<string, PlanJob> };
shared.stillroomPlanJobs ??= new Map();
const jobs = shared.stillroomPlanJobs;
const nameOf = (placeId: string, id: string): string => `${placeId} ${id}`;

/** Starts a search for the data as they are now, from the best plan known of them; the one under way when there is one. */
export async function startSearch(
  ctx: Context,
  asked: PlanAsked,
  seconds: number,
): Promise<PlanJob | { refused: string }> {
  const proposal = await proposePlan(ctx, asked);
  if (!proposal) return { refused: 'There is no fruit to plan for.' };
  const known = jobs.get(nameOf(ctx.place.id, proposal.hash));
  if (known?.state === 'running') return known;
  for (const other of jobs.values()) if (other.placeId === ctx.place.id && other.state === 'running') stopJob(other);
  const limit = Math.min(LONGEST_SECONDS, Math.max(1, seconds));
  const job: PlanJob = {
    id: proposal.hash,
    placeId: ctx.place.id,
    state: 'running',
    startedAt: performance.now(),
    endedAt: null,
    limit,
    found: 0,
    best: null,
    byHandWorth: proposal.byHand.check.worth.total,
    totalKg: proposal.instance.lots.reduce((n, l) => n + l.kg, 0),
    failed: null,
    stop: new SharedArrayBuffer(4),
    abort: new AbortController(),
    done: Promise.resolve(),
  };
  remember(job);
  job.done = runJob(ctx, asked, { proposal, job });
  return job;
}

function remember(job: PlanJob): void {
  jobs.delete(nameOf(job.placeId, job.id));
  jobs.set(nameOf(job.placeId, job.id), job);
  for (const [name, old] of jobs) if (jobs.size > KEPT_JOBS && old.state !== 'running') jobs.delete(name);
}

async function runJob(
  ctx: Context,
  asked: PlanAsked,
  { proposal, job }: { proposal: Proposal; job: PlanJob },
): Promise<void> {
  const { found } = proposal;
  const input: SearchInput = {
    instance: proposal.instance,
    seconds: job.limit,
    start: found ? { plan: found.plan, bound: found.bound } : null,
    shelfMetreL: shelfMetreLitres(ctx),
    spread: await spreadOf(ctx, proposal.instance),
    changeWeight: CHANGE_WEIGHT,
    stop: job.stop,
  };
  const proven = found?.bound ?? Number.POSITIVE_INFINITY;
  const hear = (p: PlanProgress) => {
    if (job.best && p.worth > job.best.worth + 1e-6) job.found += 1;
    // What was proven before holds still: the data are the same.
    const bound = Math.min(p.bound ?? Number.POSITIVE_INFINITY, proven);
    job.best = Number.isFinite(bound) ? { ...p, bound, gap: planGap(p.worth, bound) } : p;
  };
  try {
    const answer = await search(input, hear, job.abort.signal).catch((error: unknown) => bestSoFar(job, error));
    await keepFound(ctx, { ...proposal, asked }, answer);
    job.state = answer.status === 'cancelled' ? 'stopped' : 'done';
  } catch (error) {
    job.state = 'failed';
    job.failed = error instanceof Error ? error.message : String(error);
  }
  job.endedAt = performance.now();
}

/** The plan's fruit with the crops still to be picked all short, and all heavy. */
async function spreadOf(ctx: Context, { lots, horizon }: PlanInstance): Promise<SearchInput['spread']> {
  if (!lots.some((l) => isExpected(l.id))) return null;
  const spread = new Map((await harvestSpread(ctx, horizon)).map((s) => [s.cropId, s]));
  return {
    short: lotsComing(lots, (crop) => spread.get(crop)?.short ?? 1),
    heavy: lotsComing(lots, (crop) => spread.get(crop)?.heavy ?? 1),
  };
}

/** Set by the server's bundler; where the source runs as it is (tests, scripts) there is no thread to start and the search runs in place. */
const bundled = process.env.NEXT_RUNTIME === 'nodejs';

const search = (input: SearchInput, hear: (p: PlanProgress) => void, signal: AbortSignal): Promise<FoundPlan> =>
  bundled
    ? converse<SearchInput, PlanProgress, FoundPlan>(
        new Worker(new URL('./plan-thread.ts', import.meta.url)),
        input,
        hear,
        signal,
      )
    : searchPlan(input, hear);

/** A thread that had to be ended still leaves the best plan it told of. */
function bestSoFar(job: PlanJob, error: unknown): FoundPlan {
  if (!job.best) throw error;
  const { plan, worth, bound, gap, seconds } = job.best;
  return { plan, worth, bound, gap, seconds, status: 'cancelled', nodes: 0, seed: 0, solver: 'HiGHS', prices: [] };
}

/** Stops a search; the best so far is kept. */
function stopJob(job: PlanJob): void {
  Atomics.store(new Int32Array(job.stop), 0, 1);
  job.abort.abort();
}

export function stopSearch(placeId: string, id: string): boolean {
  const job = jobs.get(nameOf(placeId, id));
  if (job?.state !== 'running') return false;
  stopJob(job);
  return true;
}

export const jobOf = (placeId: string, id: string): PlanJob | null => jobs.get(nameOf(placeId, id)) ?? null;

export function jobReport(placeId: string, id: string): JobReport {
  const job = jobOf(placeId, id);
  if (!job)
    return {
      id,
      state: 'unknown',
      seconds: 0,
      limit: 0,
      found: 0,
      worth: null,
      gain: null,
      keptKg: null,
      totalKg: 0,
      gap: null,
      failed: null,
    };
  const lost = job.best?.plan.wasted.reduce((n, w) => n + w.kg, 0);
  return {
    id,
    state: job.state,
    seconds: Math.round(((job.endedAt ?? performance.now()) - job.startedAt) / 100) / 10,
    limit: job.limit,
    found: job.found,
    worth: job.best?.worth ?? null,
    gain: job.best ? job.best.worth - job.byHandWorth : null,
    keptKg: lost === undefined ? null : job.totalKg - lost,
    totalKg: job.totalKg,
    gap: job.best?.gap ?? null,
    failed: job.failed,
  };
}
