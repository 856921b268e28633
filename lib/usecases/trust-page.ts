/** Everything on the page "How far to trust the numbers". */
import type { Context } from './context.ts';
import { type LearntView, readLearnt } from './learn-figures.ts';
import { type TrustView, trustView } from './trust-limits.ts';

export const readTrust = async (ctx: Context): Promise<TrustView & { learnt: LearntView }> => ({
  ...trustView(),
  learnt: await readLearnt(ctx),
});
