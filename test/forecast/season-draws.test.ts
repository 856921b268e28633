import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { type DrawMethod, drawSeasons } from '#lib/forecast/season-draws.ts';
import { noBanks, product, scenario } from './toy-scenario.ts';

const N = 8000;
const CROPS = ['plum', 'apple'].map((id) => ({ id, keepPerWeek: 0.5, freshKgPerWeek: 0, onHandKg: 0 }));
const sc = scenario({
  products: [product({ id: 'jam', rateCv: 0.25 }), product({ id: 'jelly', rateCv: 0.5 }), product({ id: 'paste' })],
  crops: CROPS,
});
const ROWS = 100;
const banks = { paths: CROPS.map(() => new Float32Array(ROWS * 52)), rows: CROPS.map(() => ROWS) };
const METHODS: DrawMethod[] = ['lhs', 'mc', 'antithetic', 'lattice'];
const moments = (x: ArrayLike<number>) => {
  const values = Array.from(x);
  const mean = values.reduce((s, v) => s + v, 0) / values.length;
  return { mean, sd: Math.sqrt(values.reduce((s, v) => s + (v - mean) ** 2, 0) / values.length) };
};

describe('season draws', () => {
  test.each(METHODS)('%s: rate factors have mean 1 and the spread asked for', (method) => {
    const { mult } = drawSeasons(sc, banks, { n: N, seed: 4, method });
    [0.25, 0.5, 0].forEach((cv, p) => {
      const m = moments(mult.subarray(p * N, (p + 1) * N));
      assert.ok(Math.abs(m.mean - 1) < (4.5 * cv) / Math.sqrt(N) + 1e-3, `${m.mean}`);
      assert.ok(Math.abs(m.sd - cv) < 0.05 * cv + 1e-9, `${m.sd}`);
    });
  });

  test('the hypercube uses every harvest row equally often', () => {
    const { cropIdx } = drawSeasons(sc, banks, { n: N, seed: 4 });
    const counts = new Uint32Array(ROWS);
    for (let s = 0; s < N; s++) counts[cropIdx[s] as number] = (counts[cropIdx[s] as number] as number) + 1;
    assert.ok(counts.every((k) => k === N / ROWS));
  });

  test.each(METHODS)('%s: good years of crops go together as strongly as rho says', (method) => {
    const { cropIdx } = drawSeasons(sc, banks, { n: N, seed: 5, method, rho: 0.3 });
    const [a, b] = [cropIdx.subarray(0, N), cropIdx.subarray(N)];
    const [ma, mb] = [moments(a), moments(b)];
    let sum = 0;
    for (let s = 0; s < N; s++) sum += ((a[s] as number) - ma.mean) * ((b[s] as number) - mb.mean);
    // Rank correlation of a normal pair: 6/pi asin(rho/2).
    const want = (6 / Math.PI) * Math.asin(0.15);
    assert.ok(Math.abs(sum / N / ma.sd / mb.sd - want) < 0.05, `${sum / N / ma.sd / mb.sd}`);
  });

  test.each(METHODS)('%s: a product moved or added keeps the others as they were', (method) => {
    const one = drawSeasons(sc, banks, { n: 64, seed: 9, method });
    const moved = drawSeasons({ ...sc, products: [...sc.products].reverse() }, banks, { n: 64, seed: 9, method });
    assert.deepEqual(moved.mult.subarray(128), one.mult.subarray(0, 64));
    if (method === 'lattice') return; // its primes follow the sorted names
    const more = drawSeasons({ ...sc, products: [product({ id: 'apple sauce', rateCv: 1 }), ...sc.products] }, banks, {
      n: 64,
      seed: 9,
      method,
    });
    assert.deepEqual(more.mult.subarray(64), one.mult);
  });

  test('the hypercube makes the mean steadier than plain draws', () => {
    const spread = (method: DrawMethod) =>
      moments(
        Array.from(
          { length: 30 },
          (_, seed) => moments(drawSeasons(sc, banks, { n: 200, seed, method }).mult.subarray(0, 200)).mean,
        ),
      ).sd;
    assert.ok(spread('lhs') < spread('mc') / 5);
  });

  test('crops without a bank are refused', () =>
    assert.throws(() => drawSeasons(sc, noBanks, { n: 1, seed: 1 }), RangeError));
});
