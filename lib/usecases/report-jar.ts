/**
 * A jar looks wrong, months later: it is thrown away whole, and a second one puts all that is left of its batch on hold. A jar
 * that left the house is reported all the same; nothing moves then.
 */
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot, LotKind } from '#lib/ledger/lot.ts';
import { pieceCode, pieceStates } from '#lib/ledger/pieces.ts';
import { HOLD_FROM_JARS, SPOILAGE_SIGNS, type SpoilageSignId } from '#lib/reference/spoilage-signs.ts';
import { loadActs } from '#lib/store/act-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { withHold } from './ph-hold.ts';
import { lotOf } from './read-recall.ts';
import { splitCode } from './read-trace.ts';

export interface ReportInput {
  id: string;
  /** Of one jar: "25193-RAS-A/04". */
  code: string;
  sign: SpoilageSignId;
}

export interface JarReport {
  jar: string;
  sign: SpoilageSignId;
  day: PlainDate;
}

/** Why what is left of a batch is held. */
const SPOILED_HOLD = `${HOLD_FROM_JARS.jars} or more jars of this batch spoiled`;
/** What was filled from the pan; a set-aside of the batch is another thing. */
const KEPT: readonly LotKind[] = ['jars', 'cold-jars', 'frozen', 'dried'];
const signName = (id: SpoilageSignId): string => SPOILAGE_SIGNS.find((s) => s.id === id)?.name ?? id;

export const reportJar = (ctx: Context, input: ReportInput): Promise<Written<Told>> => {
  const act = actOf(ctx, input.id, 'suspect', { code: input.code, sign: input.sign }, { note: signName(input.sign) });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const found = await jarOf(ctx, tx, input.code);
    if ('refused' in found) return found;
    const { lot, piece, here } = found;
    const jar = pieceCode(lot.code, piece);
    const lots = await lotsOfBatch(ctx, tx, lot);
    const before = await reportsOf(ctx, tx, lots);
    const known = before.find((r) => r.jar === jar);
    if (known) return { refused: `${jar} was reported on ${known.day} already` };
    const hold = before.length + 1 >= HOLD_FROM_JARS.jars;
    const gone = here
      ? takePieces({ act, to: 'spoiled', pieces: [{ lot: here, piece }], returns: null }).movements
      : [];
    const held = hold ? lots.filter((l) => KEPT.includes(l.kind)) : [];
    return {
      entry: {
        act,
        lots: [],
        movements: gone,
        changes: held.map((l) => ({ lotId: l.id, hold: withHold(l.hold, SPOILED_HOLD) })),
        batchChanges: lot.batchId
          ? [{ batchId: lot.batchId, addLog: [{ at: act.at, what: `${jar} spoiled: ${signName(input.sign)}` }] }]
          : [],
      },
      tell: { said: saidOf({ jar, here: here !== null, hold, reports: before.length + 1 }) },
    };
  });
};

function saidOf({ jar, here, hold, reports }: { jar: string; here: boolean; hold: boolean; reports: number }): string {
  const first = here ? `${jar} is written down as thrown away` : `${jar} is written down; it had left the house`;
  return hold ? `${first}. That is ${counted(reports, 'jar')} of the batch: all of it is on hold.` : `${first}.`;
}

/** A numbered jar by its code, and the lot it stands in now; null where it has gone. */
async function jarOf(
  ctx: Context,
  tx: Tx,
  code: string,
): Promise<{ lot: HeldLot; piece: number; here: HeldLot | null } | Refusal> {
  const [, piece] = splitCode(code.trim().toUpperCase());
  const lot = await lotOf(ctx, tx, code);
  if (!lot) return { refused: `nothing bears the code ${code}` };
  if (piece === null) return { refused: `${lot.code} is a lot; say which of its jars` };
  if (lot.unit !== 'jar' && lot.unit !== 'pack') return { refused: `${lot.code} is not kept by the jar` };
  let at = lot;
  for (const seen = new Set<string>(); !seen.has(at.id); ) {
    seen.add(at.id);
    const state = pieceStates(at.id, await movementsOf(tx, ctx.place.id, [at.id])).get(piece);
    if (!state) return { refused: `there is no jar ${piece} in ${at.code}` };
    if (state.at === 'here') return { lot, piece, here: at };
    if (state.at === 'sink') return { lot, piece, here: null };
    at = (await loadLots(tx, ctx.place.id, { ids: [state.lot], emptied: true }))[0] ?? at;
  }
  return { lot, piece, here: null };
}

/** Every lot of the batch a lot came from, also those that are used up; the lot alone where no batch is on record. */
export const lotsOfBatch = async (ctx: Context, db: Db | Tx, lot: HeldLot): Promise<HeldLot[]> =>
  lot.batchId ? loadLots(db, ctx.place.id, { batchId: lot.batchId, emptied: true }) : [lot];

/** Jars of these lots that were reported, the first report first. */
export async function reportsOf(ctx: Context, db: Db | Tx, lots: readonly HeldLot[]): Promise<JarReport[]> {
  const codes = new Set(lots.map((l) => l.code));
  return (await allReports(ctx, db)).filter((r) => codes.has(splitCode(r.jar)[0]));
}

/** Every jar that was reported here, the first report first. */
export async function allReports(ctx: Context, db: Db | Tx = ctx.db): Promise<JarReport[]> {
  const acts = await loadActs(db, ctx.place.id, { kinds: ['suspect'] });
  return acts.reverse().map((a) => {
    const [lotCode, piece] = splitCode(String(a.payload.code).trim().toUpperCase());
    return { jar: pieceCode(lotCode, piece ?? 0), sign: a.payload.sign as SpoilageSignId, day: a.day };
  });
}
