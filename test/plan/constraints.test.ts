import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { readPlan } from '#lib/plan/read-plan.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { type KitchenChange, oneKitchen, withMaterial } from '#test/plan/support/one-kitchen.ts';

/** Worths are sums done by hand: 10 L at 10 make 100 when nothing binds. */
interface Case {
  rule: string;
  binds: [KitchenChange, number];
  free: [KitchenChange, number];
}

const jarred = { jars: ['litre'] };
const canned = { ...jarred, canner: {} };
const small = { maxKg: 4 };
const twoDays = [{}, {}];
const place = (where: 'shelf' | 'fridge' | 'freezer', free: number): KitchenChange => ({
  instance: {
    products: [{ id: 'jam', place: where, segments: [{ litres: 1000, value: 10 }] }],
    storage: [{ place: where, free: [free] }],
  },
});
const plumAndCrab = (minShare: number, crabKg: number): KitchenChange => ({
  recipe: {
    fruit: [
      { crop: 'plum', grades: ['perfect'] },
      { crop: 'crab', grades: ['perfect'], minShare },
    ],
  },
  instance: {
    lots: [
      { id: 'a', crop: 'plum', grade: 'perfect', kg: 5, avail: 0, useBy: 0 },
      { id: 'c', crop: 'crab', grade: 'perfect', kg: crabKg, avail: 0, useBy: 0 },
    ],
  },
});
const cores = (dryer: number, carryMax: number): KitchenChange => ({
  recipe: { leftovers: [{ crop: 'plum', leftover: 'cores', kgPerKg: 0.2 }] },
  day: { dryer },
  instance: {
    leftovers: [{ id: 'cores', dryDays: 1, dryYield: 100, m2PerKg: 0.5, becomes: 'powder' }],
    materials: withMaterial({ id: 'powder', stock: 0, keepValue: 0.01, carryMax }),
  },
});
const former = (weight: number): KitchenChange => ({
  days: twoDays,
  mode: { minKg: 10 },
  lot: { useBy: 1, waitCost: 0.5 },
  instance: { former: { batches: [{ recipe: 'jam', day: 1, batches: 1 }], weight } },
});

