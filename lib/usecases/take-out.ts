/**
 * Jars that may not stand on the shelf (the lid gave, the process was not as tested, the pH is too high) go to the cold, back
 * to the canner, or out, as their age allows. Their numbers stay with them.
 */
import { type WayOut, type WhyOut, waysOut } from '#lib/batch/verdicts.ts';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { jarLotId } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, newLot } from '#lib/ledger/lot.ts';
import { type Movement, movePieces } from '#lib/ledger/movement.ts';
import { pieceCode } from '#lib/ledger/pieces.ts';
import { holdTime } from '#lib/reference/hold-times.ts';
import { batchOfCode } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, piecesOf, type Written } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, longDate, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import { onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { panBatchId, sheetOf } from './frozen-sheet.ts';
import { heldByHighPh, PROCESS_HOLD, withoutHold } from './ph-hold.ts';
import { hoursSinceOut, loadLook, mainLot } from './seal-check.ts';

export const LOOK_AT_LOAD = 'more of its load gave than should: look at lids, headspace and rims';

/** Why the jars of this lot may not stay: the weightiest reason first; a lid that gave is the plain case. */
export const whyOut = (lot: Pick<HeldLot, 'hold' | 'process'>): WhyOut =>
  heldByHighPh(lot.hold) ? 'acid' : lot.process === 'not as tested' ? 'process' : 'unsealed';

export const waysOf = (ctx: Context, batch: BatchRecord, lot: Pick<HeldLot, 'hold' | 'process'>): WayOut[] =>
  waysOut(whyOut(lot), hoursSinceOut(ctx, batch), typeof sheetOf(batch).processMin === 'number');

/** The day such a jar is to be used by; in the fridge the day it goes in is the first of its seven. */
export function coldUntil(today: PlainDate, way: 'fridge' | 'freezer'): PlainDate | Refusal {
  const keeps = holdTime('unsealed jar', way);
  if (!keeps.ok) return { refused: keeps.reason };
  return addDays(today, way === 'fridge' ? keeps.row.days - 1 : keeps.row.days);
}

export interface OutInput {
  id: string;
  code: string;
  /** Numbers of the jars. */
  pieces: number[];
  way: WayOut;
}

export const takeOut = (ctx: Context, input: OutInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['filled', 'cooling', 'jarred'], async (tx, batch) => {
    const lot = await mainLot(tx, ctx, batch);
    if (!lot) return { refused: `${batch.code} has no jars that are for the shelf` };
    const why = whyOut(lot);
    if (batch.state === 'filled' && why === 'unsealed') return { refused: `${batch.code} was not in the canner yet` };
    const here = (await piecesOf(tx, ctx.place.id, [lot.id])).get(lot.id) ?? [];
    const pieces = [...new Set(input.pieces)].sort((a, b) => a - b);
    const missing = pieces.find((n) => !here.includes(n));
    if (missing !== undefined)
      return { refused: `jar ${missing} is not one of those left of ${batch.code}: ${here.join(', ') || 'none'}` };
    const ways = waysOf(ctx, batch, lot);
    if (input.way !== 'discard' && !ways.includes(input.way))
      return {
        refused: `${hoursSinceOut(ctx, batch).toFixed(1)} h after the canner it is too late for: ${input.way}. What is left: ${ways.join(', ')}`,
      };
    const act = actOf(ctx, input.id, 'seal', { ...input });
    const moved = await movedOut(ctx, tx, { act, batch, lot, pieces, way: input.way });
    if (isRefusal(moved)) return moved;
    const load = why === 'unsealed' ? await loadLook(tx, ctx, batch, pieces.length) : null;
    const look = load?.suspect
      ? ` ${load.open} of the ${load.made} jars of this load gave: look at lids, headspace and rims.`
      : '';
    const said = `${moved.said}.${look}`;
    const none = here.length === pieces.length;
    return {
      entry: {
        act,
        lots: moved.lots,
        movements: moved.movements,
        changes: load?.suspect
          ? load.lots
              .filter((l) => !l.flags.includes(LOOK_AT_LOAD))
              .map((l) => ({ lotId: l.id, flags: [...l.flags, LOOK_AT_LOAD] }))
          : [],
        batches: moved.batches,
        batchChanges: [
          { batchId: batch.id, addLog: [{ at: act.at, what: said }], ...(none ? { state: 'jarred' as const } : {}) },
        ],
      },
      tell: { said },
    };
  });

interface Moving {
  act: Act;
  batch: BatchRecord;
  lot: HeldLot;
  pieces: number[];
  way: WayOut;
}
type Moved = Required<Pick<Entry, 'lots' | 'movements' | 'batches'>> & { said: string };

async function movedOut(ctx: Context, tx: Tx, m: Moving): Promise<Moved | Refusal> {
  if (m.way === 'discard')
    return { lots: [], batches: [], movements: moves(m, { sink: 'spoiled' }), said: `${names(m)} out, whole` };
  return m.way === 'process again' ? toTheCanner(ctx, tx, m) : toTheCold(ctx, tx, m, m.way);
}

const names = ({ lot, pieces }: Moving): string => pieces.map((n) => pieceCode(lot.code, n)).join(', ');

const moves = ({ lot, pieces }: Moving, to: Movement['to']): Movement[] => {
  const netG = typeof lot.details.netG === 'number' ? lot.details.netG : null;
  return pieces.map((piece) => ({ from: { lot: lot.id }, to, qty: 1, grams: netG, piece }));
};

const COLD = {
  fridge: { code: 'open', kind: 'cold-jars', until: 'use by', date: shortDate },
  freezer: { code: 'frozen', kind: 'frozen', until: 'best before', date: longDate },
} as const;

/** A cold lot of their own, one for the fridge and one for the freezer. */
async function toTheCold(ctx: Context, tx: Tx, m: Moving, way: 'fridge' | 'freezer'): Promise<Moved | Refusal> {
  const { batch, lot, act } = m;
  const until = coldUntil(ctx.today, way);
  if (isRefusal(until)) return until;
  const code = `${batch.code}/${COLD[way].code}`;
  const known = (await loadLots(tx, ctx.place.id, { batchId: batch.id, emptied: true })).find((l) => l.code === code);
  const cold = newLot({
    id: childId(act.id, COLD[way].code),
    code,
    kind: COLD[way].kind,
    label: `${batch.label}, unsealed`,
    unit: 'jar',
    item: lot.item,
    foodId: lot.foodId,
    recipeId: batch.recipeId,
    batchId: batch.id,
    parentActId: act.id,
    madeOn: lot.madeOn,
    since: lot.since,
    bestBefore: until,
    roomId: roomOfKind(ctx.place, way)?.id ?? null,
    seal: 'unsealed',
    process: lot.process,
    flags: lot.flags,
    details: lot.details,
  });
  return {
    lots: known ? [] : [cold],
    batches: [],
    movements: moves(m, { lot: known?.id ?? cold.id }),
    said: `${names(m)} to the ${way}, ${COLD[way].until} ${COLD[way].date(known?.bestBefore ?? until)}`,
  };
}

/** Emptied, heated and filled again into clean jars under new lids: a batch of its own that waits for the canner. */
async function toTheCanner(ctx: Context, tx: Tx, m: Moving): Promise<Moved | Refusal> {
  const { batch, lot, act, pieces } = m;
  const stock = await loadLots(tx, ctx.place.id, { kinds: ['lids'], item: 'lid-regular' });
  const lids = drawOldest(stock, pieces.length, 'lids');
  if (isRefusal(lids)) return lids;
  const again = againBatch(batch, act, await freeAgainCode(tx, ctx, batch.code), pieces.length);
  const { onHand: _, ...was } = lot;
  const jars = newLot({
    ...was,
    id: jarLotId(again.id, lot.item ?? ''),
    code: again.code,
    batchId: again.id,
    parentActId: act.id,
    since: act.at,
    address: null,
    process: 'unknown',
    seal: 'waiting',
    hold: withoutHold(lot.hold, PROCESS_HOLD),
    flags: [...lot.flags, `processed again, from ${lot.code}`],
  });
  return {
    lots: [jars],
    batches: [again],
    movements: [
      ...moves(m, { lot: jars.id }),
      ...lids.map((l) => movePieces({ lot: l.lotId }, { sink: 'used' }, l.count)),
    ],
    said: `${names(m)} to be processed again as ${again.code}: emptied, heated, clean jars, ${counted(pieces.length, 'new lid')}, ${sheetOf(batch).processMin} minutes`,
  };
}

/** "25256-DAM-B-R", then "-R2", "-R3". */
async function freeAgainCode(tx: Tx, ctx: Context, of: string): Promise<string> {
  for (let n = 1; ; n++) {
    const code = `${of}-R${n === 1 ? '' : n}`;
    if (!(await batchOfCode(tx, ctx.place.id, code))) return code;
  }
}

/** The batch of the jars processed again: the same sheet, nothing drawn, its own clock. */
function againBatch(batch: BatchRecord, act: Act, code: string, jars: number): BatchRecord {
  const { boilingAt: _, ...sheet } = batch.result;
  return {
    ...batch,
    id: childId(act.id, 'again'),
    code,
    state: 'filled',
    day: act.day,
    startedAt: null,
    filledAt: act.at,
    outAt: null,
    inputs: { cookedIn: panBatchId(batch) },
    result: { ...sheet, jars, partialG: 0, trimG: 0 },
    log: [
      { at: act.at, what: `${counted(jars, 'jar')} of ${batch.code}, emptied, heated, filled again under new lids` },
    ],
  };
}
