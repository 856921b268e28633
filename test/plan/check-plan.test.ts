import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { polishAmounts } from '#lib/plan/polish-amounts.ts';
import { readPlan } from '#lib/plan/read-plan.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { goldenPlans } from '#test/plan/support/golden-plans.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';
import { oneKitchen } from '#test/plan/support/one-kitchen.ts';

const season = inventedSeason(2, 'mini');
const solved = async (p: PlanInstance): Promise<{ plan: Plan; worth: number }> => {
  const model = buildModel(p);
  const answer = (await openSolver()).run(model, { gap: 0.01 });
  return { plan: readPlan(p, model, answer.columns as Float64Array), worth: answer.value as number };
};

/** Changes the first entry of one list of a plan. */
function spoil<K extends keyof Plan>(plan: Plan, list: K, change: (x: Plan[K][number]) => object): Plan {
  assert.ok(plan[list].length > 0, `the plan has nothing under "${list}" to spoil`);
  return { ...plan, [list]: plan[list].map((x, i) => (i === 0 ? { ...x, ...change(x as Plan[K][number]) } : x)) };
}

const SPOILT: [string, string, (p: Plan) => Plan][] = [
  ['fruit drawn twice', 'lot', (p) => spoil(p, 'draws', (d) => ({ kg: d.kg * 2 }))],
  ['fruit forgotten', 'lot', (p) => ({ ...p, draws: p.draws.slice(1) })],
  ['fruit drawn after its last day', 'lot day', (p) => spoil(p, 'draws', () => ({ day: 99 }))],
  ['fruit that was never there', 'lot day', (p) => spoil(p, 'draws', () => ({ lot: 'nobody’s' }))],
  ['more into the pan than was drawn', 'pool', (p) => spoil(p, 'fruit', (f) => ({ kg: f.kg + 0.5 }))],
  ['a pan that cooks more than went in', 'mix', (p) => spoil(p, 'cooked', (c) => ({ kg: c.kg + 0.5 }))],
  [
    'half a batch',
    'whole batches',
    (p) => spoil(p, 'cooked', (c) => ({ batches: [{ loads: c.batches[0]?.loads ?? 0, count: 0.5 }] })),
  ],
  [
    'a batch too small for its pan',
    'least batch',
    (p) => spoil(p, 'cooked', (c) => ({ batches: [{ loads: c.batches[0]?.loads ?? 0, count: 9 }] })),
  ],
  ['no batch for what is cooked', 'greatest batch', (p) => spoil(p, 'cooked', () => ({ batches: [] }))],
  ['hands that are not there', 'kitchen', (p) => ({ ...p, cooked: p.cooked.map((c) => ({ ...c, day: 0 })) })],
  ['one jar too many', 'jar', (p) => spoil(p, 'jars', (j) => ({ count: j.count + 1 }))],
  ['a jar no recipe knows', 'jar', (p) => spoil(p, 'jars', () => ({ jar: 'bucket' }))],
  ['pectin left out', 'pectin', (p) => ({ ...p, pectin: [] })],
  ['acid left out', 'acid', (p) => ({ ...p, acid: [] })],
  ['more pectin than the pan may take', 'pectin limit', (p) => spoil(p, 'pectin', (x) => ({ amount: x.amount + 999 }))],
  [
    'cores from nowhere on the trays',
    'leftover',
    (p) => ({ ...p, dried: [...p.dried, { leftover: 'cores', day: 0, kg: 50 }] }),
  ],
  ['trays that are not there', 'dryer', (p) => ({ ...p, dried: [...p.dried, { leftover: 'cores', day: 0, kg: 50 }] })],
  [
    'shopping on a day without a shop',
    'shop',
    (p) => ({ ...p, bought: [...p.bought, { material: 'sugar', day: 0, amount: 1 }] }),
  ],
  [
    'buying what cannot be bought',
    'shop',
    (p) => ({ ...p, bought: [...p.bought, { material: 'core powder', day: 2, amount: 1 }] }),
  ],
  [
    'more lids than the shop sells',
    'shop',
    (p) => ({ ...p, bought: [...p.bought, { material: 'lid', day: 2, amount: 41 }] }),
  ],
  [
    'sugar that is not there',
    'stock',
    (p) => ({
      ...p,
      bought: p.bought.filter((b) => b.material !== 'sugar'),
      cooked: p.cooked.map((c) => ({ ...c, kg: c.kg + 40 })),
    }),
  ],
  ['eating more than the household eats', 'outlet', (p) => spoil(p, 'outlets', (o) => ({ kg: o.kg + 1 }))],
  ['a full shelf', 'store', (p) => ({ ...p, jars: p.jars.map((j) => ({ ...j, count: j.count * 40 })) })],
  [
    'more canner loads than the day has',
    'canner',
    (p) => ({
      ...p,
      cooked: p.cooked.map((c) => ({
        ...c,
        batches: c.batches.map((b) => ({ ...b, count: b.loads > 0 ? b.count * 20 : b.count })),
      })),
    }),
  ],
  [
    'jars without a load',
    'load',
    (p) => ({ ...p, cooked: p.cooked.map((c) => ({ ...c, batches: c.batches.map((b) => ({ ...b, loads: 0 })) })) }),
  ],
  ['an amount that is no number', 'amount', (p) => spoil(p, 'draws', () => ({ kg: Number.NaN }))],
  ['an amount below nothing', 'amount', (p) => spoil(p, 'bought', () => ({ amount: -1 }))],
];

