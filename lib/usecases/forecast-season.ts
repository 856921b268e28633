/**
 * The season ahead of a place: the stored forecast where the records have not changed since, a run where they have.
 * Reading never writes; only `runSeason` does, and only to the forecast's own table.
 */
import { Worker } from 'node:worker_threads';
import { forecastOf, saveForecast } from '#lib/store/plan-store.ts';
import type { Context } from './context.ts';
import { forecastHash, MODEL_VERSION, SEASON_SEED } from './forecast-hash.ts';
import { type ForecastProgress, runForecast, SEASONS } from './forecast-run.ts';
import type { ForecastSummary } from './forecast-summary.ts';
import type { SeasonWork } from './forecast-thread.ts';
import { pastLooks } from './season-past.ts';
import { type ForecastInput, seasonInput } from './season-scenario.ts';
import { type SeasonSnapshot, seasonSnapshot } from './season-snapshot.ts';
import { converse } from './thread-talk.ts';

export interface SeasonForecast {
  snapshot: SeasonSnapshot;
  input: ForecastInput;
  hash: string;
  /** Null until it has been worked out for these records. */
  summary: ForecastSummary | null;
  /** All seasons are in, not only the first thousand. */
  whole: boolean;
}

/** What is known now. Writes nothing and simulates nothing. */
export async function seasonForecast(ctx: Context): Promise<SeasonForecast> {
  const snapshot = await seasonSnapshot(ctx);
  const input = seasonInput(snapshot);
  const hash = forecastHash(input);
  const stored = await forecastOf(ctx.db, ctx.place.id, hash);
  const summary = (stored?.summary as ForecastSummary | undefined) ?? null;
  return { snapshot, input, hash, summary, whole: (summary?.n ?? 0) >= SEASONS };
}

/** A place without crops or jars has nothing to simulate. */
export const nothingToForecast = (input: ForecastInput): boolean =>
  input.crops.length === 0 && input.lines.length === 0;

interface Running {
  done: Promise<ForecastSummary>;
  listeners: Set<(p: ForecastProgress) => void>;
  last: ForecastProgress;
}
/** Runs under way in this process: two people asking at once wait for the same one. */
const running = new Map<string, Running>();

/** Works the season out and stores it, unless it is stored already. `report` hears how far it is. */
export async function runSeason(ctx: Context, report: (p: ForecastProgress) => void): Promise<ForecastSummary | null> {
  const { snapshot, input, hash, summary, whole } = await seasonForecast(ctx);
  if (summary && whole) return summary;
  if (nothingToForecast(input)) return null;
  const name = `${ctx.place.id} ${hash}`;
  const known = running.get(name);
  if (known) {
    report(known.last);
    known.listeners.add(report);
    return known.done;
  }
  const listeners = new Set([report]);
  const run: Running = {
    listeners,
    last: { share: 0, doing: 'Beginning' },
    done: Promise.reject(new Error('not begun')),
  };
  run.done.catch(() => undefined);
  run.done = workOut(ctx, { input, hash, snapshot }, (p) => {
    // The first thousand are told of when they are stored, which may be after the next step was heard.
    run.last = { share: Math.max(run.last.share, p.share), doing: p.doing };
    for (const tell of listeners) tell(p.first ? { ...run.last, first: p.first } : run.last);
  }).finally(() => running.delete(name));
  running.set(name, run);
  return run.done;
}

async function workOut(
  ctx: Context,
  of: SeasonWork & { hash: string },
  tell: (p: ForecastProgress) => void,
): Promise<ForecastSummary> {
  const keep = (summary: ForecastSummary) =>
    saveForecast(ctx.db, ctx.place.id, {
      id: `${ctx.place.id}:forecast:${of.hash}`,
      day: ctx.today,
      createdAt: ctx.enteredAt.toISOString(),
      seed: SEASON_SEED,
      seasons: summary.n,
      modelVersion: MODEL_VERSION,
      inputHash: of.hash,
      summary,
    });
  let first: Promise<void> = Promise.resolve();
  const onProgress = (p: ForecastProgress) => {
    const { first: early } = p;
    if (early) first = keep(early).then(() => tell(p));
    else tell(p);
  };
  const summary = bundled
    ? await inThread({ input: of.input, snapshot: of.snapshot }, onProgress)
    : runForecast(of.input, onProgress, undefined, () => pastLooks(of.snapshot));
  await first;
  await keep(summary);
  return summary;
}

/** Where the source runs as it is (tests, scripts) there is no built thread to start: the same function runs in place. */
const bundled = process.env.NEXT_RUNTIME === 'nodejs';

const inThread = (work: SeasonWork, onProgress: (p: ForecastProgress) => void): Promise<ForecastSummary> =>
  converse<SeasonWork, ForecastProgress, ForecastSummary>(
    new Worker(new URL('./forecast-thread.ts', import.meta.url)),
    work,
    onProgress,
  );
