import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { key, mix32, Sfc32, uid, uniformOf } from '#lib/forecast/random.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('addressed random numbers', () => {
  test('mixer, names and keys keep their golden values', () => {
    for (const v of vectors.golden.mix32) assert.equal(mix32(v.x), v.y);
    for (const v of vectors.golden.uid) assert.equal(uid(v.x), v.y);
    for (const v of vectors.golden.key) assert.equal(key(7, v.a, v.b, v.c), v.y);
  });

  test('weekly uniforms of a product keep their golden values', () => {
    const g = vectors.golden.weeklyUniforms;
    const stream = mix32(key(g.seed, g.season, 7) ^ uid(g.product));
    g.u.forEach((want, week) => {
      const got = uniformOf(mix32(stream ^ Math.imul(week + 1, 0x9e3779b1)));
      assert.ok(Math.abs(got - want) < 1e-11, `week ${week}: ${got}`);
    });
  });

  test('the same key gives the same stream and another key another', () => {
    const [a, b, c] = [new Sfc32(5), new Sfc32(5), new Sfc32(6)];
    const first = Array.from({ length: 50 }, () => a.u());
    assert.deepEqual(
      Array.from({ length: 50 }, () => b.u()),
      first,
    );
    assert.notDeepEqual(
      Array.from({ length: 50 }, () => c.u()),
      first,
    );
  });

  // Mean and variance of each sampler within 4.5 standard errors of the law's own, at N draws.
  const N = 200_000;
  const laws: [string, (r: Sfc32) => number, { mean: number; variance: number; fourth: number }][] = [
    ['uniform', (r) => r.u(), { mean: 0.5, variance: 1 / 12, fourth: 1 / 80 }],
    ['normal', (r) => r.normal(), { mean: 0, variance: 1, fourth: 3 }],
    ['gamma 0.3', (r) => r.gamma(0.3), { mean: 0.3, variance: 0.3, fourth: 3 * 0.09 + 6 * 0.3 }],
    ['gamma 4.5', (r) => r.gamma(4.5), { mean: 4.5, variance: 4.5, fourth: 3 * 20.25 + 6 * 4.5 }],
    ['Poisson 2.4', (r) => r.poisson(2.4), { mean: 2.4, variance: 2.4, fourth: 3 * 5.76 + 2.4 }],
  ];
  test.each(laws)('%s has the mean and variance of its law', (_, draw, law) => {
    const rng = new Sfc32(key(11, 1));
    let [sum, square] = [0, 0];
    for (let i = 0; i < N; i++) {
      const off = draw(rng) - law.mean;
      sum += off;
      square += off * off;
    }
    assert.ok(Math.abs(sum / N) < 4.5 * Math.sqrt(law.variance / N));
    assert.ok(Math.abs(square / N - law.variance) < 4.5 * Math.sqrt((law.fourth - law.variance ** 2) / N));
  });

  test('a gamma of shape zero is zero', () => assert.equal(new Sfc32(1).gamma(0), 0));
});
