import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { batchWorth } from '#lib/forecast/batch-worth.ts';
import { product, runSeasons, scenario } from './toy-scenario.ts';

const jam = product({ id: 'jam', usePerWeek: 0.5, jarsPerBatch: 4, hoursPerBatch: 2 });
const sc = scenario({ products: [jam] });

describe('worth of one more batch', () => {
  test('with use known to be Poisson, is the sum over its jars of the chance of being wanted', () => {
    const [table] = batchWorth(sc, { value: [5], waste: 1, perHour: 0.5, weeks: [20] });
    const mean = 10;
    const wanted = (jars: number): number => {
      let [term, below] = [Math.exp(-mean), 0];
      for (let k = 0; k < jars; k++) {
        below += term;
        term *= mean / (k + 1);
      }
      return 1 - below;
    };
    for (const stock of [0, 7, 12, 30]) {
      let want = -0.5 * 2;
      for (let j = stock + 1; j <= stock + 4; j++) want += 5 * wanted(j) - (1 - wanted(j));
      assert.ok(Math.abs((table?.[stock] as number) - want / 2) < 1e-5);
    }
  });

  test('falls with the jars in stock and ends below zero', () => {
    const [table] = batchWorth(sc, { value: [5], waste: 1, perHour: 0.5 }) as [Float32Array];
    for (let s = 1; s < 160; s++) assert.ok((table[s] as number) <= (table[s - 1] as number) + 1e-6);
    assert.ok((table[0] as number) > 0 && (table[159] as number) < 0);
  });

  test('makes the dearer use of scarce fruit first, and stops when another jar would be left over', () => {
    const crops = [{ id: 'plum', keepPerWeek: 0, freshKgPerWeek: 0, onHandKg: 100 }];
    const products = [
      product({ ...jam, id: 'juice', crop: 0, kgPerJar: 1 }),
      product({ ...jam, id: 'paste', crop: 0, kgPerJar: 1 }),
    ];
    const base = scenario({
      products,
      crops,
      hours: new Array<number>(52).fill(4),
      intentions: [0, 1].map((p) => ({ product: p, target: 0, fromWeek: 9, toWeek: 0, maxBatchesPerWeek: 0 })),
    });
    const made = (value: number[], hours: number) => {
      const best = {
        ...base,
        hours: new Array<number>(52).fill(hours),
        batchWorth: batchWorth(base, { value, waste: 1, perHour: 0.5 }),
      };
      return [...runSeasons(best, { n: 1, seed: 1 }, [new Float32Array(52)]).out.made];
    };
    assert.deepEqual(made([2.5, 5], 4), [0, 8]);
    assert.deepEqual(made([5, 2.5], 4), [8, 0]);
    const [juice, paste] = made([3, 3], 60) as [number, number];
    assert.ok(juice >= 24 && juice <= 36 && paste === juice, `${juice}, ${paste}`);
  });

  test('of two equally worth batches takes the same one whichever stands first', () => {
    const crops = [{ id: 'plum', keepPerWeek: 0, freshKgPerWeek: 0, onHandKg: 100 }];
    const made = (ids: string[]) => {
      const products = ids.map((id) => product({ ...jam, id, crop: 0 }));
      const intentions = [0, 1].map((p) => ({ product: p, target: 0, fromWeek: 9, toWeek: 0, maxBatchesPerWeek: 0 }));
      const base = scenario({ products, crops, intentions, hours: new Array<number>(52).fill(2) });
      const best = { ...base, batchWorth: batchWorth(base, { value: [3, 3], waste: 1, perHour: 0.5 }) };
      const { out } = runSeasons(best, { n: 1, seed: 1 }, [new Float32Array(52)]);
      return Object.fromEntries(ids.map((id, p) => [id, out.made[p]]));
    };
    assert.deepEqual(made(['juice', 'paste']), { juice: 4, paste: 0 });
    assert.deepEqual(made(['paste', 'juice']), { juice: 4, paste: 0 });
  });
});
