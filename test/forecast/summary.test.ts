import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { allocOut } from '#lib/forecast/out.ts';
import {
  bands,
  emptyByWeek,
  lidsEnough,
  mcError,
  overflow,
  pAny,
  quantilesByCount,
  runOutDates,
  shopping,
  storeBands,
} from '#lib/forecast/summary.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };
import { product, scenario } from './toy-scenario.ts';

const sc = scenario({
  products: [product({ id: 'jam' }), product({ id: 'jelly' })],
  weeks: 4,
  lids: [{ id: 'lid', stock: 20 }],
});
const filled = () => {
  const out = allocOut(sc, 10);
  out.runOut.fill(255);
  out.firstMade.fill(255);
  return out;
};

describe('quantiles by counting', () => {
  test('are the smallest value reached by ceil(p N), as sorting finds it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(3000), { minLength: 1, maxLength: 60 }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (values, p) => {
          const sorted = [...values].sort((a, b) => a - b);
          assert.equal(
            quantilesByCount(values, 0, values.length, [p])[0],
            sorted[Math.max(1, Math.ceil(p * values.length - 1e-9)) - 1],
          );
        },
      ),
    );
  });

  test('jars of one week and product, and room to half a centimetre', () => {
    const out = filled();
    for (let s = 0; s < 10; s++) {
      out.stock[(2 * 2 + 1) * 10 + s] = 9 - s;
      out.store[2 * 10 + s] = 7.2 * s;
    }
    assert.deepEqual(bands(out, 2, 1, [0.1, 0.5, 0.9]), [0, 4, 8]);
    assert.deepEqual(bands(out, 2, 0, [0.5]), [0]);
    assert.deepEqual(storeBands(out, 2, 0, [0.5, 1]), [29, 65]);
  });
});

describe('whole seasons', () => {
  test('a product that runs out after being made again has lasted to harvest', () => {
    const out = filled();
    out.runOut.set([3, 1, 2, 255, 3, 255, 1, 255, 255, 2]);
    out.firstMade.set([2, 3, 255, 255, 255, 3, 3, 255, 2, 1]);
    const found = runOutDates(out, 0);
    assert.deepEqual(found.weeks, [1, 1, 2, 3]);
    assert.equal(found.lastsShare, 0.6);
    assert.equal(found.goneBy(0.3), 2);
    assert.equal(found.goneBy(0.5), null);
    assert.deepEqual(found.dots(5), [1, 2, null, null, null]);
    assert.equal(runOutDates(out, 1).lastsShare, 1);
  });

  test('a shelf over its capacity in any week counts once', () => {
    const out = filled();
    // Season 0 in weeks 1 and 2, season 1 in week 2, season 2 in week 2.
    for (const [week, season] of [
      [1, 0],
      [2, 0],
      [2, 1],
      [2, 2],
    ] as const)
      out.store[week * 10 + season] = 50;
    const full = overflow(out, 0, 49);
    assert.equal(full.share, 0.3);
    assert.deepEqual(
      [...full.byWeek].map((p) => Math.round(p * 10)),
      [0, 1, 3, 0],
    );
    assert.equal(full.mostOftenFrom, 2);
    assert.deepEqual(overflow(out, 0, 50), { share: 0, byWeek: new Float64Array(4), mostOftenFrom: null });
  });

  test('lids to buy are the quantile of lids used less those on hand', () => {
    const out = filled();
    for (let s = 0; s < 10; s++) out.lids[3 * 10 + s] = 10 + 5 * s;
    assert.equal(shopping(out, 0, 3, 0.9), 30);
    assert.equal(shopping(out, 0, 3, 0.1), 0);
    assert.equal(lidsEnough(out, 0, 3, 50), 0.9);
    assert.equal(lidsEnough(out, 0, 3, 30), 0.5);
  });

  test('share of seasons and of weeks without a jar', () => {
    const out = filled();
    out.stock.fill(3);
    out.stock[1 * 20 + 4] = 0;
    assert.deepEqual([...emptyByWeek(out, 0)], [0, 0.1, 0, 0]);
    assert.equal(
      pAny(out, (s) => s < 3),
      0.3,
    );
  });
});

test('Monte Carlo error of a share', () => {
  for (const v of vectors.mcError) assert.ok(Math.abs(mcError(v.p, v.n) - v.se) < 1e-8);
});
