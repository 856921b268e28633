import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { checkPlan } from '#lib/plan/check-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { MORE_OF, oneMore } from '#lib/plan/one-more.ts';
import { aimedAt, aimFigure, PLAN_AIMS, trulyBetter } from '#lib/plan/plan-aims.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';
import { oneKitchen } from '#test/plan/support/one-kitchen.ts';

const gains = async (p: PlanInstance) => {
  const { plan } = await solvePlan(p, { seconds: 10 });
  const ask = { shelfMetreL: 10, seconds: 5, seed: 1 };
  const entries: [string, number][] = [];
  for (const what of MORE_OF) entries.push([what, (await oneMore(p, plan, { ...ask, what })).gain]);
  return Object.fromEntries(entries);
};

describe('what one more of a limit brings', () => {
  it('is nothing but for the limit that holds the plan back, whose gain is the next batch', async () => {
    const p = oneKitchen({ mode: { maxKg: 4, activeH: 3 } });
    const short = { ...p, days: p.days.map((d) => ({ ...d, active: 2, overtime: 0 })) };
    const g = await gains(short);
    assert.ok((g.hour as number) > 1, JSON.stringify(g));
    for (const what of ['burner', 'lids', 'shelf']) assert.ok((g[what] as number) < 1e-6, `${what}: ${g[what]}`);
  });
});

describe('plans that look for something else', () => {
  for (const seed of [1, 2, 3])
    it(`season ${seed}: none is worth more than the proven best, and none is worse in its own aim`, async () => {
      const p = inventedSeason(seed, 'tiny');
      const best = await solvePlan(p, { gap: 0 });
      const other = { plan: best.plan, check: best.check };
      for (const aim of PLAN_AIMS) {
        const { plan } = await solvePlan(aimedAt(p, aim), { gap: 0, start: best.plan });
        const check = checkPlan(p, plan);
        assert.ok(check.consistent, `${aim} breaks no limit of the data as they are`);
        assert.ok(check.worth.total <= best.bound + 1e-5, aim);
        assert.ok(aimFigure(p, aim, { plan, check }) <= aimFigure(p, aim, other) + 1e-6, aim);
      }
    });
  it('differ truly only from half a unit and a twentieth on', () => {
    assert.equal(trulyBetter(9.6, 10), false);
    assert.equal(trulyBetter(9.4, 10), true);
    assert.equal(trulyBetter(96, 100), false);
  });
});
