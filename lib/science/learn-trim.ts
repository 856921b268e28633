/**
 * What a household trims off a fruit, share of its weight, learnt from its own weighings: the published share counts as one guess with a
 * coefficient of variation of 20 % (estimate, beside the refuse table), batches of one household differ by 15 % (estimate, pooled
 * with what is seen). Method: learn-factor.
 */
import { REFUSE_CV } from '#lib/reference/refuse.ts';
import { type Learnt, learntFigure } from './learn-factor.ts';

const BETWEEN_BATCHES = 0.15;

/** `published` and `seen` are shares above 0; RangeError otherwise. */
export function trimShare(published: number, seen: readonly number[]): Learnt {
  if (!(published > 0)) throw new RangeError(`a published trim is above 0, got ${published}`);
  return learntFigure(
    { middle: published, logSd: REFUSE_CV.value, batchLogSd: BETWEEN_BATCHES },
    seen.map((value) => ({ value, relSd: 0 })),
  );
}
