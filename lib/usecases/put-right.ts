/** An act is put right: taken back by a counter-entry, or a harvest entered again with other figures. Nothing is deleted. */
import type { BatchChange } from '#lib/ledger/batch-record.ts';
import { childId, type Entry, isRefusal } from '#lib/ledger/entry.ts';
import type { Grade } from '#lib/ledger/lot.ts';
import { reweigh, takenBack } from '#lib/ledger/put-right.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { kilograms } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { type ActInHand, actInHand, againstTakingBack, changesOf, piecedOf, reweighPlan } from './put-right-plan.ts';

export interface TakeBackInput {
  id: string;
  /** The act that is wrong. */
  act: string;
  reason: string;
}

export async function takeBack(ctx: Context, input: TakeBackInput): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'correct', { ...input }, { note: input.reason });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const hand = await actInHand(ctx, tx, input.act);
    if (!hand) return { refused: 'that entry is not on record here' };
    const against = await againstTakingBack(ctx, tx, hand);
    if (against) return { refused: against };
    const entry = takenBack({ act: hand.act, movements: hand.act.movements }, act, piecedOf(hand));
    if (isRefusal(entry)) return entry;
    const batchChanges = await unlit(ctx, tx, hand, entry);
    return { entry: { ...entry, batchChanges }, tell: { said: ['Taken back.', ...changesOf(hand)].join(' ') } };
  });
}

/** Batches that were started by the act are off the stove. */
async function unlit(
  ctx: Context,
  tx: Parameters<typeof actInHand>[1],
  hand: ActInHand,
  entry: Entry,
): Promise<BatchChange[]> {
  const ids = [...hand.lots.values()].flatMap((l) => (l.kind === 'batch' && l.batchId ? [l.batchId] : []));
  if (hand.act.kind !== 'start-batch' || ids.length === 0) return [];
  const batches = await loadBatches(tx, ctx.place.id, { ids });
  return batches.map((b) => ({
    batchId: b.id,
    state: 'taken back' as const,
    addLog: [{ at: entry.act.at, what: `taken back: ${entry.act.note}` }],
  }));
}

export interface ReweighInput extends TakeBackInput {
  grades: Readonly<Record<Grade, number>>;
}

/** The harvest is entered again and its first entry taken back, in one transaction; what exceeds its fruit is said and logged. */
export async function weighAgain(ctx: Context, input: ReweighInput): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'correct', { ...input }, { note: input.reason });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const hand = await actInHand(ctx, tx, input.act);
    if (!hand) return { refused: 'that entry is not on record here' };
    const againId = childId(input.id, 'again');
    const plan = await reweighPlan(ctx, tx, hand, input.grades, (g) => childId(againId, g));
    if (isRefusal(plan)) return plan;
    const { movements: _, ...first } = hand.act;
    const again = { ...first, id: againId, payload: { ...first.payload, grades: input.grades, putRight: first.id } };
    const entries = reweigh({ act: first, movements: hand.act.movements }, { again, back: act }, plan.lots);
    if (isRefusal(entries)) return entries;
    const batchChanges = plan.over.map((o) => ({
      batchId: o.batchId,
      addLog: [
        {
          at: act.at,
          what: `harvest ${o.lotCode} put right (${input.reason}): this batch exceeds its fruit by ${kilograms(o.grams)}`,
        },
      ],
    }));
    return {
      first: { ...entries.again, lots: plan.created },
      entry: { ...entries.back, changes: plan.flags, batchChanges },
      tell: { said: ['Put right.', ...plan.lines].join(' ') },
    };
  });
}
