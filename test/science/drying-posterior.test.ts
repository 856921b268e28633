import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { dryingEnd } from '#lib/science/drying-posterior.ts';
import { dryBasis } from '#lib/science/gab-isotherm.ts';
import { hoursToRatio, moistureRatio } from '#lib/science/page-drying.ts';

/** A published apple run (Royen et al. 2020), scaled to 1000 g; it came to 0.45 kg/kg at 5.615 h. */
const RUN = { freshG: 1000, w0: 0.8654, wt: 0.45 / 1.45, prior: { kappa: 0.35, n: 1.35 } };
const FINISH = 5.615;
const AT = {
  15: [0.842, 806.7],
  25: [1.404, 689.3],
  30: [1.685, 639.5],
  50: [2.808, 461.9],
  75: [4.211, 299.8],
} as const;
const weighed = (...shares: (keyof typeof AT)[]) => shares.map((s) => ({ hours: AT[s][0], grams: AT[s][1] }));

describe('the end of drying from weighings', () => {
  const cases = [
    { shares: [15], p: [4.23, 4.96, 5.9] },
    { shares: [15, 30], p: [5.02, 5.68, 6.5] },
    { shares: [25, 50], p: [5.46, 5.99, 6.69] },
    { shares: [25, 50, 75], p: [5.47, 5.99, 6.78] },
  ] as const;
  it.each(cases)(
    'of the published run, weighed at $shares % of its time, is the one worked independently',
    ({ shares, p }) => {
      const end = dryingEnd({ ...RUN, weighings: weighed(...shares) });
      // A quantile of a grid is only defined to a step of it.
      for (const [i, h] of [end.p10, end.p50, end.p90].entries()) assert.ok(Math.abs(h - (p[i] ?? 0)) < 0.015, `${h}`);
    },
  );

  it('is within 12 % of what the run took, and its band holds the truth', () => {
    for (const { shares } of cases) {
      const end = dryingEnd({ ...RUN, weighings: weighed(...shares) });
      assert.ok(Math.abs(end.p50 / FINISH - 1) < 0.12);
      assert.ok(end.p10 < FINISH && FINISH < end.p90);
    }
  });

  it('recovers 300 simulated runs: median error near 3 %, nine in ten within 9 %, the band right in 8 of 10 or more', () => {
    const normal = normals(20_200_612);
    const errors: number[] = [];
    let inside = 0;
    for (let run = 0; run < 300; run++) {
      const rate = { kappa: 0.35 * Math.exp(0.4 * normal()), n: 1.2 };
      const w0 = 0.856 + 0.012 * normal();
      const start = dryBasis(w0);
      const hoursTrue = hoursToRatio(rate, dryBasis(0.2) / start);
      const weighings = [0.25, 0.5].map((share) => {
        const hours = share * hoursTrue;
        return { hours, grams: 1000 * (1 - w0) * (1 + start * moistureRatio(rate, hours)) + 2 * normal() };
      });
      const end = dryingEnd({ freshG: 1000, w0: 0.856, wt: 0.2, prior: { kappa: 0.35, n: 1.2 }, weighings });
      errors.push(Math.abs(end.p50 / hoursTrue - 1));
      if (end.p10 <= hoursTrue && hoursTrue <= end.p90) inside++;
    }
    errors.sort((a, b) => a - b);
    const [median, ninth] = [errors[150] ?? 1, errors[270] ?? 1];
    assert.ok(median < 0.04 && ninth < 0.09, `median ${median}, nine in ten ${ninth}`);
    assert.ok(inside >= 240, `${inside} of 300`);
  });

  it('without weighings is the first guess with a wide band, and narrows with each', () => {
    const none = dryingEnd({ ...RUN, weighings: [] });
    const one = dryingEnd({ ...RUN, weighings: weighed(25) });
    assert.ok(none.p90 / none.p10 > one.p90 / one.p10);
  });

  it('refuses weighings that do not fit the load', () => {
    for (const w of [
      { hours: 0, grams: 900 },
      { hours: 1, grams: 1001 },
      { hours: 1, grams: 0 },
    ]) {
      assert.throws(() => dryingEnd({ ...RUN, weighings: [w] }), RangeError);
    }
  });
});

/** Seeded normal numbers (Park & Miller 1988, Box & Muller 1958): the test draws the same runs each time. */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
