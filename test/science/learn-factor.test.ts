import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { type FigurePrior, learntFigure, tenthOfStudent } from '#lib/science/learn-factor.ts';
import { INVERSION_FACTOR, knownPan, LOSSES } from '#lib/science/learn-priors.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

const PRIORS: [string, FigurePrior][] = [
  ['pan', knownPan(45)],
  ['losses', LOSSES],
  ['inversion factor', INVERSION_FACTOR],
];

/** Share of generated households whose true figure lies inside the four-in-five band after `batches` batches. */
function covered(prior: FigurePrior, o: { batches: number; runs: number; spread?: number }): number {
  let inside = 0;
  for (let run = 0; run < o.runs; run++) {
    const normal = normalDraws(run * 7919 + o.batches);
    // The stated spread counts as four batches: the household's own is drawn from just that (scaled inverse chi-square, 4).
    const spread = o.spread ?? Math.sqrt(4 / [0, 0, 0, 0].reduce((s) => s + normal() ** 2, 0));
    const truth = Math.log(prior.middle) + prior.logSd * normal();
    const seen = Array.from({ length: o.batches }, () => ({
      value: Math.exp(truth + prior.batchLogSd * spread * normal()),
      relSd: 0,
    }));
    const { low, high } = learntFigure(prior, seen);
    if (Math.log(low) <= truth && truth <= Math.log(high)) inside++;
  }
  return inside / o.runs;
}

describe('a figure learnt from batches', () => {
  it('is the prior, as stated, before the first batch', () => {
    const none = learntFigure(LOSSES, []);
    assert.equal(none.n, 0);
    assert.ok(Math.abs(none.low - 72) < 0.01 && Math.abs(none.high - 200) < 0.01, JSON.stringify(none));
  });

  it('is the precision-weighted mean of logs for one batch, worked by hand', () => {
    // prior N(ln 100, 0.3²), batch sd 0.4, seen 200: weight of the batch 0.09 / (0.09 + 0.16) = 0.36.
    const one = learntFigure({ middle: 100, logSd: 0.3, batchLogSd: 0.4 }, [{ value: 200, relSd: 0 }]);
    assert.ok(Math.abs(one.middle - 100 * 2 ** 0.36) < 1e-9, String(one.middle));
  });

  for (const [name, prior] of PRIORS) {
    it(`recovers a known ${name} from generated batches, and its band shrinks as they come`, () => {
      const truth = prior.middle * Math.exp(1.5 * prior.logSd);
      const normal = normalDraws(41);
      const seen = Array.from({ length: 40 }, () => ({
        value: truth * Math.exp(prior.batchLogSd * normal()),
        relSd: 0,
      }));
      const few = learntFigure(prior, seen.slice(0, 4));
      const many = learntFigure(prior, seen);
      assert.ok(many.high / many.low < few.high / few.low, 'narrower');
      assert.ok(many.low < truth * 1.02 && truth < many.high * 1.02, JSON.stringify({ truth, many }));
      assert.ok(Math.abs(Math.log(many.middle / truth)) < 3 * (prior.batchLogSd / Math.sqrt(40)), String(many.middle));
    });

    for (const batches of [0, 1, 3, 8])
      it(`holds the true ${name} in four of five generated households after ${batches} batches`, () => {
        const share = covered(prior, { batches, runs: 1500 });
        assert.ok(Math.abs(share - 0.8) < 0.05, `covered ${share}`);
      });

    for (const spread of [0.7, 1, 1.5])
      it(`keeps its ${name} band near its name when batches differ ${spread} times what was stated`, () => {
        const share = covered(prior, { batches: 8, spread, runs: 1500 });
        assert.ok(share > 0.72 && share < 0.9, `covered ${share}`);
      });
  }

  it('gives a poor measurement less say than a good one', () => {
    const prior = knownPan(45);
    const good = learntFigure(prior, [{ value: 60, relSd: 0.02 }]);
    const poor = learntFigure(prior, [{ value: 60, relSd: 0.3 }]);
    assert.ok(good.middle > poor.middle && poor.middle > 45);
    assert.ok(good.high / good.low < poor.high / poor.low);
  });

  it('refuses a figure that is not above 0', () => {
    assert.throws(() => learntFigure(LOSSES, [{ value: 0, relSd: 0 }]), /above 0, got 0/);
  });

  it('takes the t quantile of printed tables (one tail, 10 %)', () => {
    // Student's t, upper 10 %: 4 → 1.533, 6 → 1.440, 10 → 1.372, 30 → 1.310 (printed in any statistics table).
    for (const [freedom, t] of [
      [4, 1.533],
      [6, 1.44],
      [10, 1.372],
      [30, 1.31],
    ] as const)
      assert.ok(Math.abs(tenthOfStudent(freedom) - t) < 0.005, `${freedom}: ${tenthOfStudent(freedom)}`);
  });
});
