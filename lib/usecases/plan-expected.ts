/**
 * What is still to be picked in the days of a plan: the crop's posterior after this season's pickings, gathered into a
 * picking every third day from tomorrow on. Nothing is expected for today: today's batches take only fruit that is there.
 */
import { expectedPicks as picksAhead } from '#lib/forecast/expected-picks.ts';
import { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { addDays, daysBetween } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { learnSeason } from './forecast-fruit.ts';
import type { ExpectedPick } from './plan-lots.ts';
import { type CropSeason, seasonCrops } from './season-crops.ts';

/** Days between two pickings of a crop. Common practice in a household's season; estimate. */
const EVERY_DAYS = 3;
/** A coarse grid is enough: the plan needs a mean to a tenth of a kilogram, not a fan. */
const GRID = { nMid: 21, nWidth: 5 };

export async function expectedPicks(ctx: Context, horizon: number): Promise<ExpectedPick[]> {
  return (await seasonsInSight(ctx, horizon)).flatMap(({ cropId, season, opens }) =>
    picksOf(season, opens, horizon).map((p) => ({ cropId, ...p })),
  );
}

/** What a crop brings in these days when it comes short (exceeded nine times in ten) and heavy (one in ten), times its mean. */
export interface HarvestSpread {
  cropId: string;
  short: number;
  heavy: number;
}

export async function harvestSpread(ctx: Context, horizon: number): Promise<HarvestSpread[]> {
  return (await seasonsInSight(ctx, horizon)).flatMap(({ cropId, season, opens }) => {
    const posterior = posteriorOf(season, opens);
    const { all } = picksAhead({
      posterior,
      cropId,
      seed: SPREAD_SEED,
      fromDay: season.fromDay,
      days: horizon,
      futures: FUTURES,
    });
    return all.kg > 0 ? [{ cropId, short: all.lowKg / all.kg, heavy: all.highKg / all.kg }] : [];
  });
}

const SPREAD_SEED = 1;
const FUTURES = 500;

async function seasonsInSight(
  ctx: Context,
  horizon: number,
): Promise<{ cropId: string; season: CropSeason; opens: number }[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['harvest', 'sight', 'correct'], to: ctx.today });
  const wrong = new Set(acts.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  const harvests = acts.filter((a) => a.kind === 'harvest' && !wrong.has(a.id));
  const snapshot = {
    today: ctx.today,
    place: ctx.place,
    harvests,
    sights: acts.filter((a) => a.kind === 'sight' && !wrong.has(a.id)),
    counts: [],
    lots: [],
    movements: [],
    recordedFrom: ctx.today,
    rates: [],
    plan: null,
  };
  return seasonCrops(snapshot).flatMap((crop) => {
    const season = crop.seasons[0];
    const inSight = season && season.windowFrom <= addDays(ctx.today, horizon - 1);
    return inSight && crop.keptShare > 0
      ? [{ cropId: crop.id, season, opens: daysBetween(ctx.today, season.windowFrom) }]
      : [];
  });
}

/** `opens`: day of the horizon on which the crop's window opens; 0 or below when it is open. */
export function picksOf(season: CropSeason, opens: number, horizon: number): { day: number; kg: number }[] {
  const days = pickingDays(Math.max(1, opens), horizon);
  const first = days[0];
  if (first === undefined) return [];
  const posterior = posteriorOf(season, opens);
  const edges = [season.fromDay - 1, ...days.map((d) => season.fromDay + d), season.fromDay + horizon + 365];
  const path = posterior.meanPath(edges);
  return days.map((day, i) => ({ day, kg: Math.round((path[i] as number) * 100) / 100 }));
}

function posteriorOf(season: CropSeason, opens: number): HarvestPosterior {
  const posterior = new HarvestPosterior(season.prior, GRID);
  // Before its window, and before any record, nothing was ripe: otherwise the whole early tail would come in on the first day.
  if (season.records.length === 0) posterior.update({ t: season.fromDay + Math.min(0, opens) - 1, kg: 0 });
  learnSeason(posterior, season);
  return posterior;
}

const pickingDays = (from: number, horizon: number): number[] =>
  Array.from({ length: horizon }, (_, d) => d).filter((d) => d >= from && (d - from) % EVERY_DAYS === 0);
