/** Forgets what was learnt: batches lit before this act no longer count. The batches and their readings stay on record. */
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { FORGET } from './learn-records.ts';

export const forgetLearnt = (ctx: Context, { id }: { id: string }): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, id, ctx.enteredAt, async () => ({
    entry: { act: actOf(ctx, id, 'correct', { forget: FORGET }), lots: [], movements: [], changes: [] },
    tell: { said: 'Forgotten. Only batches lit from now on are learnt from; the records stay.' },
  }));
