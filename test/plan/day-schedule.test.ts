import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type DaySchedule, daySchedule, type KitchenDay } from '#lib/plan/day-schedule.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import { batchCount, type Plan } from '#lib/plan/plan.ts';
import { splitBatches } from '#lib/plan/split-batches.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';
import { oneKitchen } from '#test/plan/support/one-kitchen.ts';

const kitchen: KitchenDay = {
  fromH: 9,
  toH: 18,
  rings: 2,
  canners: [{ holds: { litre: 4 } }],
  people: [{ id: 'ada', fromH: 9, toH: 18, hours: 8 }],
};
const empty: Plan = {
  draws: [],
  wasted: [],
  carried: [],
  outlets: [],
  fruit: [],
  cooked: [],
  pectin: [],
  acid: [],
  jars: [],
  tails: [],
  dried: [],
  bought: [],
};
const batches = (count: number, kg = count * 4): Plan => ({
  ...empty,
  cooked: [{ recipe: 'jam', mode: 'usual', day: 0, kg, batches: [{ loads: 0, count }] }],
});

/** Needs E10: nothing is booked twice, by looking at every pair of bookings. */
function assertNothingTwice(s: DaySchedule, k: KitchenDay): void {
  const all = s.steps.flatMap((x) => x.bookings);
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1))
      if (a.resource === b.resource)
        assert.ok(
          a.toH <= b.fromH + 1e-9 || b.toH <= a.fromH + 1e-9,
          `${a.resource} twice: ${a.fromH}-${a.toH} and ${b.fromH}-${b.toH}`,
        );
    if (!a.resource.startsWith('vessel'))
      assert.ok(a.fromH >= k.fromH - 1e-9 && a.toH <= k.toH + 1e-9, `${a.resource} outside the kitchen's hours`);
  });
  for (const person of k.people) {
    const hours = all.filter((b) => b.resource === `person ${person.id}`).reduce((n, b) => n + b.toH - b.fromH, 0);
    assert.ok(hours <= person.hours + 1e-9, `${person.id} works ${hours} h`);
  }
}

