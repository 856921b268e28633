import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { storageClass } from '#lib/batch/gate.ts';
import { instanceFaults } from '#lib/plan/check-instance.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet, fromPounds } from '#lib/units/convert.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { openContext } from '#lib/usecases/context.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { expectedPicks } from '#lib/usecases/plan-expected.ts';
import { planInstance } from '#lib/usecases/plan-instance.ts';
import { litresPerKg, placeOf } from '#lib/usecases/plan-recipes.ts';
import { lotClock } from '#lib/usecases/read-today.ts';
import { onSqlite } from '#test/support/database.ts';

const NOW = new Date('2026-01-20T10:00:00Z');
const within = (share: number, got: number, wanted: number, what: string) =>
  assert.ok(Math.abs(got / wanted - 1) <= share, `${what}: ${got.toFixed(3)} against ${wanted.toFixed(3)}`);

async function opened(db: Db, day: string) {
  await openDemo(db, plainDate(day), NOW);
  const ctx = await openContext(db, 'wrenlatch', NOW);
  assert.ok(ctx);
  return ctx;
}

describe('litres a recipe makes of a kilogram', () => {
  it('gives the dozen half-pints and the remainders that 3.00 kg of damsons make by mass balance', () => {
    // 3.00 kg at 8 % waste: 2.76 kg, sugar 0.87 to 1; (2.76 x 13 % + 2.40) / 65 % = 4.24 kg = 3.22 L: 12 jars and 2 x 0.8 jar.
    const litres = 3 * (litresPerKg(recipeOf('damson-jam')) as number);
    within(0.15, litres / 0.237, 12, 'half-pints');
    within(0.05, litres, 3.22, 'litres');
  });
  it('gives a pint of sauce to a pound and a half (13.5 lb to 9 pints, AIB 539)', () => {
    within(0.02, litresPerKg(recipeOf('apple-sauce')) as number, 0.473 / (fromPounds(1.5) / 1000), 'L per kg');
  });
  it('gives pears, plums and apples in syrup by the printed loads', () => {
    within(
      0.15,
      litresPerKg(recipeOf('pears-in-light-syrup')) as number,
      (9 * 0.473) / (fromPounds(11) / 1000),
      'pears',
    );
    within(0.15, litresPerKg(recipeOf('plums-in-syrup')) as number, (7 * 0.946) / (fromPounds(14) / 1000), 'plums');
  });
  it('presses 0.62 of the apples as weighed, nothing peeled', () => {
    within(0.15, litresPerKg(recipeOf('apple-juice')) as number, 0.62, 'L per kg');
  });
});

describe('the snapshot a plan is made from', () => {
  onSqlite((open) => {
    for (const day of ['2025-09-01', '2025-09-08']) {
      it(`on ${day} holds the ledger's sound fruit, what is expected, and only recipes the gate lets out`, async () => {
        const ctx = await opened(await open(), day);
        const expected = await expectedPicks(ctx, 14);
        const p = await planInstance(ctx, { horizon: 14, expected });
        assert.deepEqual(instanceFaults(p), []);

        const held = (await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] })).filter(
          (l) => l.grade !== 'cull' && !l.groundFall && (l.lockedUntil ?? '') <= ctx.today && l.cropId,
        );
        const sound = held.filter((l) => (lotClock(ctx, l)?.hours ?? 0) > 0).reduce((g, l) => g + l.onHand, 0);
        const there = p.lots.filter((l) => !l.id.startsWith('expected:'));
        assert.ok(Math.abs(there.reduce((n, l) => n + l.kg, 0) - sound / 1000) < 1e-6, 'fruit on hand');
        assert.ok(there.every((l) => l.avail === 0));

        const kept = expected.reduce((n, e) => {
          const c = ctx.place.crops.find((x) => x.id === e.cropId);
          return n + (c ? (e.kg * (100 - c.soldPercent - c.eatenPercent - c.cullPercent)) / 100 : 0);
        }, 0);
        const coming = p.lots.filter((l) => l.id.startsWith('expected:'));
        const comingKg = coming.reduce((n, l) => n + l.kg, 0);
        assert.ok(
          comingKg <= kept + 1e-6 && comingKg > kept * 0.85,
          `expected ${comingKg.toFixed(1)} of ${kept.toFixed(1)} kg`,
        );
        assert.ok(
          coming.every((l) => l.avail >= 1),
          'nothing is expected for today',
        );

        const altitudeFt = feet(mainKitchen(ctx.place)?.altitudeM ?? 0);
        for (const r of p.recipes.filter((x) => x.canner)) {
          const recipe = recipeOf(r.id);
          for (const f of r.fruit) {
            const foodId = ctx.place.crops.find((c) => c.id === f.crop)?.foodId ?? '';
            const verdict = storageClass({
              recipe,
              fruit: [{ foodId, grams: 1000, grade: 'perfect', groundFall: false }],
              jar: { size: recipe.jarSizes[0] as JarSize, madeForCanning: true },
              altitudeFt,
              method: 'boiling-water',
              asWritten: true,
              acidDoseGiven: true,
            });
            assert.ok(verdict.process, `${r.id} of ${foodId} has no process here`);
          }
        }
        assert.ok(
          p.recipes.every((r) => r.canner !== undefined || placeOf(recipeOf(r.id).kind) !== 'shelf'),
          'every shelf recipe goes through the canner',
        );
        assert.deepEqual(
          await planInstance(ctx, { horizon: 14, expected: await expectedPicks(ctx, 14) }),
          p,
          'the same records give the same snapshot',
        );
      }, 60_000);
    }

    it('expects nothing of a crop before its window opens', async () => {
      const ctx = await opened(await open(), '2025-09-01');
      const damson = ctx.place.crops.find((c) => c.code === 'damson');
      const picks = (await expectedPicks(ctx, 14)).filter((e) => e.cropId === damson?.id);
      assert.ok(picks.length > 0 && picks.every((e) => e.day >= 4), JSON.stringify(picks));
    }, 60_000);

    it('takes the hours a person says for today and nothing else from them', async () => {
      const ctx = await opened(await open(), '2025-09-01');
      const usual = await planInstance(ctx, { horizon: 14, expected: [] });
      const told = await planInstance(ctx, { horizon: 14, expected: [], hoursToday: 3 });
      assert.equal(usual.days[0]?.active, 0);
      assert.equal(told.days[0]?.active, 3);
      assert.ok((told.days[0]?.cannerLoads ?? 0) > 0);
      assert.deepEqual(told.days.slice(1), usual.days.slice(1));
    }, 60_000);
  });
});
