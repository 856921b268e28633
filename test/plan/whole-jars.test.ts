import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import { wholeJars } from '#lib/plan/whole-jars.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';
import { oneKitchen, withMaterial } from '#test/plan/support/one-kitchen.ts';

describe('whole jars', () => {
  it('fills whole jars only, loses no litre, and breaks no limit but perhaps the tail’s', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const p = inventedSeason(seed, 'mini');
      const plan = greedyPlan(p);
      const whole = wholeJars(p, plan);
      assert.ok(whole.plan.jars.every((j) => Number.isInteger(j.count)));
      const litres = (x: typeof plan) =>
        x.jars.reduce((n, j) => n + j.count * (p.jars.find((z) => z.id === j.jar)?.litres ?? 0), 0) +
        x.tails.reduce((n, t) => n + t.litres, 0);
      assert.ok(Math.abs(litres(plan) - litres(whole.plan)) < 1e-6, `season ${seed}`);
      assert.deepEqual(
        whole.breaches.filter((b) => b.rule !== 'tail'),
        [],
        `season ${seed}`,
      );
    }
  });

  it('sends half a litre that fills no jar to the table', () => {
    const p = oneKitchen({ recipe: { jars: ['litre'] }, lot: { kg: 4.5 } });
    const whole = wholeJars(p, greedyPlan(p));
    assert.deepEqual(
      whole.plan.jars.map((j) => j.count),
      [4],
    );
    assert.ok(Math.abs((whole.toTable[0]?.litres ?? 0) - 0.5) < 1e-9);
    assert.deepEqual(checkPlan(p, whole.plan).breaches, []);
  });

  it('does not round up to a lid that is not there', () => {
    const sizes = [
      { id: 'two', litres: 2, uses: [{ material: 'lid', each: 1 }], perLoad: 9 },
      { id: 'one', litres: 1, uses: [{ material: 'lid', each: 1 }], perLoad: 9 },
    ];
    const p = oneKitchen({
      recipe: { jars: ['two', 'one'] },
      instance: { jars: sizes, materials: withMaterial({ id: 'lid', stock: 5 }) },
    });
    const plan = {
      ...greedyPlan(p),
      jars: [
        { recipe: 'jam', jar: 'two', day: 0, count: 4.5 },
        { recipe: 'jam', jar: 'one', day: 0, count: 1 },
      ],
    };
    const lids = wholeJars({ ...p, materials: withMaterial({ id: 'lid', stock: 5.5 }) }, plan).plan.jars.reduce(
      (n, j) => n + j.count,
      0,
    );
    assert.ok(lids <= 5.5, `${lids} lids of 5.5`);
  });
});
