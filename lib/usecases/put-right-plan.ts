/** What putting an act right would do: what depends on it, why it cannot be, and what changes. Read for the page, and again inside the transaction. */
import { GRADE_LETTERS } from '#lib/ledger/acts/pick-fruit.ts';
import { isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { GRADES, type Grade, type HeldLot, type Lot } from '#lib/ledger/lot.ts';
import { amountIn, isLot, type Movement } from '#lib/ledger/movement.ts';
import { beyond, type PiecedLot, type Reweighed, takenBack, type WentOn, wentOn } from '#lib/ledger/put-right.ts';
import { correctionOf, loadActs, type StoredAct } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { type DatedMovement, loadLots, lotsOfIds, movementsOf } from '#lib/store/ledger-store.ts';
import { counted, kilograms } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { amountText } from './entry-words.ts';

/** An act with all it touched. */
export interface ActInHand {
  act: StoredAct;
  lots: Map<string, HeldLot>;
  movements: Map<string, DatedMovement[]>;
}

export async function actInHand(ctx: Context, db: Db | Tx, id: string): Promise<ActInHand | null> {
  const [act] = await loadActs(db, ctx.place.id, { ids: [id] });
  if (!act) return null;
  const ids = lotIdsOf(act.movements);
  const lots = new Map((await lotsOfIds(db, ctx.place.id, ids)).map((l) => [l.id, l]));
  const all = await movementsOf(db, ctx.place.id, ids);
  return { act, lots, movements: new Map(ids.map((lot) => [lot, all.filter((m) => touches(m, lot))])) };
}

const lotIdsOf = (movements: readonly Movement[]): string[] => [
  ...new Set(movements.flatMap((m) => [m.from, m.to]).flatMap((a) => (isLot(a) ? [a.lot] : []))),
];
const touches = (m: Movement, lot: string): boolean =>
  (isLot(m.from) && m.from.lot === lot) || (isLot(m.to) && m.to.lot === lot);

const PIECES = ['jars', 'cold-jars', 'frozen', 'dried'];
export const piecedOf = (hand: ActInHand): PiecedLot[] =>
  [...hand.lots.values()]
    .filter((l) => PIECES.includes(l.kind) && l.unit !== 'g')
    .map((lot) => ({ lot, movements: hand.movements.get(lot.id) ?? [] }));

/** Acts that only move things: their counter-movement is all that taking them back needs. */
const MOVES_ONLY = ['opening', 'harvest', 'receive', 'place-fruit', 'take', 'count', 'start-batch'];

/** Why an act is not taken back, with the numbers, or null. */
export async function againstTakingBack(ctx: Context, db: Db | Tx, hand: ActInHand): Promise<string | null> {
  const { act } = hand;
  const already = await correctionOf(db, ctx.place.id, act.id);
  if (already) return `It was put right already${already.note ? ` (${already.note})` : ''}.`;
  if (act.kind === 'correct') return 'A correction is not taken back. Enter the act again.';
  if (act.movements.length === 0)
    return 'It moved nothing. Enter what is so: the later entry stands, and this one stays in the log.';
  if (act.kind === 'fill') return againstUnfilling(hand);
  if (!MOVES_ONLY.includes(act.kind))
    return 'It says what was seen of the lot. Enter what is so now: the later entry stands, and this one stays in the log.';
  return (await againstUse(ctx, db, hand)) ?? pieceGone(ctx, hand);
}

function againstUnfilling(hand: ActInHand): string {
  const pieced = piecedOf(hand).map((p) => p.lot.id);
  const jars = hand.act.movements.reduce((n, m) => n + (isLot(m.to) && pieced.includes(m.to.lot) ? m.qty : 0), 0);
  return `${counted(jars, 'jar')} were filled and carry their numbers: they are not unmade. A wrong number is put right by counting the shelf.`;
}

/** What came in and has gone on since stands in the way. */
async function againstUse(ctx: Context, db: Db | Tx, hand: ActInHand): Promise<string | null> {
  const why: string[] = [];
  for (const lot of hand.lots.values()) {
    const change = hand.act.movements.reduce(
      (n, m) => n + (isLot(m.to) && m.to.lot === lot.id ? amountIn(lot.unit, m) : 0) - leaving(lot, m),
      0,
    );
    if (change <= lot.onHand) continue;
    const went = await wentWords(ctx, db, wentOn(lot.id, lot.unit, hand.movements.get(lot.id) ?? []), lot.unit);
    why.push(
      `${lot.label} ${lot.code}: ${amountText(lot.unit, change)} came in by it, ${amountText(lot.unit, lot.onHand)} is left (${went.join(', ')})`,
    );
  }
  return why.length > 0 ? `${why.join('; ')}. Put that right first.` : null;
}

const leaving = (lot: HeldLot, m: Movement): number =>
  isLot(m.from) && m.from.lot === lot.id ? amountIn(lot.unit, m) : 0;

function pieceGone(ctx: Context, hand: ActInHand): string | null {
  const act = { ...hand.act, id: 'asked', day: ctx.today };
  const entry = takenBack({ act: hand.act, movements: hand.act.movements }, act, piecedOf(hand));
  return isRefusal(entry) ? `${entry.refused}.` : null;
}

/** "25256-DAM-A 520 g", "compost 300 g". */
async function wentWords(ctx: Context, db: Db | Tx, went: readonly WentOn[], unit: string): Promise<string[]> {
  const lots = await lotsOfIds(db, ctx.place.id, lotsIn(went));
  return went.map((w) => `${isLot(w.to) ? codeOf(lots, w.to.lot) : w.to.sink} ${amountText(unit, w.qty)}`);
}
const lotsIn = (went: readonly WentOn[]): string[] => went.flatMap((w) => (isLot(w.to) ? [w.to.lot] : []));
const codeOf = (lots: readonly HeldLot[], id: string): string =>
  (lots.find((l) => l.id === id)?.code ?? id).replace(/\/pan$/, '');

/** What changes on hand when an act is taken back. */
export function changesOf({ act, lots }: ActInHand): string[] {
  return [...lots.values()].flatMap((lot) => {
    const change = act.movements.reduce(
      (n, m) => n + leaving(lot, m) - (isLot(m.to) && m.to.lot === lot.id ? amountIn(lot.unit, m) : 0),
      0,
    );
    if (change === 0) return [];
    return [
      `${lot.label}${lot.grade ? `, ${lot.grade}` : ''} (${lot.code}): ${amountText(lot.unit, lot.onHand)} becomes ${amountText(lot.unit, lot.onHand + change)}.`,
    ];
  });
}

export interface ReweighPlan {
  lots: Reweighed[];
  /** Grades the first entry did not have. */
  created: Lot[];
  /** What is said before and after. */
  lines: string[];
  /** Batches that exceed their fruit. */
  over: { batchId: string; lotCode: string; grams: number }[];
  flags: { lotId: string; flags: string[] }[];
}

/** A harvest entered again with these grams of each grade: what it does to its lots and to every batch that used them. */
export async function reweighPlan(
  ctx: Context,
  db: Db | Tx,
  hand: ActInHand,
  asked: Readonly<Record<Grade, number>>,
  createdId: (grade: Grade) => string,
): Promise<ReweighPlan | Refusal> {
  const { act } = hand;
  const first = [...hand.lots.values()].find((l) => l.kind === 'fruit');
  if (act.kind !== 'harvest' || !first) return { refused: 'only a harvest with fruit in it is weighed again' };
  const already = await correctionOf(db, ctx.place.id, act.id);
  if (already) return { refused: 'it was put right already: its newer entry is the one to change' };
  if (GRADES.every((g) => asked[g] === 0)) return { refused: 'nothing is left of it with these figures: take it back' };
  const ofHarvest = (
    await loadLots(db, ctx.place.id, { kinds: ['fruit'], emptied: true, madeFrom: first.madeOn })
  ).filter((l) => l.details.harvest === first.details.harvest);
  const moved = await movementsOf(
    db,
    ctx.place.id,
    ofHarvest.map((l) => l.id),
  );
  const plan: ReweighPlan = { lots: [], created: [], lines: [], over: [], flags: [] };
  for (const grade of GRADES) {
    const lot = ofHarvest.find((l) => l.grade === grade);
    if (lot)
      await reweighLot(ctx, db, plan, {
        act,
        lot,
        isG: asked[grade],
        movements: moved.filter((m) => touches(m, lot.id)),
      });
    else if (asked[grade] > 0) addGrade(plan, first, grade, asked[grade], createdId(grade));
  }
  if (plan.lots.every((l) => l.wasG === l.isG)) return { refused: 'these are the figures it has already' };
  return plan;
}

async function reweighLot(
  ctx: Context,
  db: Db | Tx,
  plan: ReweighPlan,
  { act, lot, isG, movements }: { act: StoredAct; lot: HeldLot; isG: number; movements: Movement[] },
): Promise<void> {
  const into = (sink: string, list: readonly Movement[]) =>
    list.reduce(
      (g, m) =>
        g +
        (!isLot(m.from) && m.from.sink === sink ? amountIn('g', m) : 0) -
        (!isLot(m.to) && m.to.sink === sink ? amountIn('g', m) : 0),
      0,
    );
  const wasG = into(
    'harvest',
    act.movements.filter((m) => isLot(m.to) && m.to.lot === lot.id),
  );
  const foundG = into('found', movements);
  plan.lots.push({ lot, wasG, isG, foundG });
  if (wasG === isG) return;
  const went = wentOn(lot.id, 'g', movements);
  const over = beyond(went, isG);
  const pans = await lotsOfIds(db, ctx.place.id, lotsIn(went));
  const batches = await loadBatches(db, ctx.place.id, { ids: pans.flatMap((p) => (p.batchId ? [p.batchId] : [])) });
  const batchOf = (w: WentOn) => {
    const pan = isLot(w.to) ? pans.find((p) => p.id === (w.to as { lot: string }).lot) : undefined;
    return batches.find((b) => pan?.kind === 'batch' && b.id === pan.batchId);
  };
  plan.lines.push(`${lot.label}, ${lot.grade} (${lot.code}): ${kilograms(wasG)} becomes ${kilograms(isG)}.`);
  for (const w of over) {
    const batch = batchOf(w);
    const who = batch ? `Batch ${batch.code}` : isLot(w.to) ? codeOf(pans, w.to.lot) : `What was ${w.to.sink}`;
    plan.lines.push(`${who} now exceeds its fruit by ${kilograms(w.qty)}; nothing was deleted.`);
    if (batch) plan.over.push({ batchId: batch.id, lotCode: lot.code, grams: w.qty });
  }
  const fits = went.filter((w) => !over.some((o) => o.to === w.to));
  if (fits.length > 0) plan.lines.push(`Still covered: ${(await wentWords(ctx, db, fits, 'g')).join(', ')}.`);
  const overG = over.reduce((g, w) => g + w.qty, 0);
  plan.flags.push({
    lotId: lot.id,
    flags: [
      ...lot.flags.filter((f) => !f.startsWith(PUT_RIGHT)),
      `${PUT_RIGHT} on ${ctx.today}: ${kilograms(wasG)} became ${kilograms(isG)}${overG > 0 ? `, ${kilograms(overG)} more was used than that` : ''}`,
    ],
  });
}
const PUT_RIGHT = 'put right';

function addGrade(plan: ReweighPlan, { onHand: _, ...like }: HeldLot, grade: Grade, isG: number, id: string): void {
  const code = `${String(like.details.harvest)}/${GRADE_LETTERS[grade]}`;
  plan.created.push({ ...like, id, code, grade, flags: [] });
  plan.lots.push({ lot: { id, onHand: 0 }, wasG: 0, isG, foundG: 0 });
  plan.lines.push(`${like.label}, ${grade} (${code}): 0.00 kg becomes ${kilograms(isG)}.`);
}
