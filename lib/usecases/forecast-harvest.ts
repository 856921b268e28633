/** What a crop has brought this season and may still bring, with what that rests on. */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over arrays allocated here
import type { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { key, Sfc32, uid } from '#lib/forecast/random.ts';
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import type { CropSeason, SeasonCrop } from './season-crops.ts';

export interface Quantiles {
  p10: number;
  p25: number;
  p50: number;
  p75: number;
  p90: number;
}
export interface CropOutlook {
  id: string;
  code: string;
  label: string;
  foodId: string;
  year: number;
  expectedKg: number;
  basis: string;
  pastSeasons: { year: number; kg: number }[];
  looks: number;
  pickings: number;
  pickedKg: number;
  comingMean: number;
  totalMean: number;
  /** kg still to come. */
  coming: Quantiles;
  /** Middle of the season: the day half of it is ripe, and how well that is known, days. */
  mid: PlainDate;
  midSd: number;
  /** Weights of 1: what this season's records count, and what they and the years before say, kg. */
  recordsWeight: number;
  recordsSay: number | null;
  priorSays: number;
  /** Chance of a failed year, and before any record of this season. */
  failed: number;
  failedBefore: number;
  picked: { day: PlainDate; kg: number }[];
  sight: { day: PlainDate; kg: number } | null;
  /** Picked so far and still to come added up, from today on. */
  curve: ({ day: PlainDate } & Quantiles)[];
  windowFrom: PlainDate;
  windowTo: PlainDate;
}

const PATHS = 2000;
const STEPS = 14;

export function cropOutlook(
  crop: SeasonCrop,
  season: CropSeason,
  o: { posterior: HarvestPosterior; seed: number; today: PlainDate },
): CropOutlook {
  const means = o.posterior.means();
  const evidence = o.posterior.evidence();
  const edges = curveDays(season, means);
  const { paths, cols, remaining } = o.posterior.sample(
    PATHS,
    [...edges, edges.at(-1)! + 400],
    new Sfc32(key(o.seed, uid(`outlook ${crop.id}`))),
  );
  const dayOf = (t: number) => addDays(o.today, Math.round(t) - season.fromDay);
  const curve = edges.slice(1).map((t, j) => ({
    day: dayOf(t),
    ...quantiles(Float64Array.from({ length: PATHS }, (_, r) => means.picked + sumTo(paths, r * cols, j))),
  }));
  const start = { p10: means.picked, p25: means.picked, p50: means.picked, p75: means.picked, p90: means.picked };
  const kinds = season.prior.total;
  return {
    id: crop.id,
    code: crop.code,
    label: crop.label,
    foodId: crop.foodId,
    year: season.year,
    expectedKg: crop.expectedKg,
    basis: crop.basis,
    pastSeasons: crop.pastSeasons,
    looks: season.records.filter((r) => r.kg === 0).length,
    pickings: season.records.filter((r) => r.kg > 0).length,
    pickedKg: means.picked,
    comingMean: means.remaining,
    totalMean: means.picked + means.remaining,
    coming: quantiles(remaining),
    mid: dayOf(means.mid),
    midSd: means.midSd,
    recordsWeight: evidence.recordsWeight,
    recordsSay: Number.isFinite(evidence.recordsSay) ? evidence.recordsSay : null,
    priorSays: evidence.priorSays,
    failed: means.pComponent[1] ?? 0,
    failedBefore: kinds[1] ? kinds[1].weight / (kinds[0]!.weight + kinds[1].weight) : 0,
    picked: addedUp(season, dayOf),
    sight: season.sight ? { day: dayOf(season.sight.t), kg: season.sight.kg } : null,
    curve: [{ day: dayOf(season.records.at(-1)?.t ?? edges[0]!), ...start }, ...curve],
    windowFrom: season.windowFrom,
    windowTo: season.windowTo,
  };
}

/** Days of the drawing: from today (or the season's beginning) until next to nothing is left to come. */
function curveDays(season: CropSeason, means: { mid: number; midSd: number; width: number }): number[] {
  const from = Math.max(season.fromDay, means.mid - means.width - 2 * means.midSd);
  const to = Math.max(from + 7, means.mid + means.width + 2 * means.midSd);
  return Array.from({ length: STEPS + 1 }, (_, i) => Math.round(from + ((to - from) * i) / STEPS));
}

const sumTo = (paths: Float32Array, at: number, last: number): number => {
  let sum = 0;
  for (let j = 0; j <= last; j++) sum += paths[at + j]!;
  return sum;
};

function quantiles(values: Float64Array): Quantiles {
  const sorted = values.slice().sort();
  const q = (p: number) => quantileSorted(sorted, p);
  return { p10: q(0.1), p25: q(0.25), p50: q(0.5), p75: q(0.75), p90: q(0.9) };
}

function addedUp(season: CropSeason, dayOf: (t: number) => PlainDate): CropOutlook['picked'] {
  let kg = 0;
  const picked = season.records
    .filter((r) => r.kg > 0)
    .map((r) => {
      kg += r.kg;
      return { day: dayOf(r.t), kg };
    });
  const first = picked[0];
  return first && daysBetween(season.windowFrom, first.day) > -60
    ? [{ day: addDays(first.day, -1), kg: 0 }, ...picked]
    : picked;
}
