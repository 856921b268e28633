import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { product, runSeasons, scenario } from './toy-scenario.ts';

/** Nine jars of one jam, half a jar a week: what is left after a week of each season, sorted. */
const season = (offBy?: number, week = 8) => {
  const sc = scenario({
    products: [product({ id: 'jam', usePerWeek: 0.5 })],
    lots: [{ product: 0, jars: 9, bestByWeek: 52, ...(offBy ? { offBy } : {}) }],
  });
  const { out } = runSeasons(sc, { n: 4000, seed: 3 });
  return Array.from({ length: out.n }, (_, s) => out.stock[week * out.n + s] as number).sort((a, b) => a - b);
};
const at = (sorted: number[], q: number) => sorted[Math.floor(q * (sorted.length - 1))] as number;
const mean = (x: number[]) => x.reduce((a, b) => a + b, 0) / x.length;

describe('a batch counted from memory', () => {
  it('gives the forecast a wider band than one that was counted, around the same middle', () => {
    const counted = season();
    const about = season(2);
    const width = (x: number[]) => at(x, 0.9) - at(x, 0.1);
    assert.ok(width(about) > width(counted), `${width(about)} jars against ${width(counted)}`);
    assert.ok(Math.abs(mean(about) - mean(counted)) < 0.15, `${mean(about)} against ${mean(counted)}`);
    assert.ok(about.every((n) => n >= 0));
  });

  // In the second week, before any season has come to its last jar.
  it('adds the spread of five equally likely numbers: variance 2', () => {
    const variance = (x: number[]) => x.reduce((v, n) => v + (n - mean(x)) ** 2, 0) / x.length;
    const more = variance(season(2, 1)) - variance(season(undefined, 1));
    assert.ok(Math.abs(more - 2) < 0.2, `${more}`);
  });

  it('never holds fewer than none', () => {
    const sc = scenario({
      products: [product({ id: 'jam' })],
      lots: [{ product: 0, jars: 1, bestByWeek: 52, offBy: 3 }],
    });
    const { out } = runSeasons(sc, { n: 500, seed: 1 });
    const seen = new Set(Array.from({ length: out.n }, (_, s) => out.stock[s]));
    assert.deepEqual([...seen].sort(), [0, 1, 2, 3, 4]);
  });
});
