import assert from 'node:assert/strict';
import { expect, it, vi } from 'vitest';
import { lgamma } from '#lib/forecast/math.ts';
import type { ProductSpec } from '#lib/forecast/scenario.ts';
import { mcError } from '#lib/forecast/summary.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { fruitBanks, posteriorsOf } from '#lib/usecases/forecast-fruit.ts';
import { runForecast, trySeasons } from '#lib/usecases/forecast-run.ts';
import { noneLeftWeeks } from '#lib/usecases/forecast-summary.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { seasonInput } from '#lib/usecases/season-scenario.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { onSqlite } from '#test/support/database.ts';

// Whole seasons are worked out in place here.
vi.setConfig({ testTimeout: 120_000 });

const INSTANT = new Date('2026-01-20T10:00:00Z');

/** P(fewer than n wanted) for a mean, negative binomial with variance = phi x mean; Poisson at phi 1. Written out here. */
function fewerThan(n: number, mean: number, phi: number): number {
  const size = phi > 1 ? mean / (phi - 1) : Number.POSITIVE_INFINITY;
  let p = phi > 1 ? phi ** -size : Math.exp(-mean);
  let sum = 0;
  for (let k = 0; k < n; k++) {
    sum += p;
    p *= phi > 1 ? ((size + k) / (k + 1)) * (1 - 1 / phi) : mean / (k + 1);
  }
  return sum;
}

/** Closed form: gamma-mixed rate (mean 1, the given CV) by a fine midpoint rule, the year's profile added up to week t. */
function noneLeftBy(jars: number, weeks: number, p: ProductSpec): number {
  const mean = p.usePerWeek * (p.profile ?? []).slice(0, weeks).reduce((a, b) => a + b, 0);
  const shape = 1 / p.rateCv ** 2;
  const steps = 4000;
  let left = 0;
  let mass = 0;
  for (let i = 0; i < steps; i++) {
    const x = ((i + 0.5) / steps) * (1 + 8 * p.rateCv);
    const density = Math.exp(shape * Math.log(shape) + (shape - 1) * Math.log(x) - shape * x - lgamma(shape));
    mass += density;
    left += density * fewerThan(jars, mean * x, p.dispersion);
  }
  return 1 - left / mass;
}

onSqlite((open) => {
  it('runs out as often as the closed form says where nothing is made, within the error of 4,000 seasons', async () => {
    const db = await open();
    await openDemo(db, plainDate('2026-01-15'), INSTANT);
    const input = seasonInput(await seasonSnapshot((await openContext(db, 'wrenlatch', INSTANT)) as Context));
    const n = 4000;
    const scenario = { ...input.scenario, intentions: [], planned: [] };
    const banks = fruitBanks(input, posteriorsOf(input), { seed: 1, rows: 64 });
    const out = trySeasons(scenario, banks, { n });
    let compared = 0;
    let worst = 0;
    for (const [p, product] of scenario.products.entries()) {
      const jars = input.lines[p]?.onHand ?? 0;
      const kept = scenario.lots.filter((l) => l.product === p).every((l) => l.bestByWeek >= 26);
      if (jars === 0 || !kept) continue;
      for (const weeks of [8, 16, 26]) {
        const exact = noneLeftBy(jars, weeks, product);
        if (exact < 0.02 || exact > 0.98) continue;
        const counted = noneLeftWeeks(out, p, { fromWeek: 0, toWeek: weeks }).length / n;
        // Standard error of plain sampling; the hypercube does better, so four of them is generous without being blind.
        const z = Math.abs(counted - exact) / mcError(exact, n);
        worst = Math.max(worst, z);
        compared++;
        assert.ok(
          z < 4,
          `${product.id} by week ${weeks}: counted ${counted}, exact ${exact.toFixed(4)}, ${z.toFixed(1)} errors of ${mcError(exact, n).toFixed(4)}`,
        );
      }
    }
    assert.ok(compared >= 20, `${compared} compared`);
    assert.ok(worst > 0.05, 'a match to the last digit would mean nothing was drawn');
  });

  it('gives the same answer twice, and fewer seasons say nearly the same', async () => {
    const db = await open();
    await openDemo(db, plainDate('2025-09-12'), INSTANT);
    const input = seasonInput(await seasonSnapshot((await openContext(db, 'wrenlatch', INSTANT)) as Context));
    const heard: string[] = [];
    let first: unknown = null;
    const once = runForecast(
      input,
      (p) => {
        heard.push(p.doing);
        if (p.first) first = p.first;
      },
      { first: 500, all: 1000 },
    );
    assert.deepEqual(
      runForecast(structuredClone(input), () => undefined, { first: 500, all: 1000 }),
      once,
    );
    assert.ok(heard.length >= 4 && first !== null);
    const few = first as typeof once;
    for (const [i, line] of once.lines.entries()) {
      const error = Math.hypot(mcError(Math.max(0.02, line.none), 1000), mcError(Math.max(0.02, line.none), 500));
      assert.ok(
        Math.abs(line.none - (few.lines[i]?.none ?? -1)) < 5 * error + 1e-9,
        `${line.line}: ${line.none}, ${few.lines[i]?.none}`,
      );
    }
    // Bands lie in order, and the shares are shares.
    for (const line of once.lines) {
      expect(line.gone.every((g) => g >= 0 && g <= 1)).toBe(true);
      expect(line.weeks.every((w) => w.p10 <= w.p25 && w.p25 <= w.p50 && w.p50 <= w.p75 && w.p75 <= w.p90)).toBe(true);
    }
    // What was picked is what the ledger has; what may come is never below nothing.
    const prune = once.harvest.find((h) => h.code === 'plum-prune');
    assert.ok(Math.abs((prune?.pickedKg ?? 0) - 44) < 0.01, `${prune?.pickedKg}`);
    assert.ok(once.harvest.every((h) => h.coming.p10 >= 0 && h.coming.p10 <= h.coming.p90));
  });
});
