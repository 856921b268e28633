import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { firmDays } from '#lib/plan/firm-days.ts';
import type { PlanLot } from '#lib/plan/instance.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';
import { oneKitchen } from '#test/plan/support/one-kitchen.ts';

/** 4 kg today, so many tomorrow; a batch takes 3 to 5 kg and an hour of nine. */
const lots = (tomorrow: number): PlanLot[] => [
  { id: 'there', crop: 'plum', grade: 'perfect', kg: 4, avail: 0, useBy: 0 },
  { id: 'coming', crop: 'plum', grade: 'perfect', kg: tomorrow, avail: 1, useBy: 1 },
];
const kitchen = oneKitchen({ days: [{}, {}], mode: { minKg: 3, maxKg: 5 }, instance: { lots: lots(4) } });
const limits = { seconds: 5, gap: 0, seed: 1 };

describe('how firm the next days are', () => {
  it('keeps what stands in the store and drops or adds what is still to be picked', async () => {
    const { plan } = await solvePlan(kitchen, { seconds: 5 });
    const firm = await firmDays(kitchen, plan, { short: lots(2), heavy: lots(8), changeWeight: 1, limits });
    assert.deepEqual(firm, [
      { recipe: 'jam', day: 0, planned: 1, short: 1, heavy: 1 },
      { recipe: 'jam', day: 1, planned: 1, short: 0, heavy: 2 },
    ]);
  });

  it('moves nothing where moving costs more than it brings', async () => {
    const { plan } = await solvePlan(kitchen, { seconds: 5 });
    const firm = await firmDays(kitchen, plan, { short: lots(4), heavy: lots(8), changeWeight: 1000, limits });
    assert.deepEqual(
      firm?.map((b) => [b.short, b.heavy]),
      [
        [1, 1],
        [1, 1],
      ],
    );
  });
});
