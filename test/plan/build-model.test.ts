import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { batchCount } from '#lib/plan/plan.ts';
import { readPlan } from '#lib/plan/read-plan.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { ALL_TIGHTENINGS, type Tightenings } from '#lib/plan/tightenings.ts';
import { type GoldenPlan, goldenPlans } from '#test/plan/support/golden-plans.ts';

const close = (got: number | null, want: number, tolerance: number, what: string) =>
  assert.ok(got !== null && Math.abs(got - want) <= tolerance, `${what}: got ${got}, known ${want}`);

async function solve(g: GoldenPlan, tightenings: Partial<Tightenings>, relaxed = false) {
  const model = buildModel(g.instance, {
    tightenings: { ...g.tightenings, ...tightenings },
    ...(g.futures ? { futures: g.futures, firstStageDays: g.firstStageDays ?? 0 } : {}),
  });
  const answer = (await openSolver()).run(model, relaxed ? { relaxed: 'all' } : {});
  return { model, answer };
}

const FLAGS = Object.keys(ALL_TIGHTENINGS) as (keyof Tightenings)[];

describe('the small plans of known worth', () => {
  it('are all seventeen present', () => assert.equal(goldenPlans.length, 17));

  for (const g of goldenPlans) {
    it(`${g.id}: ${g.teaches}`, async () => {
      const { model, answer } = await solve(g, {});
      assert.equal(answer.status, 'optimal');
      close(answer.value, g.expect.worth, 1e-5, 'worth');
      close(answer.bound, g.expect.worth, 1e-5, 'bound');
      const plan = readPlan(g.instance, model, answer.columns as Float64Array, {
        ...(g.futures?.[0] ? { lots: g.futures[0].lots } : {}),
      });
      if (g.expect.batches) {
        const made: Record<string, number> = {};
        for (const c of plan.cooked) made[`${c.recipe}@${c.day}`] = (made[`${c.recipe}@${c.day}`] ?? 0) + batchCount(c);
        assert.deepEqual(made, g.expect.batches);
      }
      if (g.expect.bought)
        for (const m of g.instance.materials)
          close(
            plan.bought.filter((b) => b.material === m.id).reduce((n, b) => n + b.amount, 0),
            g.expect.bought[m.id] ?? 0,
            1e-6,
            `${m.id} bought`,
          );
    });

    it(`${g.id}: the relaxation is worth what it is known to be`, async () => {
      const { answer } = await solve(g, {}, true);
      close(answer.value, g.expect.relaxation, 1e-6, 'relaxation');
    });

    for (const flag of FLAGS)
      it(`${g.id}: the same worth without "${flag}"`, async () => {
        const { answer } = await solve(g, { [flag]: false });
        close(answer.value, g.expect.worth, 1e-5, 'worth');
      });

    it(`${g.id}: the same worth without any tightening`, async () => {
      const none = Object.fromEntries(FLAGS.map((f) => [f, false]));
      close((await solve(g, none)).answer.value, g.expect.worth, 1e-5, 'worth');
    });
  }
});
