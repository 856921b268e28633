/** The entries behind a lot, a jar or a batch, and one of them with what depends on it. Reading never writes. */
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import { GRADES, type Grade, type HeldLot } from '#lib/ledger/lot.ts';
import { type Account, isLot } from '#lib/ledger/movement.ts';
import { piecesMoved } from '#lib/ledger/pieces.ts';
import { correctionsAmong, loadActs } from '#lib/store/act-store.ts';
import { lotsOfIds, movementsOf } from '#lib/store/ledger-store.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { entryWords } from './entry-words.ts';
import { localClock } from './local-clock.ts';
import { actInHand, againstTakingBack, changesOf, reweighPlan } from './put-right-plan.ts';

export interface EntryRow {
  id: string;
  when: string;
  what: string;
  by: string | null;
  /** Taken back, and why. */
  putRight: string | null;
  /** False for a counter-entry, which stands. */
  mayBeWrong: boolean;
}
export interface EntriesView {
  rows: EntryRow[];
  /** Older ones that are not listed. */
  earlier: number;
}

const LISTED = 30;

/** Acts that moved this lot (or one jar of it), and those of the pan it came from, newest first. */
export async function readEntries(
  ctx: Context,
  lot: Pick<HeldLot, 'id' | 'batchId'>,
  piece: number | null = null,
): Promise<EntriesView> {
  const own = await movementsOf(ctx.db, ctx.place.id, [lot.id]);
  const numbers = piece === null ? null : piecesMoved(lot.id, own);
  const ofPan = lot.batchId ? await movementsOf(ctx.db, ctx.place.id, [panLotId(lot.batchId)]) : [];
  const ids = [...own.filter((_, i) => numbers === null || numbers[i]?.includes(piece as number)), ...ofPan].map(
    (m) => m.actId,
  );
  const acts = await loadActs(ctx.db, ctx.place.id, { ids: [...new Set(ids)] });
  const newest = acts.sort((a, b) => b.at.localeCompare(a.at)).slice(0, LISTED);
  const lots = await lotsOf(
    ctx,
    newest.flatMap((a) => a.movements).flatMap((m) => [m.from, m.to]),
  );
  const back = await correctionsAmong(
    ctx.db,
    ctx.place.id,
    newest.map((a) => a.id),
  );
  return {
    rows: newest.map((a) => ({
      id: a.id,
      when: whenOf(ctx, a.at),
      what: entryWords(a, lots),
      by: a.person,
      putRight: back.get(a.id) ?? null,
      mayBeWrong: a.kind !== 'correct' && !back.has(a.id),
    })),
    earlier: acts.length - newest.length,
  };
}

const lotsOf = async (ctx: Context, accounts: readonly Account[]) => {
  const ids = [...new Set(accounts.flatMap((a) => (isLot(a) ? [a.lot] : [])))];
  return new Map((await lotsOfIds(ctx.db, ctx.place.id, ids)).map((l) => [l.id, l]));
};

const whenOf = (ctx: Context, at: string): string => {
  const { day, time } = localClock(at, ctx.place.timeZone);
  return `${longDate(day as HeldLot['madeOn'])}, ${time}`;
};

export interface PutRightView {
  id: string;
  what: string;
  when: string;
  /** Why it is not taken back, with the numbers; null when it may be. */
  against: string | null;
  /** What depends on it and changes with it. */
  changes: string[];
  /** A harvest's grades, grams; null where there is nothing to weigh again. */
  grades: Record<Grade, number> | null;
  /** With other figures: what changes, or why not. Null until they are asked for. */
  asked: { lines: string[]; refused: string | null } | null;
  /** Page of the lot it is about. */
  lot: string | null;
}

export async function readPutRight(
  ctx: Context,
  id: string,
  asked: Readonly<Record<Grade, number>> | null,
): Promise<PutRightView | null> {
  const hand = await actInHand(ctx, ctx.db, id);
  if (!hand) return null;
  const against = await againstTakingBack(ctx, ctx.db, hand);
  const fruit = [...hand.lots.values()].filter((l) => l.kind === 'fruit');
  const plan = asked ? await reweighPlan(ctx, ctx.db, hand, asked, (g) => `asked.${g}`) : null;
  const done = (await correctionsAmong(ctx.db, ctx.place.id, [id])).has(id);
  return {
    id,
    what: entryWords(hand.act, hand.lots),
    when: whenOf(ctx, hand.act.at),
    against,
    changes: against ? [] : changesOf(hand),
    grades: hand.act.kind === 'harvest' && fruit.length > 0 && !done ? gradesOf(hand.act.movements, fruit) : null,
    asked: plan && (isRefusal(plan) ? { lines: [], refused: plan.refused } : { lines: plan.lines, refused: null }),
    lot: (fruit[0] ?? [...hand.lots.values()].find((l) => l.kind !== 'empties'))?.code ?? null,
  };
}

function gradesOf(
  movements: NonNullable<Awaited<ReturnType<typeof actInHand>>>['act']['movements'],
  fruit: readonly HeldLot[],
): Record<Grade, number> {
  const of = (grade: Grade) =>
    movements.reduce(
      (g, m) =>
        g +
        (isLot(m.to) && fruit.find((l) => l.id === (m.to as { lot: string }).lot)?.grade === grade
          ? (m.grams ?? m.qty)
          : 0),
      0,
    );
  return Object.fromEntries(GRADES.map((g) => [g, of(g)])) as Record<Grade, number>;
}
