import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { explainPlan, limitWords } from '#lib/plan/explain.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { whyNot } from '#lib/plan/why-not.ts';
import { goldenPlan } from '#test/plan/support/golden-plans.ts';
import { oneKitchen, withMaterial } from '#test/plan/support/one-kitchen.ts';

const jarred = { jars: ['litre'] };

describe('explaining a plan', () => {
  it('names the limit that binds in trade words: lids', async () => {
    const p = oneKitchen({
      recipe: jarred,
      instance: { materials: withMaterial({ id: 'lid', name: 'lids', stock: 6 }) },
    });
    const reasons = explainPlan(p, (await solvePlan(p)).check);
    assert.deepEqual(
      reasons.binding.map((b) => [b.words, b.day, Math.round(b.used)]),
      [['lids', 0, 6]],
    );
    assert.deepEqual(reasons.shortages, []);
  });

  it('names nothing where nothing binds', async () => {
    const p = oneKitchen({ recipe: jarred });
    assert.deepEqual(explainPlan(p, (await solvePlan(p)).check).binding, []);
  });

  it('prices one more of a limit as solving again with one more does', async () => {
    const lids = (stock: number) =>
      oneKitchen({ recipe: jarred, instance: { materials: withMaterial({ id: 'lid', name: 'lids', stock }) } });
    const six = await solvePlan(lids(6), { tightenings: { cutValue: false }, gap: 0 });
    const seven = await solvePlan(lids(7), { gap: 0 });
    const price = explainPlan(lids(6), six.check, six.prices).prices.find((x) => x.words === 'lids')?.price;
    assert.ok(
      Math.abs((price ?? 0) - (seven.worth - six.worth)) < 1e-6,
      `price ${price}, solved again ${seven.worth - six.worth}`,
    );
  });

  it('tells the shortage of a pinned plan, which is then not doable', async () => {
    const { instance } = goldenPlan('pinned-too-much');
    const solved = await solvePlan(instance);
    const short = explainPlan(instance, solved.check).shortages;
    assert.deepEqual(
      short.map((s) => [s.words, s.used - s.limit]),
      [['people’s hours', 1]],
    );
    assert.equal(solved.check.doable, false);
  });

  it('has words for every place', () =>
    assert.deepEqual(
      ['shelf', 'fridge', 'freezer'].map((x) => limitWords(oneKitchen(), 'store', [x])),
      ['room on the shelf', 'room in the fridge', 'room in the freezer'],
    ));
});

describe('asking why not', () => {
  const { instance } = goldenPlan('variety-cheap');

  it('answers with what the other recipe would cost and displace', async () => {
    const solved = await solvePlan(instance, { gap: 0 });
    const answer = await whyNot(instance, 'B', solved, { options: { gap: 0 } });
    // Two of A: 40 - 3 = 37; A and B: 20 + 16 = 36.
    assert.equal(answer.made, true);
    assert.ok(Math.abs((answer.loss ?? 0) - 1) < 1e-6, `loss ${answer.loss}`);
    assert.deepEqual(answer.changed, { A: -1, B: 1 });
    assert.equal(answer.withinGap, false);
  });

  it('answers why a recipe is made with what leaving it out would cost', async () => {
    const solved = await solvePlan(instance, { gap: 0 });
    const answer = await whyNot(instance, 'A', solved, { options: { gap: 0 } });
    // Two of B: 32 - 3 = 29 against 37.
    assert.equal(answer.made, false);
    assert.ok(Math.abs((answer.loss ?? 0) - 8) < 1e-6, `loss ${answer.loss}`);
  });

  it('needs no solver where no day has both hands and fruit', async () => {
    const noHands = oneKitchen({ day: { active: 0 } });
    const noFruit = oneKitchen({ lot: { kg: 0.5 } });
    assert.equal(
      (await whyNot(noHands, 'jam', await solvePlan(noHands))).answer,
      'no day has both hands and fruit for the least batch',
    );
    assert.equal(
      (await whyNot(noFruit, 'jam', await solvePlan(noFruit))).answer,
      'no fruit for the least batch on any day',
    );
  });
});