describe('checking a plan against the data', () => {
  for (const seed of [1, 2, 3])
    it(`accepts the solver’s, the greedy and the polished plan of invented season ${seed}, at the same worth`, async () => {
      const p = inventedSeason(seed, 'mini');
      const fromSolver = await solved(p);
      const check = checkPlan(p, fromSolver.plan);
      assert.deepEqual(check.breaches, []);
      assert.ok(
        Math.abs(check.worth.total - fromSolver.worth) < 1e-4,
        `${check.worth.total} against ${fromSolver.worth}`,
      );
      const greedy = greedyPlan(p);
      assert.deepEqual(checkPlan(p, greedy).breaches, []);
      const polished = polishAmounts(await openSolver(), p, greedy);
      assert.ok(polished);
      assert.deepEqual(checkPlan(p, polished.plan).breaches, []);
      assert.ok(checkPlan(p, polished.plan).worth.total >= checkPlan(p, greedy).worth.total - 1e-6);
    });

  for (const g of goldenPlans.filter((x) => !x.futures))
    it(`adds up the small plan "${g.id}" to its known worth`, async () => {
      const check = checkPlan(g.instance, (await solved(g.instance)).plan);
      assert.ok(check.consistent);
      assert.equal(check.doable, g.id !== 'pinned-too-much', JSON.stringify(check.breaches));
      assert.ok(Math.abs(check.worth.total - g.expect.worth) < 1e-5, `worth ${check.worth.total}`);
    });

  for (const [what, rule, change] of SPOILT)
    it(`refuses ${what} ("${rule}")`, async () => {
      const { plan } = await solved(season);
      assert.deepEqual(checkPlan(season, plan).breaches, []);
      const rules = checkPlan(season, change(plan)).breaches.map((b) => b.rule);
      assert.ok(rules.includes(rule), `found ${[...new Set(rules)].join(', ') || 'nothing'}`);
    });

  it('refuses a product that still lies on the trays on its second day, when there is no room for it then', () => {
    const drying = { dryer: { m2PerKg: 1, days: 2 } };
    const days = (second: number) => oneKitchen({ recipe: drying, days: [{ dryer: 10 }, { dryer: second }] });
    const plan = greedyPlan(days(10));
    assert.deepEqual(checkPlan(days(10), plan).breaches, []);
    assert.deepEqual(
      checkPlan(days(4), plan).breaches.map((b) => [b.rule, b.day, b.used, b.limit]),
      [['dryer', 1, 10, 4]],
    );
  });

  it('refuses shares and soft fruit that a recipe does not bear', () => {
    const p = inventedSeason(4, 'x1');
    const mixed = p.recipes.find((r) => r.fruit.length > 1);
    assert.ok(mixed);
    const second = mixed.fruit[1]?.crop as string;
    const plan: Plan = {
      ...greedyPlan(p),
      fruit: [{ recipe: mixed.id, crop: second, grade: 'soft', day: 0, kg: 2 }],
      cooked: [{ recipe: mixed.id, mode: 'usual', day: 0, kg: 2, batches: [{ loads: 1, count: 1 }] }],
    };
    const rules = checkPlan(p, plan).breaches.map((b) => b.rule);
    for (const rule of ['least share', 'greatest share', 'soft']) assert.ok(rules.includes(rule), rule);
  });
});
