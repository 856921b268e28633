import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { learnPrior, summariseSeason } from '#lib/forecast/learn-prior.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

const near = (got: number, want: number, relative = 1e-6): void =>
  assert.ok(Math.abs(got - want) <= relative * Math.abs(want), `${got} is not ${want}`);
const { table, cases } = vectors.learnPrior;

describe('prior of a crop', () => {
  test.each(cases)('$past.length past seasons give the reference prior', ({ past, expect }) => {
    const prior = learnPrior(table, past);
    near(prior.total[0]?.mean as number, expect.mean);
    near(prior.total[0]?.cv as number, expect.cv);
    near(prior.mid.mean, expect.mid);
    near(prior.mid.sd, expect.midSd);
    near(prior.width.median, expect.width);
    near(prior.width.sdLog, expect.widthSdLog);
  });

  test('a failed season moves the chance of failure and not the site', () => {
    const past = cases[1]?.past as (typeof cases)[1]['past'];
    const prior = learnPrior(table, past);
    near(prior.total[1]?.weight as number, (8 * 0.1 + 1) / 11);
    near(prior.total[0]?.mean as number, learnPrior(table, past.slice(0, 2)).total[0]?.mean as number);
  });

  test('more seasons narrow the prior', () => {
    const season = { total: 40, expected: 40, t10: 222, t50: 230, t90: 238 };
    const cvs = [0, 1, 3, 8, 20].map((n) => learnPrior(table, new Array(n).fill(season)).total[0]?.cv as number);
    for (let i = 1; i < cvs.length; i++) assert.ok((cvs[i] as number) < (cvs[i - 1] as number));
    assert.ok((cvs[4] as number) > 0.5, 'the spread between years remains');
  });

  test('a season is summed up by reading the cumulated picks between records', () => {
    // 10 kg by day 203 spread over 3 days, then 20 kg by 207, then 10 kg by 213: 40 kg.
    const s = summariseSeason(
      [
        { t: 203, kg: 10 },
        { t: 207, kg: 20 },
        { t: 213, kg: 10 },
      ],
      50,
    );
    assert.ok(s);
    assert.equal(s.total, 40);
    near(s.t10, 200 + (4 / 10) * 3);
    near(s.t50, 203 + (10 / 20) * 4);
    near(s.t90, 207 + (6 / 10) * 6);
    assert.equal(summariseSeason([{ t: 203, kg: 0 }], 50), null);
  });
});