const CASES: Case[] = [
  {
    rule: 'people’s hours',
    binds: [{ mode: small, day: { active: 2 } }, 80],
    free: [{ mode: small, day: { active: 3 } }, 100],
  },
  {
    rule: 'hours per kg',
    binds: [{ mode: { activeH: 0, activePerKg: 1 }, day: { active: 7 } }, 70],
    free: [{ mode: { activeH: 0, activePerKg: 1 }, day: { active: 10 } }, 100],
  },
  {
    rule: 'canner hours of hands',
    binds: [{ recipe: { ...canned, canner: { activeH: 1 } }, day: { active: 3 } }, 80],
    free: [{ recipe: { ...canned, canner: { activeH: 1 } }, day: { active: 4 } }, 100],
  },
  {
    rule: 'burners',
    binds: [{ mode: { ...small, burnerH: 1 }, day: { burner: 2 } }, 80],
    free: [{ mode: { ...small, burnerH: 1 }, day: { burner: 3 } }, 100],
  },
  {
    rule: 'vessels',
    binds: [
      {
        mode: { ...small, vesselH: 2 },
        day: { vesselH: { pan: 4 } },
        instance: { vessels: [{ id: 'pan', count: 1 }] },
      },
      80,
    ],
    free: [
      {
        mode: { ...small, vesselH: 2 },
        day: { vesselH: { pan: 6 } },
        instance: { vessels: [{ id: 'pan', count: 1 }] },
      },
      100,
    ],
  },
  {
    rule: 'canner loads',
    binds: [{ recipe: canned, day: { cannerLoads: 2 } }, 80],
    free: [{ recipe: canned, day: { cannerLoads: 3 } }, 100],
  },
  {
    rule: 'lids',
    binds: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'lid', stock: 6 }) } }, 60],
    free: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'lid', stock: 10 }) } }, 100],
  },
  {
    rule: 'bands',
    binds: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'band', stock: 3 }) } }, 30],
    free: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'band', stock: 10 }) } }, 100],
  },
  {
    rule: 'jars',
    binds: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'jar', stock: 7 }) } }, 70],
    free: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'jar', stock: 10 }) } }, 100],
  },
  {
    rule: 'sugar',
    binds: [{ recipe: { sugar: 1 }, instance: { materials: withMaterial({ id: 'sugar', stock: 7 }) } }, 70],
    free: [{ recipe: { sugar: 0.7 }, instance: { materials: withMaterial({ id: 'sugar', stock: 7 }) } }, 100],
  },
  {
    rule: 'other needs',
    binds: [
      {
        recipe: { needs: [{ material: 'lemon', perKg: 2 }] },
        instance: { materials: withMaterial({ id: 'lemon', stock: 8 }) },
      },
      40,
    ],
    free: [
      {
        recipe: { needs: [{ material: 'lemon', perKg: 2 }] },
        instance: { materials: withMaterial({ id: 'lemon', stock: 20 }) },
      },
      100,
    ],
  },
  {
    rule: 'pectin',
    binds: [
      {
        recipe: { pectin: 8 },
        instance: {
          crops: [{ id: 'plum', pectin: 4 }, { id: 'crab' }],
          materials: withMaterial({ id: 'pectin', stock: 20 }),
        },
      },
      50,
    ],
    free: [
      {
        recipe: { pectin: 8 },
        instance: {
          crops: [{ id: 'plum', pectin: 4 }, { id: 'crab' }],
          materials: withMaterial({ id: 'pectin', stock: 40 }),
        },
      },
      100,
    ],
  },
  {
    rule: 'pectin of soft fruit (0.6 of it)',
    binds: [
      {
        lot: { grade: 'soft' },
        recipe: { pectin: 8 },
        instance: {
          crops: [{ id: 'plum', pectin: 10 }, { id: 'crab' }],
          materials: withMaterial({ id: 'pectin', stock: 10 }),
        },
      },
      50,
    ],
    free: [{ recipe: { pectin: 8 }, instance: { crops: [{ id: 'plum', pectin: 10 }, { id: 'crab' }] } }, 100],
  },
  {
    rule: 'greatest dose of a pectin source',
    binds: [
      {
        recipe: { pectin: 4 },
        instance: {
          pectinSources: [{ material: 'pectin', strength: 1, maxPerKg: 3 }],
          materials: withMaterial({ id: 'pectin', stock: 99 }),
        },
      },
      0,
    ],
    free: [
      {
        recipe: { pectin: 4 },
        instance: {
          pectinSources: [{ material: 'pectin', strength: 1, maxPerKg: 4 }],
          materials: withMaterial({ id: 'pectin', stock: 99 }),
        },
      },
      100,
    ],
  },
  {
    rule: 'allowed pectin sources',
    binds: [
      {
        recipe: { pectin: 4, pectinSources: ['powder'] },
        instance: { materials: withMaterial({ id: 'pectin', stock: 99 }) },
      },
      0,
    ],
    free: [
      {
        recipe: { pectin: 4, pectinSources: ['pectin'] },
        instance: { materials: withMaterial({ id: 'pectin', stock: 99 }) },
      },
      100,
    ],
  },
  {
    rule: 'acid',
    binds: [
      {
        recipe: { acid: 3 },
        instance: {
          crops: [{ id: 'plum', acid: 1 }, { id: 'crab' }],
          materials: withMaterial({ id: 'lemon', stock: 12 }),
        },
      },
      60,
    ],
    free: [{ recipe: { acid: 3 }, instance: { crops: [{ id: 'plum', acid: 3 }, { id: 'crab' }] } }, 100],
  },
  {
    rule: 'greatest dose of an acid',
    binds: [
      {
        recipe: { acid: 3 },
        instance: {
          acidSources: [{ material: 'lemon', strength: 1, maxPerKg: 2 }],
          materials: withMaterial({ id: 'lemon', stock: 99 }),
        },
      },
      0,
    ],
    free: [
      {
        recipe: { acid: 3 },
        instance: {
          acidSources: [{ material: 'lemon', strength: 1, maxPerKg: 3 }],
          materials: withMaterial({ id: 'lemon', stock: 99 }),
        },
      },
      100,
    ],
  },
  {
    rule: 'trays of a product',
    binds: [{ recipe: { dryer: { m2PerKg: 1, days: 1 } }, day: { dryer: 6 } }, 60],
    free: [{ recipe: { dryer: { m2PerKg: 1, days: 1 } }, day: { dryer: 10 } }, 100],
  },
  {
    rule: 'trays on every day of drying',
    binds: [{ recipe: { dryer: { m2PerKg: 1, days: 2 } }, days: [{ dryer: 10 }, { dryer: 4 }] }, 40],
    free: [{ recipe: { dryer: { m2PerKg: 1, days: 1 } }, days: [{ dryer: 10 }, { dryer: 4 }] }, 100],
  },
  {
    rule: 'trays of leftovers, powder valued when the plan ends',
    binds: [cores(0.5, 1000), 101],
    free: [cores(9, 1000), 102],
  },
  { rule: 'a sensible stock of what is kept', binds: [cores(9, 50), 100.5], free: [cores(9, 1000), 102] },
  {
    rule: 'daily freezing',
    binds: [{ recipe: { freezeKgPerKg: 1 }, day: { freezeKg: 5 } }, 50],
    free: [{ recipe: { freezeKgPerKg: 1 } }, 100],
  },
  { rule: 'room on the shelf', binds: [place('shelf', 6), 60], free: [place('shelf', 10), 100] },
  { rule: 'room in the fridge', binds: [place('fridge', 5), 50], free: [place('fridge', 10), 100] },
  { rule: 'room in the freezer', binds: [place('freezer', 4), 40], free: [place('freezer', 10), 100] },
  {
    rule: 'falling value',
    binds: [
      {
        instance: {
          products: [
            {
              id: 'jam',
              place: 'shelf',
              segments: [
                { litres: 4, value: 10 },
                { litres: 100, value: 2 },
              ],
            },
          ],
        },
      },
      52,
    ],
    free: [
      {
        instance: {
          products: [
            {
              id: 'jam',
              place: 'shelf',
              segments: [
                { litres: 10, value: 10 },
                { litres: 100, value: 2 },
              ],
            },
          ],
        },
      },
      100,
    ],
  },
  ...(['eat', 'sell', 'give', 'press'] as const).map(
    (kind): Case => ({
      rule: `outlet (${kind})`,
      binds: [
        {
          instance: { outlets: [{ id: 'o', kind, crop: 'plum', grades: ['perfect'], days: [0], maxKg: 3, value: 12 }] },
        },
        106,
      ],
      free: [
        { instance: { outlets: [{ id: 'o', kind, crop: 'plum', grades: ['perfect'], days: [0], value: 12 }] } },
        120,
      ],
    }),
  ),
  {
    rule: 'compost costs nothing where waste would',
    binds: [{ day: { active: 0 }, instance: { weights: { ...oneKitchen().weights, waste: 1 } } }, -10],
    free: [
      {
        day: { active: 0 },
        instance: {
          weights: { ...oneKitchen().weights, waste: 1 },
          outlets: [{ id: 'heap', kind: 'compost', crop: 'plum', grades: ['perfect'], days: [0], value: 0 }],
        },
      },
      0,
    ],
  },
  {
    rule: 'grades an outlet takes',
    binds: [
      {
        lot: { grade: 'blemished' },
        instance: { outlets: [{ id: 'o', kind: 'sell', crop: 'plum', grades: ['perfect'], days: [0], value: 12 }] },
      },
      100,
    ],
    free: [
      { instance: { outlets: [{ id: 'o', kind: 'sell', crop: 'plum', grades: ['perfect'], days: [0], value: 12 }] } },
      120,
    ],
  },
  { rule: 'least share', binds: [plumAndCrab(0.5, 3), 60], free: [plumAndCrab(0.375, 3), 80] },
  {
    rule: 'greatest share',
    binds: [
      {
        recipe: {
          fruit: [
            { crop: 'plum', grades: ['perfect'], maxShare: 0.5 },
            { crop: 'crab', grades: ['perfect'] },
          ],
        },
        instance: {
          lots: [
            { id: 'a', crop: 'plum', grade: 'perfect', kg: 7, avail: 0, useBy: 0 },
            { id: 'c', crop: 'crab', grade: 'perfect', kg: 3, avail: 0, useBy: 0 },
          ],
        },
      },
      60,
    ],
    free: [
      {
        recipe: {
          fruit: [
            { crop: 'plum', grades: ['perfect'], maxShare: 0.7 },
            { crop: 'crab', grades: ['perfect'] },
          ],
        },
        instance: {
          lots: [
            { id: 'a', crop: 'plum', grade: 'perfect', kg: 7, avail: 0, useBy: 0 },
            { id: 'c', crop: 'crab', grade: 'perfect', kg: 3, avail: 0, useBy: 0 },
          ],
        },
      },
      100,
    ],
  },
  {
    rule: 'soft fruit',
    binds: [{ lot: { softFrom: 0 }, recipe: { softMax: 0 } }, 0],
    free: [{ lot: { softFrom: 1 }, recipe: { softMax: 0 } }, 100],
  },
  { rule: 'least batch', binds: [{ mode: { minKg: 6, maxKg: 8 } }, 80], free: [{ mode: { minKg: 5, maxKg: 8 } }, 100] },
  {
    rule: 'batches a day',
    binds: [{ mode: small, recipe: { maxBatchesPerDay: 2 } }, 80],
    free: [{ mode: small, recipe: { maxBatchesPerDay: 3 } }, 100],
  },
  {
    rule: 'set-up once a day',
    binds: [{ mode: { maxKg: 5 }, recipe: { setupH: 1 }, day: { active: 2 } }, 50],
    free: [{ mode: { maxKg: 5 }, recipe: { setupH: 1 }, day: { active: 3 } }, 100],
  },
  {
    rule: 'loss of waiting fruit',
    binds: [{ days: [{ active: 0 }, {}], lot: { useBy: 1, lossPerDay: 0.1 } }, 90],
    free: [{ days: [{ active: 0 }, {}], lot: { useBy: 1 } }, 100],
  },
  {
    rule: 'last day of a lot',
    binds: [{ days: [{ active: 0 }, {}], lot: { useBy: 0 } }, 0],
    free: [{ days: [{ active: 0 }, {}], lot: { useBy: 1 } }, 100],
  },
  {
    rule: 'jars coming back',
    binds: [
      {
        days: twoDays,
        recipe: jarred,
        lot: { useBy: 0 },
        instance: { materials: withMaterial({ id: 'jar', stock: 0, arrivals: [{ day: 1, amount: 10 }] }) },
      },
      0,
    ],
    free: [
      {
        days: twoDays,
        recipe: jarred,
        lot: { useBy: 1 },
        instance: { materials: withMaterial({ id: 'jar', stock: 0, arrivals: [{ day: 1, amount: 10 }] }) },
      },
      100,
    ],
  },
  {
    rule: 'greatest purchase',
    binds: [
      { recipe: jarred, instance: { materials: withMaterial({ id: 'lid', stock: 0, price: 1, maxBuy: 5 }) } },
      45,
    ],
    free: [{ recipe: jarred, instance: { materials: withMaterial({ id: 'lid', stock: 0, price: 1 }) } }, 90],
  },
  {
    rule: 'an exact pin',
    binds: [{ instance: { pins: [{ recipe: 'jam', day: 0, batches: 0, exact: true }] } }, 0],
    free: [{ instance: { pins: [{ recipe: 'jam', day: 0, batches: 1, exact: true }] } }, 100],
  },
  { rule: 'the former plan', binds: [former(20), 95], free: [former(4), 96] },
];

async function best(p: PlanInstance) {
  const model = buildModel(p);
  const answer = (await openSolver()).run(model, {});
  assert.equal(answer.status, 'optimal');
  return { worth: answer.value as number, plan: readPlan(p, model, answer.columns as Float64Array) };
}

describe('each rule, where it binds and where it does not', () => {
  for (const c of CASES)
    for (const [what, [change, worth]] of [
      ['binds', c.binds],
      ['leaves the plan free', c.free],
    ] as const)
      it(`${c.rule} ${what}: ${worth}`, async () => {
        const p = oneKitchen(change);
        const found = await best(p);
        assert.ok(Math.abs(found.worth - worth) < 1e-5, `worth ${found.worth}, by hand ${worth}`);
        const check = checkPlan(p, found.plan);
        assert.deepEqual(check.breaches, []);
        assert.ok(Math.abs(check.worth.total - worth) < 1e-4, `checked worth ${check.worth.total}`);
        const greedy = checkPlan(p, greedyPlan(p));
        assert.ok(greedy.worth.total <= worth + 1e-5, `greedy ${greedy.worth.total} above the optimum`);
        assert.deepEqual(greedy.breaches, []);
      });
});
