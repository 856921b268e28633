/** From a jar back to its trees and receipts, and forward to its sisters: one page, both directions. */

import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { pieceStates } from '#lib/ledger/pieces.ts';
import { lineage, reach } from '#lib/ledger/trace.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { type DatedMovement, loadLots, lotOfCode, movementsOf } from '#lib/store/ledger-store.ts';
import type { Context } from './context.ts';
import { plantingsOf } from './plantings-of.ts';

export interface TraceView {
  code: string;
  label: string;
  lot: HeldLot;
  piece: { number: number; state: string } | null;
  batch: BatchRecord | null;
  /** What went in, by lot, with the grams drawn. */
  parents: {
    id: string;
    code: string;
    label: string;
    kind: string;
    grams: number;
    unitQty: number;
    unit: string;
    from: string;
    plantings: string[];
  }[];
  /** Every tree and row the fruit came from. */
  trees: string[];
  /** One step back: from whom, the day, the lot named on the box, as far as it was recorded. */
  receipts: { code: string; label: string; from: string }[];
  /** The other jars of the batch and where each is. */
  sisters: { code: string; where: string }[];
  made: number;
}

export async function readTrace(ctx: Context, code: string): Promise<TraceView | null> {
  const [lotCode, piece] = splitCode(code);
  const lot = (await lotOfCode(ctx.db, ctx.place.id, lotCode)) ?? (await lotOfCode(ctx.db, ctx.place.id, code));
  if (!lot) return null;
  const batch = lot.batchId ? ((await loadBatches(ctx.db, ctx.place.id, { ids: [lot.batchId] }))[0] ?? null) : null;
  const { lots, movements } = await upstream(ctx, lot);
  const links = lineage([{ movements }]);
  const above = reach(lot.id, links.parents)
    .map((id) => lots.get(id))
    .filter((l): l is HeldLot => l !== undefined && l.kind !== 'batch');
  const sources = above.filter((l) => (links.parents.get(l.id)?.size ?? 0) === 0);
  const lids = batch ? await usedWith(ctx, batch) : [];
  return {
    code,
    label: lot.label,
    lot,
    piece: piece === null || lot.code !== lotCode ? null : await pieceOf(ctx, lot, piece),
    batch,
    parents: above.map((l) => parentOf(l, movements)),
    trees: [...new Set(sources.flatMap((l) => (l.kind === 'fruit' ? plantingsOf(ctx.place, l) : [])))],
    receipts: [...sources.filter((l) => l.kind !== 'fruit' || l.code.startsWith('R-')), ...lids].map((l) => ({
      code: l.code,
      label: l.label,
      from: receivedText(l),
    })),
    sisters: await sistersOf(ctx, lot),
    made: movements.filter((m) => isLot(m.to) && m.to.lot === lot.id).reduce((n, m) => n + m.qty, 0),
  };
}

/** "25256-DAM-A/01" is jar 1 of lot 25256-DAM-A. */
export function splitCode(code: string): [string, number | null] {
  const m = /^(.*)\/(\d{1,3})$/.exec(code);
  return m ? [m[1] as string, Number(m[2])] : [code, null];
}

/** The lots above this one and the movements between them, generation by generation. */
async function upstream(
  ctx: Context,
  lot: HeldLot,
): Promise<{ lots: Map<string, HeldLot>; movements: DatedMovement[] }> {
  const lots = new Map<string, HeldLot>([[lot.id, lot]]);
  const movements: DatedMovement[] = [];
  let layer = [lot.id];
  while (layer.length > 0) {
    const into = (await movementsOf(ctx.db, ctx.place.id, layer)).filter(
      (m) => isLot(m.to) && layer.includes(m.to.lot),
    );
    movements.push(...into);
    const next = [...new Set(into.flatMap((m) => (isLot(m.from) ? [m.from.lot] : [])))].filter((id) => !lots.has(id));
    for (const l of await loadLots(ctx.db, ctx.place.id, { ids: next, emptied: true })) lots.set(l.id, l);
    layer = next;
  }
  return { lots, movements };
}

const parentOf = (l: HeldLot, movements: DatedMovement[]): TraceView['parents'][number] => {
  const drawn = movements.filter((m) => isLot(m.from) && m.from.lot === l.id);
  return {
    id: l.id,
    code: l.code,
    label: l.grade ? `${l.label}, ${l.grade}` : l.label,
    kind: l.kind,
    grams: drawn.reduce((g, m) => g + (m.grams ?? 0), 0),
    unitQty: drawn.reduce((n, m) => n + m.qty, 0),
    unit: l.unit,
    from: l.row
      ? `row ${l.row}, picked ${l.madeOn}`
      : l.code.startsWith('R-')
        ? receivedText(l)
        : `${l.kind === 'supply' ? 'received' : 'made'} ${l.madeOn}`,
    plantings: [],
  };
};

