/** The whole reckoning of a season ahead, from plain input to what is kept of it: a first 1,000 seasons, then 4,000. */
import { batchWorth } from '#lib/forecast/batch-worth.ts';
import { checkScenario } from '#lib/forecast/check-scenario.ts';
import { allocOut } from '#lib/forecast/out.ts';
import type { Scenario } from '#lib/forecast/scenario.ts';
import { drawSeasons, type HarvestBanks } from '#lib/forecast/season-draws.ts';
import { simulate } from '#lib/forecast/simulate.ts';
import { fruitBanks, posteriorsOf } from './forecast-fruit.ts';
import { type CropOutlook, cropOutlook } from './forecast-harvest.ts';
import { SEASON_SEED } from './forecast-hash.ts';
import { type ForecastSummary, forecastSummary } from './forecast-summary.ts';
import { seasonChecks } from './season-checks.ts';
import type { PastLook } from './season-past.ts';
import type { ForecastInput } from './season-scenario.ts';
import { whatIfs } from './season-what-if.ts';

export const FIRST_SEASONS = 1000;
export const SEASONS = 4000;
/** Changes are told apart season by season, so fewer do. */
export const WHAT_IF_SEASONS = 400;
const CHUNK = 500;
/** Possible years kept per pool of fruit: enough for tenths, and reused by every run. */
const BANK_ROWS = 2048;

export interface ForecastProgress {
  /** 0 to 1. */
  share: number;
  doing: string;
  /** The first 1,000 seasons, once they are there. */
  first?: ForecastSummary;
}

/** Same input, same answer: the seed is fixed and nothing here reads a clock. Throws RangeError beyond the simulation's limits. */
export function runForecast(
  input: ForecastInput,
  report: (p: ForecastProgress) => void,
  seasons = { first: FIRST_SEASONS, all: SEASONS },
  past: () => readonly PastLook[] = () => [],
): ForecastSummary {
  report({ share: 0.02, doing: 'Learning from the pickings' });
  const posteriors = posteriorsOf(input);
  const harvest = input.crops.flatMap((crop, c): CropOutlook[] => {
    const season = crop.seasons[0];
    const posterior = posteriors[c]?.[0];
    return season && posterior ? [cropOutlook(crop, season, { posterior, seed: SEASON_SEED, today: input.today })] : [];
  });
  report({ share: 0.2, doing: 'Laying out possible harvests' });
  const banks = fruitBanks(input, posteriors, { seed: SEASON_SEED, rows: BANK_ROWS });
  const scenario: Scenario = { ...input.scenario, batchWorth: worthOf(input) };
  checkScenario(scenario);
  const simulated = (n: number, from: number, to: number) =>
    forecastSummary(
      input,
      trySeasons(scenario, banks, {
        n,
        report: (done) => report({ share: from + (to - from) * done, doing: `Trying ${n} seasons` }),
      }),
      harvest,
    );
  const first = simulated(seasons.first, 0.4, 0.5);
  report({ share: 0.5, doing: `The first ${seasons.first} seasons are in`, first });
  const all = seasons.all === seasons.first ? first : simulated(seasons.all, 0.5, 0.8);
  report({ share: 0.8, doing: 'Trying what if' });
  const whatIf = whatIfs(input, scenario, drawSeasons(scenario, banks, { n: WHAT_IF_SEASONS, seed: SEASON_SEED }));
  report({ share: 0.9, doing: 'Looking back' });
  return { ...all, whatIf, checks: seasonChecks(past(), SEASON_SEED) };
}

/** Worth of one more batch, by what the household means to have of each line. */
export function worthOf({ scenario, taste, lines }: ForecastInput): Float32Array[] {
  const products = scenario.products.map((p, i) => ({ ...p, usePerWeek: lines[i]?.wantedPerWeek ?? p.usePerWeek }));
  return batchWorth({ ...scenario, products }, taste);
}

/** Results of n seasons, the season kept. */
export function trySeasons(scenario: Scenario, banks: HarvestBanks, o: { n: number; report?: (done: number) => void }) {
  const draws = drawSeasons(scenario, banks, { n: o.n, seed: SEASON_SEED });
  const out = allocOut(scenario, o.n);
  for (let from = 0; from < o.n; from += CHUNK) {
    simulate({ scenario, draws, out }, from, Math.min(o.n, from + CHUNK));
    o.report?.(Math.min(1, (from + CHUNK) / o.n));
  }
  return out;
}
