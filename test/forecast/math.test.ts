import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { gammaP, gammaQ, lgamma, pnorm, qgamma, qnorm, quantileSorted } from '#lib/forecast/math.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

const near = (got: number, want: number, relative = 1e-12): void =>
  assert.ok(Math.abs(got - want) <= relative * Math.max(1, Math.abs(want)), `${got} is not ${want}`);

describe('special functions', () => {
  test('ln Gamma is ln of the factorial at whole numbers and ln sqrt(pi) at one half', () => {
    let logFactorial = 0;
    for (let n = 1; n <= 170; n++) {
      near(lgamma(n), logFactorial, 1e-13);
      logFactorial += Math.log(n);
    }
    near(lgamma(0.5), 0.5 * Math.log(Math.PI));
  });

  test('normal quantiles agree with the check values printed with AS 241', () => {
    // Wichura 1988: the quantiles of 0.25, 0.001 and 1e-20.
    near(qnorm(0.25), -0.6744897501960817, 1e-15);
    near(qnorm(0.001), -3.090232306167814, 1e-15);
    near(qnorm(1e-20), -9.262340089798409, 1e-15);
  });

  test('the normal quantile undoes the normal probability', () => {
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), (z) => near(qnorm(pnorm(z)), z, z > 4 ? 1e-4 : 1e-9)),
    );
  });

  test('P(Gamma(n) <= x) is the Poisson tail, summed term by term', () => {
    for (const mean of [0.3, 4, 13, 40]) {
      let term = Math.exp(-mean);
      let below = 0;
      for (let n = 1; n < 60; n++) {
        below += term;
        near(gammaP(n, mean), 1 - below, 1e-12);
        near(gammaQ(n, mean), below, 1e-12);
        term *= mean / n;
      }
    }
  });

  test('the gamma quantile undoes the gamma probability at any shape', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 400, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (a, p) => {
          const x = qgamma(p, a);
          if (x > 1e-300) near(gammaP(a, x), p, 1e-9);
        },
      ),
    );
  });

  test('run-out weeks of a known rate are Erlang quantiles', () => {
    for (const v of vectors.erlangQuantiles) {
      near(qgamma(0.1, v.jars) / v.usePerWeek, v.p10, 1e-7);
      near(qgamma(0.5, v.jars) / v.usePerWeek, v.p50, 1e-7);
      near(qgamma(0.9, v.jars) / v.usePerWeek, v.p90, 1e-7);
    }
  });

  test('quantiles of a sorted list are read between its values', () => {
    assert.equal(quantileSorted([1, 2, 4], 0.5), 2);
    assert.equal(quantileSorted([1, 2, 4], 0.75), 3);
    assert.equal(quantileSorted([1, 2, 4], 1), 4);
    assert.ok(Number.isNaN(quantileSorted([], 0.5)));
  });
});
