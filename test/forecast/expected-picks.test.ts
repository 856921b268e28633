import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { cropDefaultsOf, tableEntry } from '#lib/forecast/crop-defaults.ts';
import { expectedPicks } from '#lib/forecast/expected-picks.ts';
import { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';
import { learnPrior } from '#lib/forecast/learn-prior.ts';

const window = { from: 225, to: 244 };
const prior = learnPrior(tableEntry({ defaults: cropDefaultsOf('plum-european'), expectedKg: 40, window }), []);
const build = () => new HarvestPosterior(prior).update({ t: 228, kg: 3 }).update({ t: 231, kg: 6 });
const request = { posterior: build(), cropId: 'plum', seed: 5, fromDay: 232, days: 7 };

describe('picks to expect', () => {
  test('daily means are the share of the remainder that ripens, and the rest stays outside', () => {
    const { days, all } = expectedPicks(request);
    assert.deepEqual(
      days.map((d) => d.day),
      [232, 233, 234, 235, 236, 237, 238],
    );
    const [soon] = build().meanPath([231, 238, 900]) as unknown as [number];
    assert.ok(Math.abs(all.kg - soon) < 1e-9 && all.kg < build().means().remaining);
    for (const d of days) assert.ok(d.lowKg <= d.kg && d.kg <= d.highKg);
  });

  test('the range of all days is narrower than the days added up', () => {
    const { days, all } = expectedPicks(request);
    assert.ok(all.lowKg > days.reduce((s, d) => s + d.lowKg, 0));
    assert.ok(all.highKg < days.reduce((s, d) => s + d.highKg, 0));
    assert.ok(all.lowKg < all.kg && all.kg < all.highKg);
  });

  test('outside the picking window nothing comes, and fruit that ripened before it waits for its first day', () => {
    const early = expectedPicks({ ...request, window: { from: 235, to: 236 } });
    assert.deepEqual(
      early.days.map((d) => d.kg > 0),
      [false, false, false, true, true, false, false],
    );
    const free = expectedPicks(request).days;
    const waited = free.slice(0, 4).reduce((s, d) => s + d.kg, 0);
    assert.ok(Math.abs((early.days[3]?.kg as number) - waited) < 1e-9);
    assert.equal(expectedPicks({ ...request, window: { from: 300, to: 310 } }).all.kg, 0);
  });

  test('the same seed gives the same ranges', () => assert.deepEqual(expectedPicks(request), expectedPicks(request)));
});
