import { expect, it } from 'vitest';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { NOTHING_ASKED } from '#lib/usecases/plan-asked.ts';
import { planFacts } from '#lib/usecases/plan-facts.ts';
import { askWhy, readWhy } from '#lib/usecases/plan-why.ts';
import { solveWhy } from '#lib/usecases/plan-why-solve.ts';
import { proposePlan } from '#lib/usecases/propose-plan.ts';
import { oneKitchen, withMaterial } from '#test/plan/support/one-kitchen.ts';
import { demoContext, demoOn } from '#test/support/demo-database.ts';

const open = demoOn('2025-09-01');

it('says what stops a recipe outright: no fruit, or the person who left it out', async () => {
  const ctx = await demoContext(await open());
  const quince = await readWhy(ctx, NOTHING_ASKED, 'quince-jelly');
  expect(quince?.open).toBe(false);
  expect(quince?.stops).toEqual(['No quince is in the store or expected in these two weeks.']);
  expect(await readWhy(ctx, NOTHING_ASKED, 'moon-jam')).toBeNull();
  const leftOut = await readWhy(ctx, { ...NOTHING_ASKED, without: ['plum-jam'] }, 'plum-jam');
  expect(leftOut?.backHref).toBe('/plan');
}, 120_000);

it('plans again with a recipe that is not in the plan', async () => {
  const ctx = await demoContext(await open());
  const proposal = await proposePlan(ctx, NOTHING_ASKED);
  const made = new Set(proposal?.byHand.plan.cooked.map((c) => c.recipe));
  const unmade = proposal?.instance.recipes.find((r) => !made.has(r.id))?.id ?? '';
  expect((await readWhy(ctx, NOTHING_ASKED, unmade))?.stops).toEqual([]);
  const answer = await askWhy(ctx, NOTHING_ASKED, unmade);
  if ('refused' in answer) throw new Error(answer.refused);
  expect(answer.lines[0]).toMatch(
    /^A plan with .* (is worth (as much|[\d.]+ (less|more))|came out [\d.]+ (less|more) worth)/,
  );
  expect(answer.href).toContain(`keep=${unmade}`);
}, 120_000);

/** 10 kg of plums, all worth more as syrup (20 a litre, against 10 as jam); each kg makes a litre. */
const two = (change: Partial<PlanInstance> = {}): PlanInstance => {
  const p = oneKitchen();
  const jam = p.recipes[0] as PlanInstance['recipes'][number];
  return {
    ...p,
    recipes: [jam, { ...jam, id: 'syrup', product: 'syrup' }],
    products: [...p.products, { id: 'syrup', place: 'shelf', segments: [{ litres: 1000, value: 20 }] }],
    ...change,
  };
};

it('says by how much less a plan with it is worth: the least batch of jam costs its kilogram of syrup', async () => {
  const p = two();
  const { plan, bound } = await solvePlan(p, { seconds: 5 });
  const why = await solveWhy({ instance: p, recipe: 'jam', plan, bound });
  expect(why.loss).toBeCloseTo(10, 5);
  expect(why.changed).toEqual({ jam: 1 });
  expect(why.day).toBe(0);
});

it('answers an impossible wish with the limit it runs into: a jar to fill and no lid', async () => {
  const p = two({ materials: withMaterial({ id: 'lid', name: 'lids', stock: 0 }) });
  const jarred = { ...p, recipes: p.recipes.map((r) => (r.id === 'jam' ? { ...r, jars: ['litre'] } : r)) };
  const { plan, bound } = await solvePlan(jarred, { seconds: 5 });
  const why = await solveWhy({ instance: jarred, recipe: 'jam', plan, bound });
  expect([why.loss, why.day]).toEqual([null, null]);
  expect(planFacts(why.instance, why.plan, []).clashes.map((c) => c.words)).toContain('lids');
});