/** "came in 2025-09-12 from Pim of the lane, box lot 117". */
export function receivedText(l: HeldLot): string {
  const { supplier, boxLot } = l.details;
  const who = typeof supplier === 'string' ? ` from ${supplier}` : '';
  const box = typeof boxLot === 'string' ? `, box lot ${boxLot}` : '';
  return `came in ${l.madeOn}${who}${box}`;
}

/** Lids and glass the batch used: they go to no jar lot, so they are found by the act that filled it. */
async function usedWith(ctx: Context, batch: BatchRecord): Promise<HeldLot[]> {
  const fills = (await loadActs(ctx.db, ctx.place.id, { kinds: ['fill'], from: batch.day })).filter((a) =>
    a.movements.some((m) => isLot(m.from) && m.from.lot === `${batch.id}.pan`),
  );
  const ids = fills.flatMap((a) =>
    a.movements
      .filter((m) => !isLot(m.to) && (m.to.sink === 'used' || m.to.sink === 'in-use'))
      .flatMap((m) => (isLot(m.from) ? [m.from.lot] : [])),
  );
  return loadLots(ctx.db, ctx.place.id, { ids: [...new Set(ids)], emptied: true });
}

async function pieceOf(ctx: Context, lot: HeldLot, number: number): Promise<TraceView['piece']> {
  const state = pieceStates(lot.id, await movementsOf(ctx.db, ctx.place.id, [lot.id])).get(number);
  if (!state) return { number, state: 'there is no such jar in this lot' };
  return {
    number,
    state:
      state.at === 'here'
        ? (lot.address ?? 'not shelved yet')
        : state.at === 'lot'
          ? await movedTo(ctx, state.lot)
          : state.sink,
  };
}

/** "moved to 25256-DAM-B/open"; a pan stands for the batch that is cooked in it. */
async function movedTo(ctx: Context, lotId: string): Promise<string> {
  const to = (await loadLots(ctx.db, ctx.place.id, { ids: [lotId], emptied: true }))[0];
  return `moved to ${to?.code.replace(/\/pan$/, '') ?? 'another lot'}`;
}

async function sistersOf(ctx: Context, lot: HeldLot): Promise<TraceView['sisters']> {
  if (lot.unit !== 'jar' && lot.unit !== 'pack') return [];
  const movements = await movementsOf(ctx.db, ctx.place.id, [lot.id]);
  const notes = new Map(
    (await loadActs(ctx.db, ctx.place.id, { ids: movements.map((m) => m.actId) })).map((a) => [a.id, a]),
  );
  const states = [...pieceStates(lot.id, movements).entries()].sort(([a], [b]) => a - b);
  const moved = new Map<string, string>();
  for (const [, state] of states) if (state.at === 'lot') moved.set(state.lot, await movedTo(ctx, state.lot));
  return states.map(([n, state]) => {
    const gone = movements.findLast((m) => m.piece === n && isLot(m.from));
    const who = gone ? notes.get(gone.actId)?.note : null;
    const where =
      state.at === 'here'
        ? (lot.address ?? 'not shelved yet')
        : state.at === 'lot'
          ? (moved.get(state.lot) ?? '')
          : `${state.sink}${who ? `, ${who}` : ''}${gone ? ` on ${gone.day}` : ''}`;
    return { code: `${lot.code}/${String(n).padStart(2, '0')}`, where };
  });
}

/** Lots and batches whose code holds what was typed, newest first. */
export async function searchCodes(
  ctx: Context,
  text: string,
): Promise<{ code: string; label: string; madeOn: string }[]> {
  const [wanted] = splitCode(text.trim().toUpperCase());
  if (wanted.length < 3) return [];
  const lots = await loadLots(ctx.db, ctx.place.id, {
    kinds: ['jars', 'frozen', 'dried', 'cold-jars', 'fruit', 'set-aside', 'supply', 'lids'],
    emptied: true,
  });
  return lots
    .filter((l) => l.code.toUpperCase().includes(wanted) || l.label.toUpperCase().includes(wanted))
    .reverse()
    .slice(0, 30)
    .map((l) => ({ code: l.code, label: l.label, madeOn: l.madeOn }));
}
