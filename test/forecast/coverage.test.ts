/**
 * Do the ranges hold as often as they say? On seasons drawn from the model itself, with looks planned without knowing the
 * truth. This shows that the arithmetic is right, not that the model fits anyone's trees.
 */
import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { type CropPrior, EVENNESS, SHAPE_WEIGHTS } from '#lib/forecast/crop-prior.ts';
import { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { key, Sfc32 } from '#lib/forecast/random.ts';
import { type CurveShape, curve } from '#lib/forecast/ripening-curve.ts';

const SEASONS = 300;
const FUTURES = 500;
const STAGES = [-40, -6, 0, 12];
const BANDS = [0.5, 0.8, 0.95];
const PRIOR: CropPrior = {
  total: [
    { weight: 0.9, mean: 40, cv: 0.6 },
    { weight: 0.1, mean: 10, cv: 0.7 },
  ],
  mid: { mean: 230, sd: 8 },
  width: { median: 14, sdLog: 0.35 },
  shapes: SHAPE_WEIGHTS,
  kappa: EVENNESS,
};

/** Position that a uniform number falls on among weights that add up to 1. */
const pick = (weights: readonly number[], u: number): number => {
  let at = 0;
  for (let sum = weights[0] as number; sum < u && at < weights.length - 1; sum += weights[at] as number) at++;
  return at;
};

/** A season of the model: a share picked by day t, a mass for any step, and what is left. */
function drawSeason(rng: Sfc32) {
  const year = PRIOR.total[
    pick(
      PRIOR.total.map((y) => y.weight),
      rng.u(),
    )
  ] as CropPrior['total'][0];
  const kappa = EVENNESS.values[pick(EVENNESS.weights, rng.u())] as number;
  const unevenness = EVENNESS.values.reduce<number>((s, k, i) => s + (EVENNESS.weights[i] as number) / k, 0);
  const a = 2 + 1 / ((1 + year.cv ** 2) / (1 + unevenness) - 1);
  const total = (year.mean * (a - 1)) / rng.gamma(a);
  const shape = pick(SHAPE_WEIGHTS, rng.u()) as CurveShape;
  const mid = PRIOR.mid.mean + PRIOR.mid.sd * rng.normal();
  const width = PRIOR.width.median * Math.exp(PRIOR.width.sdLog * rng.normal());
  return {
    ripe: (t: number) => curve(shape, t, mid, width),
    kg: (share: number) => (total / kappa) * rng.gamma(kappa * share),
  };
}

/** [stage][band]: share of seasons whose remainder fell inside. */
function coverage(): number[][] {
  const held = STAGES.map(() => BANDS.map(() => 0));
  for (let s = 0; s < SEASONS; s++) {
    const rng = new Sfc32(key(2024, s));
    const season = drawSeason(rng);
    const post = new HarvestPosterior(PRIOR, { nMid: 31, nWidth: 7 });
    let [t, ripe, left] = [PRIOR.mid.mean - 22, 0, 0];
    STAGES.forEach((stage, i) => {
      for (; t <= PRIOR.mid.mean + stage; t += 2 + Math.floor(4 * rng.u())) {
        const now = season.ripe(t);
        const kg = season.kg(now - ripe);
        // Below the threshold the user says "looked, nothing ripe".
        post.update({ t, kg: kg < 0.002 * 37 ? 0 : kg });
        ripe = now;
      }
      left = season.kg(1 - ripe);
      const { remaining } = post.sample(FUTURES, [t, t + 400], rng);
      remaining.sort();
      BANDS.forEach((band, b) => {
        const inside =
          left >= quantileSorted(remaining, (1 - band) / 2) && left <= quantileSorted(remaining, (1 + band) / 2);
        if (inside) (held[i] as number[])[b] = ((held[i] as number[])[b] as number) + 1;
      });
    });
  }
  return held.map((row) => row.map((k) => k / SEASONS));
}

describe('ranges on seasons of the model itself', () => {
  const held = coverage();
  // 3.5 binomial standard errors at 300 seasons: 10, 8 and 4 points. The 12 comparisons are not independent.
  test.each(STAGES.map((stage, i) => ({ stage, i })))(
    'as of day $stage against the prior mid-date, 50, 80 and 95 % hold',
    ({ i }) => {
      BANDS.forEach((band, b) => {
        const got = held[i]?.[b] as number;
        assert.ok(Math.abs(got - band) < 3.5 * Math.sqrt((band * (1 - band)) / SEASONS), `${band}: held ${got}`);
      });
    },
  );
});
