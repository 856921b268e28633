import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { instanceFaults } from '#lib/plan/check-instance.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { goldenPlans } from '#test/plan/support/golden-plans.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';
import { oneKitchen } from '#test/plan/support/one-kitchen.ts';

const FAULTS: [string, RegExp, PlanInstance][] = [
  [
    'a least share above the greatest',
    /least share of plum above/,
    oneKitchen({ recipe: { fruit: [{ crop: 'plum', grades: ['perfect'], minShare: 0.8, maxShare: 0.5 }] } }),
  ],
  [
    'least shares above 1',
    /add up to more than 1/,
    oneKitchen({
      recipe: {
        fruit: [
          { crop: 'plum', grades: ['perfect'], minShare: 0.6 },
          { crop: 'crab', grades: ['perfect'], minShare: 0.6 },
        ],
      },
    }),
  ],
  ['a least batch above the greatest', /least batch 11 kg above greatest 10 kg/, oneKitchen({ mode: { minKg: 11 } })],
  [
    'free room below nothing',
    /shelf, day 0: free room is -2 L/,
    oneKitchen({ instance: { storage: [{ place: 'shelf', free: [-2] }] } }),
  ],
  ['an unknown crop', /crop "pear" is used but not listed/, oneKitchen({ lot: { crop: 'pear' } })],
  [
    'a lot listed twice',
    /lot "a" is listed twice/,
    oneKitchen({ instance: { lots: [...oneKitchen().lots, ...oneKitchen().lots] } }),
  ],
  ['a lot that dies before it is there', /from day 3 to day 1/, oneKitchen({ lot: { avail: 3, useBy: 1 } })],
  [
    'values that rise',
    /values must fall/,
    oneKitchen({
      instance: {
        products: [
          {
            id: 'jam',
            place: 'shelf',
            segments: [
              { litres: 1, value: 2 },
              { litres: 1, value: 3 },
            ],
          },
        ],
      },
    }),
  ],
  [
    'people whose hours do not add up',
    /add up to 3, the day says 9/,
    oneKitchen({ day: { people: [{ id: 'ada', hours: 3 }] } }),
  ],
  ['canning without jars', /needs the canner but names no jars/, oneKitchen({ recipe: { canner: {} } })],
];

describe('faults in the data of a plan', () => {
  it('are not found where there are none', () => {
    for (const g of goldenPlans) assert.deepEqual(instanceFaults(g.instance), [], g.id);
    for (const family of ['tiny', 'mini', 'x1'] as const)
      assert.deepEqual(instanceFaults(inventedSeason(1, family)), []);
  });

  for (const [what, message, p] of FAULTS)
    it(`names ${what}`, () => assert.match(instanceFaults(p).join('; '), message));
});
