/**
 * When a dryer load is done, learnt from its weighings: Page model on a grid over κ (log-normal about the first guess, sd
 * 0.5), n (±0.08 a step) and fresh moisture (±1.5 points), each weighing taken to 0.015 in moisture ratio. The spreads are
 * estimates. On generated runs that vary as stated, two weighings give the end to 6 % in the median and the band from p10 to p90
 * holds 79 %; on a scale good to 2 g and one shape 98 %; on runs shaped like a published one (Midilli, another family) 67 %
 * from a first guess of n 1.3 and 89 % from 1.35 (test/published/drying-checks). On that one published apple run (Royen et al.
 * 2020) the error is -12 to +7 %: plan on 10-15 %.
 */
import { dryBasis } from './gab-isotherm.ts';
import { hoursToRatio, moistureRatio, type PageRate } from './page-drying.ts';

export interface Weighing {
  readonly hours: number;
  readonly grams: number;
}

export interface DryingEnd {
  /** Hours from the start at which a tenth, half and nine tenths of the outcomes are done. */
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

const MOISTURE_RATIO_SD = 0.015;
const RATE_SD = 0.5;

export interface DryingLoad {
  readonly freshG: number;
  /** Shares of the wet weight. */
  readonly w0: number;
  readonly wt: number;
  /** kg water per kg dry that the air leaves; 0 in a heated dryer. */
  readonly leftX?: number;
  readonly weighings: readonly Weighing[];
}

/**
 * `prior` is the rate in the air it dries in (see dryingGuess; for fruit pieces n about 1.35, else 1.15). Without weighings it
 * returns the first guess; null where the air never takes it so low. RangeError for a weighing at 0 h or heavier than the load.
 */
export function dryingEnd(load: DryingLoad & { leftX?: 0; prior: PageRate }): DryingEnd;
export function dryingEnd(load: DryingLoad & { prior: PageRate }): DryingEnd | null;
export function dryingEnd(load: DryingLoad & { prior: PageRate }): DryingEnd | null {
  if ((load.leftX ?? 0) >= dryBasis(load.wt)) return null;
  for (const { hours, grams } of load.weighings) {
    if (!(hours > 0 && grams > 0 && grams <= load.freshG)) {
      throw new RangeError(`a weighing of ${grams} g at ${hours} h does not fit a load of ${load.freshG} g`);
    }
  }
  const ends: { hours: number; logWeight: number }[] = [];
  for (let i = -50; i <= 50; i++) {
    const kappa = load.prior.kappa * Math.exp((RATE_SD * i) / 12);
    for (let j = -2; j <= 2; j++) {
      for (let q = -2; q <= 2; q++) {
        const point = outcome(load, { kappa, n: load.prior.n + 0.08 * j }, load.w0 + 0.015 * q);
        if (point) ends.push({ hours: point.hours, logWeight: point.logFit - 0.5 * ((i / 12) ** 2 + j * j + q * q) });
      }
    }
  }
  return quantiles(ends);
}

/** Hours to the target for one point of the grid, and how well it fits; null where the moisture is no moisture. */
function outcome(load: Omit<DryingLoad, 'w0'>, rate: PageRate, w0: number): { hours: number; logFit: number } | null {
  if (!(w0 > load.wt && w0 < 1)) return null;
  const left = load.leftX ?? 0;
  const toGo = dryBasis(w0) - left;
  const dryG = load.freshG * (1 - w0);
  const logFit = load.weighings.reduce((sum, { hours, grams }) => {
    const seen = (grams / dryG - 1 - left) / toGo;
    return sum - 0.5 * ((seen - moistureRatio(rate, hours)) / MOISTURE_RATIO_SD) ** 2;
  }, 0);
  return { hours: hoursToRatio(rate, (dryBasis(load.wt) - left) / toGo), logFit };
}

function quantiles(ends: { hours: number; logWeight: number }[]): DryingEnd {
  const best = ends.reduce((most, { logWeight }) => Math.max(most, logWeight), Number.NEGATIVE_INFINITY);
  const weighted = ends
    .map(({ hours, logWeight }) => ({ hours, weight: Math.exp(logWeight - best) }))
    .sort((a, b) => a.hours - b.hours);
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  if (!(total > 0)) throw new RangeError('no outcome fits this load: check moistures and weighings');
  const at = (share: number): number => {
    let below = 0;
    for (const { hours, weight } of weighted) {
      below += weight;
      if (below >= share * total) return hours;
    }
    return weighted.at(-1)?.hours ?? Number.NaN;
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
