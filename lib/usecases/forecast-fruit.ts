/** Fruit to come, week by week, as possible years: one posterior per crop and season, then the pools the kitchen draws on. */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over arrays allocated here
import { harvestBank } from '#lib/forecast/harvest-bank.ts';
import { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';
import { qnorm } from '#lib/forecast/math.ts';
import { mergePicks } from '#lib/forecast/merge-picks.ts';
import { key, Sfc32, uid } from '#lib/forecast/random.ts';
import type { HarvestBanks } from '#lib/forecast/season-draws.ts';
import type { CropSeason } from './season-crops.ts';
import type { ForecastInput } from './season-scenario.ts';

export interface FruitOptions {
  seed: number;
  /** Possible years per pool. */
  rows: number;
}

/** Crops of one pool share a good year as crops at large do: rank correlation 0.3, from memory, unmeasured. */
const RHO = 0.3;

/** What is known of a season after its records. */
export function posteriorOf(season: CropSeason): HarvestPosterior {
  return learnSeason(new HarvestPosterior(season.prior), season);
}

/** An experienced eye is taken to be right to a third, either way; how good this household's is, is not known. Estimate. */
const EYE_CV = 0.33;

/** The season's pickings in their order, and what was seen hanging after those before it. */
export function learnSeason(posterior: HarvestPosterior, { records, sight }: CropSeason): HarvestPosterior {
  const picks = mergePicks(records);
  const before = picks.filter((r) => sight === null || r.t <= sight.t);
  for (const record of before) posterior.update(record);
  if (sight) posterior.eyeEstimate(sight.kg, EYE_CV);
  for (const record of picks.slice(before.length)) posterior.update(record);
  return posterior;
}

export type Posteriors = HarvestPosterior[][];
export const posteriorsOf = (input: Pick<ForecastInput, 'crops'>): Posteriors =>
  input.crops.map((c) => c.seasons.map(posteriorOf));

/** Kilograms for the kitchen by pool: rows x weeks, sorted by size; what is sold, eaten fresh or culled is left out. */
export function fruitBanks(input: ForecastInput, posteriors: Posteriors, o: FruitOptions): HarvestBanks {
  const weeks = input.scenario.weeks;
  const paths = input.pools.map((pool) => {
    const parts = pool.crops.flatMap((c) => {
      const crop = input.crops[c]!;
      return crop.seasons.map((season, k) => ({
        name: `${crop.id} ${season.year}`,
        share: crop.keptShare,
        year: season.year,
        bank: harvestBank({
          posterior: posteriors[c]![k]!,
          cropId: `${crop.id} ${season.year}`,
          seed: o.seed,
          fromDay: season.fromDay,
          weeks,
          rows: o.rows,
        }),
      }));
    });
    const bank = pairedByRank(parts, { ...o, weeks, pool: pool.id });
    for (const b of pool.bought) for (let r = 0; r < o.rows; r++) bank[r * weeks + b.week]! += b.kg;
    return bank;
  });
  return { paths, rows: input.pools.map(() => o.rows) };
}

interface Part {
  name: string;
  share: number;
  year: number;
  bank: Float32Array;
}

/** Adds the crops of a pool row by row; which row meets which follows a common good year and each crop's own luck. */
function pairedByRank(parts: readonly Part[], o: FruitOptions & { weeks: number; pool: string }): Float32Array {
  const sum = new Float32Array(o.rows * o.weeks);
  const common = new Map<number, Float64Array>();
  for (const part of parts) {
    const year = common.get(part.year) ?? scores(o.rows, key(o.seed, uid(`pool ${o.pool} ${part.year}`)));
    common.set(part.year, year);
    const own = scores(o.rows, key(o.seed, uid(`pair ${part.name}`)));
    const z = own.map((x, r) => Math.sqrt(RHO) * year[r]! + Math.sqrt(1 - RHO) * x);
    const order = Uint32Array.from(z.keys()).sort((a, b) => z[a]! - z[b]!);
    order.forEach((row, rank) => {
      for (let w = 0; w < o.weeks; w++) sum[row * o.weeks + w]! += part.share * part.bank[rank * o.weeks + w]!;
    });
  }
  return sortedBySize(sum, o);
}

function scores(n: number, seed: number): Float64Array {
  const rng = new Sfc32(seed);
  return Float64Array.from({ length: n }, () => qnorm(rng.u()));
}

function sortedBySize(bank: Float32Array, o: { rows: number; weeks: number }): Float32Array {
  const size = Float64Array.from({ length: o.rows }, (_, r) =>
    bank.subarray(r * o.weeks, (r + 1) * o.weeks).reduce((a, b) => a + b, 0),
  );
  const sorted = new Float32Array(bank.length);
  Uint32Array.from(size.keys())
    .sort((a, b) => size[a]! - size[b]!)
    .forEach((row, place) => {
      sorted.set(bank.subarray(row * o.weeks, (row + 1) * o.weeks), place * o.weeks);
    });
  return sorted;
}
