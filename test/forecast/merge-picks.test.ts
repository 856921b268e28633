import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { HarvestPosterior, type PickRecord } from '#lib/forecast/harvest-posterior.ts';
import { learnPrior } from '#lib/forecast/learn-prior.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { mergePicks } from '#lib/forecast/merge-picks.ts';
import { key, Sfc32 } from '#lib/forecast/random.ts';
import { drawOrchard, KINDS } from './foreign-orchard.ts';

const kg = (records: readonly PickRecord[]) => records.reduce((sum, r) => sum + r.kg, 0);

describe('pickings of neighbouring days', () => {
  const daily = [4, 5, 6, 7, 8, 11, 12].map((t) => ({ t, kg: 1 }));
  test('are added on their last day, three days to a picking, and no kilogram is lost', () => {
    assert.deepEqual(mergePicks(daily), [
      { t: 6, kg: 3 },
      { t: 8, kg: 2 },
      { t: 12, kg: 2 },
    ]);
  });
  test('a look that found nothing stays by itself', () => {
    const looks = [
      { t: 1, kg: 0 },
      { t: 2, kg: 0 },
      { t: 3, kg: 2 },
    ];
    assert.deepEqual(mergePicks(looks), looks);
  });
});

/** 160 seasons of the orchard that is not the model, picked every day, as of three tenths picked. */
describe('in an orchard picked every day', () => {
  const held = { single: 0, merged: 0 };
  const miss = { single: 0, merged: 0 };
  let n = 0;
  for (let i = 0; i < 160; i++) {
    const kind = KINDS[i % KINDS.length] as (typeof KINDS)[number];
    const o = drawOrchard(kind, new Sfc32(key(99, i)), true);
    const all = kg(o.picked);
    const upTo = o.records.findIndex((_, k) => kg(o.records.slice(0, k + 1)) >= 0.3 * all);
    const seen = o.records.slice(0, upTo + 1);
    const t = seen.at(-1)?.t;
    if (t === undefined) continue;
    n++;
    const came = kg(o.picked.filter((p) => p.t > t));
    const prior = learnPrior(
      kind,
      o.past.map((p) => p.season),
    );
    for (const way of ['single', 'merged'] as const) {
      const post = new HarvestPosterior(prior, { nMid: 31, nWidth: 7 });
      for (const r of way === 'merged' ? mergePicks(seen) : seen) post.update(r);
      const sorted = post
        .sample(400, [t, t + 400], new Sfc32(key(5, i)))
        .remaining.slice()
        .sort();
      if (came >= quantileSorted(sorted, 0.1) && came <= quantileSorted(sorted, 0.9)) held[way]++;
      miss[way] += (quantileSorted(sorted, 0.5) - came) / o.mean;
    }
  }
  test('bands meant for 8 in 10 hold about that often, and oftener than day by day', () => {
    const error = 3 * Math.sqrt(0.16 / n);
    assert.ok(Math.abs(held.merged / n - 0.8) < error, `held ${held.merged} of ${n}`);
    assert.ok(held.merged > held.single, `${held.merged} against ${held.single}`);
  });
  test('the middle is less far below what came', () => assert.ok(Math.abs(miss.merged) < Math.abs(miss.single)));
});
