/**
 * A process that was not kept as printed, found out after the jars came out: the verdict turns, and the age of the jars says
 * which ways are left (take-out). A sealed lid changes nothing of it.
 */

import type { Written } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import { jarLotsOf, nothingMoved, onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { PROCESS_HOLD, withHold } from './ph-hold.ts';
import { waysOf } from './take-out.ts';

export interface DeviationInput {
  id: string;
  code: string;
  /** In the person's words: "it left the boil". */
  what: string;
}

export const reportDeviation = (ctx: Context, input: DeviationInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooling', 'jarred'], async (tx, batch) => {
    const lots = await jarLotsOf(tx, ctx, batch);
    const lot = lots[0];
    if (!lot) return { refused: `${batch.code} has no jars that were processed for the shelf` };
    const act = actOf(ctx, input.id, 'process', { ...input });
    const ways = waysOf(ctx, batch, { hold: lot.hold, process: 'not as tested' });
    const left = lots.reduce((n, l) => n + l.onHand, 0);
    const said = `${batch.code} not as tested: ${input.what}. ${counted(left, 'jar')} on hold; left for them: ${ways.join(', ')}.`;
    return {
      entry: {
        ...nothingMoved(act),
        changes: lots.map((l) => ({ lotId: l.id, process: 'not as tested', hold: withHold(l.hold, PROCESS_HOLD) })),
        batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what: said.replace(/\.$/, '') }] }],
      },
      tell: { said },
    };
  });
