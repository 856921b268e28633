/**
 * The morning after: jars that gave are taken out one by one and go the way their age allows; the rest are answered as
 * sealed and shelved. Nobody looked within 24 hours: what is closed then is unverified, for the household, with a note.
 */
import { loadSuspect, SEAL_CLOCK } from '#lib/batch/verdicts.ts';
import { jarLotId } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { pieceStates } from '#lib/ledger/pieces.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf, type Written } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import { jarLotsOf, onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { sheetOf } from './frozen-sheet.ts';
import { heldByHighPh } from './ph-hold.ts';

export const UNVERIFIED = 'seal checked after 24 h: look at each jar when it is opened';

export interface SealInput {
  id: string;
  code: string;
  address: string;
}

/** Hours since the jars came out of the canner, or were filled where they never went in. */
export function hoursSinceOut(ctx: Context, batch: Pick<BatchRecord, 'outAt' | 'filledAt'>): number {
  const at = batch.outAt ?? batch.filledAt;
  return at ? (ctx.now.getTime() - Date.parse(at)) / 3_600_000 : Number.NaN;
}

/** Twelve to twenty-four hours after: the jars that are left are sealed and go to their shelf. */
export const checkSeals = (ctx: Context, input: SealInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooling'], async (tx, batch) => {
    const hours = hoursSinceOut(ctx, batch);
    if (hours < SEAL_CLOCK.dueH)
      return {
        refused: `the jars came out ${hours.toFixed(1)} h ago; leave them ${SEAL_CLOCK.dueH} h before the seals are tried`,
      };
    const lot = await mainLot(tx, ctx, batch);
    if (!lot || lot.onHand === 0) return { refused: `${batch.code} has no jars to check` };
    if (heldByHighPh(lot.hold) || lot.process === 'not as tested')
      return { refused: `${batch.code} stays off the shelf: ${lot.hold ?? 'its process was not as tested'}` };
    const act = actOf(ctx, input.id, 'seal', { ...input });
    const late = hours > SEAL_CLOCK.closedH;
    const said = `${counted(lot.onHand, 'jar')} ${late ? 'unverified (checked after 24 h), for the household' : 'sealed'}, to ${input.address}.`;
    return {
      entry: {
        act,
        lots: [],
        movements: [],
        changes: [
          {
            lotId: lot.id,
            seal: late ? 'unverified' : 'sealed',
            address: input.address,
            ...(late ? { household: true, flags: [...lot.flags, UNVERIFIED] } : {}),
          },
        ],
        batchChanges: [{ batchId: batch.id, state: 'jarred', addLog: [{ at: act.at, what: said }] }],
      },
      tell: { said },
    };
  });

/** The numbered jars of a batch, also when none is left. */
export const mainLot = async (tx: Db | Tx, ctx: Context, batch: BatchRecord): Promise<HeldLot | null> =>
  (await loadLots(tx, ctx.place.id, { ids: [jarLotId(batch.id, sheetOf(batch).jarKind ?? '')], emptied: true })).find(
    (l) => l.kind === 'jars',
  ) ?? null;

/** The batches that came out of the canner together, and how many of their jars gave: `more` is counted to them. */
export async function loadLook(
  tx: Tx,
  ctx: Context,
  batch: BatchRecord,
  more: number,
): Promise<{ lots: HeldLot[]; open: number; made: number; suspect: boolean }> {
  const others = await loadBatches(tx, ctx.place.id, { states: ['cooling', 'jarred'], since: batch.day });
  const load = others.filter((b) => b.outAt !== null && b.outAt === batch.outAt);
  const lots = (await Promise.all(load.map((b) => jarLotsOf(tx, ctx, b)))).flat();
  const states = await Promise.all(
    lots.map(async (l) => [...pieceStates(l.id, await movementsOf(tx, ctx.place.id, [l.id])).values()]),
  );
  const made = states.flat().length;
  const open = more + states.flat().filter((s) => s.at === 'lot').length;
  return { lots, open, made, suspect: loadSuspect(open, made) };
}
