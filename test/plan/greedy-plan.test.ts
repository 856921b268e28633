import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { fitsModel } from '#lib/plan/fits-model.ts';
import { greedyPlan, greedyPlans } from '#lib/plan/greedy-plan.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { LOOSE } from '#lib/plan/tightenings.ts';
import { writePlan } from '#lib/plan/write-plan.ts';
import { type Family, inventedSeason } from '#test/plan/support/invented-season.ts';

const season = fc.tuple(fc.integer({ min: 1, max: 100_000 }), fc.constantFrom<Family>('tiny', 'mini', 'x1'));

describe('the greedy plan', () => {
  it('can be carried out, in every invented season and by every rule', () => {
    fc.assert(
      fc.property(season, ([seed, family]) => {
        const p = inventedSeason(seed, family);
        for (const plan of family === 'x1' ? [greedyPlan(p)] : greedyPlans(p))
          assert.deepEqual(checkPlan(p, plan).breaches, []);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('cooks something when there is something worth cooking', () => {
    const cooked = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => greedyPlan(inventedSeason(seed, 'mini')).cooked.length);
    assert.ok(Math.min(...cooked) > 0, cooked.join(' '));
  });

  it('fits the model’s own rows at the same worth, and never beats the relaxation', async () => {
    const solver = await openSolver();
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const p = inventedSeason(seed, 'mini');
      const model = buildModel(p, { tightenings: LOOSE });
      const plan = greedyPlan(p);
      const columns = writePlan(p, model, plan);
      assert.ok(columns && fitsModel(model, columns), `season ${seed}`);
      const worth = model.columns.reduce((n, c, j) => n + c.cost * (columns[j] ?? 0), 0);
      assert.ok(Math.abs(worth - checkPlan(p, plan).worth.total) < 1e-6, `${worth}`);
      assert.ok(worth <= (solver.run(model, { relaxed: 'all' }).value as number) + 1e-6);
    }
  });

  it('is made the same way twice', () => {
    const p = inventedSeason(5, 'x1');
    assert.deepEqual(greedyPlan(p), greedyPlan(p));
  });

  it('cooks a pinned batch on its day when it fits', () => {
    const p = inventedSeason(1, 'mini');
    const made = greedyPlan(p).cooked[0];
    assert.ok(made);
    const pinned = { ...p, pins: [{ recipe: made.recipe, day: made.day, batches: 1 }] };
    assert.deepEqual(checkPlan(pinned, greedyPlan(pinned)).breaches, []);
  });
});
