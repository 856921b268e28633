/**
 * Is the forecast worth having? Continuous ranked probability score (Gneiting and Raftery 2007, JASA 102:359-378) of kilograms
 * still to be picked, in an invented orchard that is not the model, against what a person would do with a pencil: last year's
 * rest, the share picked by this day last year, and the rate so far carried on. A bare number's score is its absolute error.
 */
import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { HarvestPosterior, type PickRecord } from '#lib/forecast/harvest-posterior.ts';
import { learnPrior } from '#lib/forecast/learn-prior.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { key, Sfc32 } from '#lib/forecast/random.ts';
import { drawOrchard, KINDS, type Orchard } from './foreign-orchard.ts';

const ORCHARDS = 160;
const FUTURES = 400;
const LOOKS = [2, 3, 5, 8];
const BANDS = [0.5, 0.8, 0.95];

const sumOf = (records: readonly PickRecord[], fits: (r: PickRecord) => boolean) =>
  records.reduce((kg, r) => kg + (fits(r) ? r.kg : 0), 0);

/** Fair estimator from samples: mean |x - y| - sum |x - x'| / (2 m (m - 1)). */
function crps(samples: Float64Array, came: number): number {
  const sorted = samples.slice().sort();
  const m = sorted.length;
  let [toTruth, spread] = [0, 0];
  sorted.forEach((x, i) => {
    toTruth += Math.abs(x - came);
    spread += (2 * i - m + 1) * x;
  });
  return toTruth / m - spread / (m * (m - 1));
}

/** What is still to come by three naive ways. */
function naive(o: Orchard, t: number) {
  const picked = sumOf(o.records, (r) => r.t <= t);
  const lastYear = o.past.at(-1)?.records ?? [];
  const before = sumOf(lastYear, (r) => r.t <= t);
  const all = sumOf(lastYear, () => true);
  const first = o.records[0] as PickRecord;
  const usual = o.past.reduce((d, p) => d + (p.season.t90 - p.season.t10) / 0.8, 0) / Math.max(1, o.past.length);
  const days = Math.max(1, t - first.t + 3);
  return {
    rest: all - before,
    share: before > 0 ? (picked * all) / before - picked : all,
    rate: (picked / days) * Math.max(0, usual - days),
  };
}

interface Stage {
  n: number;
  held: number[];
  model: number;
  rest: number;
  share: number;
  rate: number;
}

function score(): Stage[] {
  const stages = LOOKS.map((): Stage => ({ n: 0, held: BANDS.map(() => 0), model: 0, rest: 0, share: 0, rate: 0 }));
  for (let i = 0; i < ORCHARDS; i++) {
    const kind = KINDS[i % KINDS.length] as (typeof KINDS)[number];
    const rng = new Sfc32(key(31, i));
    const o = drawOrchard(kind, rng);
    const post = new HarvestPosterior(
      learnPrior(
        kind,
        o.past.map((p) => p.season),
      ),
      { nMid: 31, nWidth: 7 },
    );
    o.records.forEach((r, k) => {
      post.update(r);
      const stage = stages[LOOKS.indexOf(k + 1)];
      if (!stage) return;
      const { remaining } = post.sample(FUTURES, [r.t, r.t + 400], rng);
      const came = sumOf(o.picked, (p) => p.t > r.t);
      const sorted = remaining.slice().sort();
      BANDS.forEach((band, b) => {
        if (came >= quantileSorted(sorted, (1 - band) / 2) && came <= quantileSorted(sorted, (1 + band) / 2))
          (stage.held as number[])[b] = (stage.held[b] as number) + 1;
      });
      const by = naive(o, r.t);
      stage.n++;
      stage.model += crps(remaining, came) / o.mean;
      stage.rest += Math.abs(by.rest - came) / o.mean;
      stage.share += Math.abs(by.share - came) / o.mean;
      stage.rate += Math.abs(by.rate - came) / o.mean;
    });
  }
  return stages;
}

describe('in an orchard that is not the model, three seasons on record', () => {
  const stages = score();
  test.each(LOOKS.map((looks, i) => ({ looks, i })))(
    'after $looks records it scores better than each naive way',
    ({ i }) => {
      const s = stages[i] as Stage;
      assert.ok(s.n > ORCHARDS / 2, `${s.n} seasons`);
      for (const way of ['rest', 'share', 'rate'] as const)
        assert.ok(s.model < 0.9 * s[way], `${way}: ${(s[way] / s.n).toFixed(3)}, model ${(s.model / s.n).toFixed(3)}`);
    },
  );
  // Wider than binomial error alone: the orchard is not the model, and the bands are not meant to be exact there.
  test.each(LOOKS.map((looks, i) => ({ looks, i })))(
    'after $looks records 50, 80 and 95 % bands hold about as often as they say',
    ({ i }) => {
      const s = stages[i] as Stage;
      BANDS.forEach((band, b) => {
        const share = (s.held[b] as number) / s.n;
        const error = 3 * Math.sqrt((band * (1 - band)) / s.n) + 0.06;
        assert.ok(Math.abs(share - band) < error, `${band}: held ${share.toFixed(2)} of ${s.n}`);
      });
    },
  );
  test('the score of a certain and right forecast is 0, of a certain and wrong one its error', () => {
    assert.equal(crps(new Float64Array([4, 4, 4]), 4), 0);
    assert.equal(crps(new Float64Array([4, 4, 4]), 6), 2);
  });
});
