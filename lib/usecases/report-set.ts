/**
 * How the jars set, reported when they are cold: untouched for 12 h, judged at 48 h (extension sheets on remaking soft jam; some plum jams
 * take two weeks). A jam that has set is taken earlier; one that has not is asked for again at 48 h. It teaches the strength of home powder.
 */
import { JAR_SET } from '#lib/ledger/batch-record.ts';
import { childId } from '#lib/ledger/entry.ts';
import type { Written } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import { onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';

export const SET_HOURS = { untouched: 12, judged: 48 } as const;

export interface SetInput {
  id: string;
  code: string;
  /** 0 runs, 1 soft, 2 set. */
  set: 0 | 1 | 2;
}
export const SET_WORDS = ['runs', 'soft', 'set'] as const;

export const reportSet = (ctx: Context, input: SetInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['filled', 'cooling', 'jarred'], async (_tx, batch) => {
    if (!batch.filledAt) return { refused: `when ${batch.code} was filled is not on record` };
    const hours = (ctx.now.getTime() - Date.parse(batch.filledAt)) / 3_600_000;
    if (hours < SET_HOURS.untouched)
      return { refused: `filled ${hours.toFixed(1)} h ago: leave the jars untouched for ${SET_HOURS.untouched} h` };
    if (input.set < 2 && hours < SET_HOURS.judged)
      return {
        refused: `filled ${hours.toFixed(0)} h ago: it may yet set. Judge it at ${SET_HOURS.judged} h; some plum jams take two weeks`,
      };
    const act = actOf(ctx, input.id, 'note', { ...input, what: 'set' });
    const what = `set of the jars: ${SET_WORDS[input.set]}`;
    return {
      entry: {
        act,
        lots: [],
        movements: [],
        changes: [],
        readings: [
          {
            id: childId(act.id, 'set'),
            batchId: batch.id,
            kitchenId: null,
            kind: 'set-test',
            day: act.day,
            at: act.at,
            value: input.set * 100,
            unit: 'set',
            instrument: JAR_SET,
            note: null,
          },
        ],
        batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
      },
      tell: { said: `Noted: ${what}.` },
    };
  });
