import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { checkPlan } from '#lib/plan/check-plan.ts';
import type { PlanProgress } from '#lib/plan/solve-options.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { goldenPlans } from '#test/plan/support/golden-plans.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';

describe('solving a plan', () => {
  for (const g of goldenPlans.filter((x) => !x.futures))
    it(`proves the known worth of "${g.id}"`, async () => {
      const solved = await solvePlan(g.instance, { gap: 0 });
      assert.equal(solved.status, 'optimal');
      assert.ok(Math.abs(solved.worth - g.expect.worth) < 1e-5, `worth ${solved.worth}`);
    });

  it('tells a plan at once, then better ones, with a bound that only falls and is never crossed', async () => {
    const told: PlanProgress[] = [];
    const p = inventedSeason(2, 'mini');
    const solved = await solvePlan(p, { seconds: 20, gap: 0 }, { onProgress: (x) => told.push(x) });
    assert.equal(told[0]?.stage, 'by hand');
    assert.equal(told[0]?.seconds, 0);
    assert.ok(told.some((x) => x.stage === 'amounts') && told.some((x) => x.stage === 'improved'));
    told.slice(1).forEach((x, i) => {
      const before = told[i] as PlanProgress;
      assert.ok(x.worth >= before.worth - 1e-9, 'a worse plan was told');
      assert.ok(x.seconds >= before.seconds - 1e-9, 'time ran backwards');
      assert.ok((x.bound ?? Infinity) <= (before.bound ?? Infinity) + 1e-9, 'the bound rose');
      if (x.bound !== null) assert.ok(x.worth <= x.bound + 1e-4, `worth ${x.worth} above the bound ${x.bound}`);
    });
    for (const x of told) assert.deepEqual(checkPlan(p, x.plan).breaches, []);
    assert.equal(solved.status, 'optimal');
    assert.ok(solved.gap <= 1e-6 && solved.check.doable);
    assert.match(solved.solver, /^HiGHS \d+\.\d+/);
  });

  it('gives the same plan twice when limited by nodes, and says what made it', async () => {
    const p = inventedSeason(3, 'mini');
    const [a, b] = [
      await solvePlan(p, { nodes: 1, seed: 7, gap: 0.02 }),
      await solvePlan(p, { nodes: 1, seed: 7, gap: 0.02 }),
    ];
    assert.deepEqual(a.plan, b.plan);
    assert.deepEqual([a.worth, a.bound, a.nodes, a.seed], [b.worth, b.bound, b.nodes, 7]);
  });

  it('keeps the best plan in hand when it is cancelled', async () => {
    let told = 0;
    const solved = await solvePlan(
      inventedSeason(1, 'x1'),
      { seconds: 60 },
      { onProgress: () => told++, cancelled: () => told >= 4 },
    );
    assert.equal(solved.status, 'cancelled');
    assert.ok(solved.check.doable && solved.seconds < 20, `${solved.seconds} s`);
  });

  it('stops at its time limit with a plan, a bound and the gap between them', async () => {
    const solved = await solvePlan(inventedSeason(4, 'x1'), { seconds: 3 });
    assert.equal(solved.status, 'time limit');
    assert.ok(solved.seconds < 6, `${solved.seconds} s`);
    assert.ok(solved.bound > solved.worth && solved.gap > 0 && solved.check.doable);
  });

  it('starts from a plan that is handed in', async () => {
    const p = inventedSeason(2, 'mini');
    const best = await solvePlan(p, { gap: 0 });
    const told: PlanProgress[] = [];
    await solvePlan(p, { start: best.plan, seconds: 1 }, { onProgress: (x) => told.push(x) });
    assert.ok(Math.abs((told[0]?.worth ?? 0) - best.worth) < 1e-9);
  });

  it('fills whole jars on request and sends what is left to the table', async () => {
    const p = inventedSeason(2, 'tiny');
    const free = await solvePlan(p, { gap: 0 });
    const whole = await solvePlan(p, { wholeJars: true, gap: 0.001, seconds: 15 });
    assert.ok(whole.plan.jars.length > 0 && whole.plan.jars.every((j) => Number.isInteger(j.count)));
    assert.deepEqual(whole.check.breaches, []);
    assert.ok(whole.worth <= free.worth + 1e-6);
  });

  it('refuses data that do not fit together, naming the fault', async () => {
    const p = inventedSeason(1, 'tiny');
    await assert.rejects(() => solvePlan({ ...p, days: p.days.slice(1) }), /2 days given for a horizon of 3/);
  });
});