describe('a day’s schedule', () => {
  it('never books a person, ring, vessel or canner twice, and loses no batch', () => {
    const days = fc.record({
      seed: fc.integer({ min: 1, max: 9999 }),
      rings: fc.integer({ min: 1, max: 4 }),
      canners: fc.integer({ min: 0, max: 2 }),
      toH: fc.integer({ min: 12, max: 22 }),
      people: fc.array(fc.record({ hours: fc.integer({ min: 1, max: 8 }), fromH: fc.integer({ min: 8, max: 14 }) }), {
        minLength: 1,
        maxLength: 3,
      }),
      crowd: fc.integer({ min: 1, max: 3 }),
    });
    let placed = 0;
    let refused = 0;
    fc.assert(
      fc.property(days, (d) => {
        const p = inventedSeason(d.seed, 'mini');
        const plan = greedyPlan(p);
        // Several planned days pressed into one, so that the kitchen is crowded.
        const crowded = { ...plan, cooked: plan.cooked.map((c) => ({ ...c, day: Math.floor(c.day / d.crowd) })) };
        const k = {
          fromH: 8,
          toH: d.toH,
          rings: d.rings,
          canners: Array.from({ length: d.canners }, () => ({
            holds: Object.fromEntries(p.jars.map((j) => [j.id, j.perLoad])),
          })),
          people: d.people.map((x, i) => ({ id: `p${i}`, fromH: x.fromH, toH: d.toH, hours: x.hours })),
        };
        for (let day = 0; day < p.horizon; day++) {
          const s = daySchedule(p, crowded, day, k);
          assertNothingTwice(s, k);
          const asked = crowded.cooked.filter((c) => c.day === day).reduce((n, c) => n + batchCount(c), 0);
          assert.equal(s.steps.filter((x) => x.step === 'cook').length + s.notPlaced.length, asked);
          placed += asked - s.notPlaced.length;
          refused += s.notPlaced.length;
        }
      }),
      { numRuns: 150, seed: 3 },
    );
    assert.ok(placed > 100 && refused > 100, `${placed} placed, ${refused} refused: both ways must be tried`);
  });

  it('puts two batches one after the other when there is one pan, and side by side when there are two pans and two people', () => {
    const p = oneKitchen({
      mode: { maxKg: 4, activeH: 1, vesselH: 2, burnerH: 1 },
      instance: { vessels: [{ id: 'pan', count: 1 }] },
    });
    const starts = (s: DaySchedule) => s.steps.map((x) => x.fromH);
    assert.deepEqual(starts(daySchedule(p, batches(2), 0, kitchen)), [9, 11]);
    const two = { ...kitchen, people: [...kitchen.people, { id: 'ben', fromH: 9, toH: 18, hours: 8 }] };
    assert.deepEqual(starts(daySchedule({ ...p, vessels: [{ id: 'pan', count: 2 }] }, batches(2), 0, two)), [9, 9]);
  });

  it('sets up once, then cooks, then cans load after load', () => {
    const p = oneKitchen({
      mode: { maxKg: 8, activeH: 1 },
      recipe: { setupH: 0.5, jars: ['litre'], canner: { activeH: 0.25, burnerH: 1 } },
    });
    const plan: Plan = {
      ...empty,
      cooked: [{ recipe: 'jam', mode: 'usual', day: 0, kg: 8, batches: [{ loads: 2, count: 1 }] }],
    };
    const s = daySchedule(p, plan, 0, kitchen);
    assert.deepEqual(
      s.steps.map((x) => [x.step, x.fromH, x.toH]),
      [
        ['set up', 9, 9.5],
        ['cook', 9.5, 10.5],
        ['can', 10.5, 11.5],
        ['can', 11.5, 12.5],
      ],
    );
  });

  it('cans in the smallest canner that takes the load, while hands wash up', () => {
    const p = oneKitchen({
      mode: { maxKg: 8, activeH: 1.5, burnerH: 1 },
      recipe: { jars: ['litre'], canner: { activeH: 0.1, burnerH: 0.5 } },
      instance: { jars: oneKitchen().jars.map((j) => ({ ...j, perLoad: 8 })) },
    });
    const two = { ...kitchen, canners: [{ holds: { litre: 8 } }, { holds: { litre: 4 } }] };
    const canned = (kg: number) => {
      const cooked = [{ recipe: 'jam', mode: 'usual', day: 0, kg, batches: [{ loads: 1, count: 1 }] }];
      return daySchedule(p, { ...empty, cooked }, 0, two).steps.map((x) => [
        x.step,
        Number(x.fromH.toFixed(2)),
        Number(x.toH.toFixed(2)),
        x.bookings.filter((b) => b.resource.startsWith('canner')).map((b) => b.resource)[0] ?? '',
      ]);
    };
    assert.deepEqual(canned(4), [
      ['cook', 9, 10, ''],
      ['can', 10, 10.5, 'canner 2'],
      ['clear up', 10.1, 10.6, ''],
    ]);
    assert.equal(canned(5)[1]?.[3], 'canner 1');
  });

  it('says which batch does not fit and at which step', () => {
    const p = oneKitchen({ mode: { maxKg: 4, activeH: 3 } });
    const s = daySchedule(p, batches(4), 0, kitchen);
    assert.equal(s.steps.length, 2);
    assert.deepEqual(
      s.notPlaced.map((x) => x.step),
      ['cook', 'cook'],
    );
  });

  it('splits a line into batches within their least and greatest kg, losing nothing', () => {
    const p = oneKitchen({ mode: { minKg: 2, maxKg: 8 }, recipe: { jars: ['litre'], canner: {} } });
    const line = {
      recipe: 'jam',
      mode: 'usual',
      day: 0,
      kg: 9,
      batches: [
        { loads: 1, count: 1 },
        { loads: 2, count: 1 },
      ],
    };
    const kg = splitBatches(p, line).map((b) => b.kg);
    assert.ok(Math.abs(kg.reduce((a, b) => a + b, 0) - 9) < 1e-9);
    assert.ok((kg[0] as number) >= 2 && (kg[0] as number) <= 4 && (kg[1] as number) <= 8, kg.join(' '));
  });
});
