/**
 * How long the plan room takes, and how good the plan in hand is after so many solver seconds, on invented 14-day seasons
 * (40 lots, 25 recipes). Run by hand: npx vitest bench --run --config test/vitest.config.ts test/bench/plan
 * Seconds are this machine's; the gap is against the bound proven by the end of the run.
 */
import { bench, describe } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { greedyPlan, greedyPlans } from '#lib/plan/greedy-plan.ts';
import { planGap } from '#lib/plan/solve-options.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';

const season = inventedSeason(1, 'x1');
const MARKS = [1, 3, 5, 10, 20];

describe('the parts of a 14-day plan', () => {
  bench('greedy plan by one rule', () => void greedyPlan(season));
  bench('greedy plans by all rules', () => void greedyPlans(season));
  bench('building the model', () => void buildModel(season));
  const plan = greedyPlan(season);
  bench('checking a plan', () => void checkPlan(season, plan));
  const model = buildModel(season);
  bench('the relaxation', async () => void (await openSolver()).run(model, { relaxed: 'all' }), {
    iterations: 3,
    time: 0,
  });
});

describe('the plan in hand', () => {
  for (const seed of [1, 2, 3])
    bench(
      `season ${seed}: 20 solver seconds`,
      async () => process.stdout.write(await profile(seed)) as unknown as undefined,
      { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
    );
});

async function profile(seed: number): Promise<string> {
  const worthAt = new Map<number, number>();
  const solved = await solvePlan(
    inventedSeason(seed, 'x1'),
    { seconds: 20 },
    {
      onProgress: (x) => {
        for (const s of MARKS) if (x.seconds <= s) worthAt.set(s, x.worth);
      },
    },
  );
  const line = MARKS.map(
    (s) =>
      `${s} s ${(worthAt.get(s) ?? 0).toFixed(1)} (${(100 * planGap(worthAt.get(s) ?? 0, solved.bound)).toFixed(1)} %)`,
  );
  return `season ${seed}: ${line.join(', ')}; bound ${solved.bound.toFixed(1)}, ${solved.nodes} nodes, ${solved.status}, ${solved.solver}\n`;
}
