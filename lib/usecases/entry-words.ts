/** What an act did, in one line of the trade's words. */
import type { ActKind } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { amountIn, isLot } from '#lib/ledger/movement.ts';
import type { StoredAct } from '#lib/store/act-store.ts';
import { counted, mass } from '#lib/units/format.ts';

const HEADS: Partial<Record<ActKind, string>> = {
  opening: 'There at the start',
  harvest: 'Picked',
  receive: 'Came in',
  'place-fruit': 'Cleared out',
  'start-batch': 'Batch started',
  fill: 'Filled',
  process: 'At the stove',
  seal: 'Seals checked',
  shelve: 'Put on the shelf',
  freeze: 'Frozen',
  'set-aside': 'Set aside',
  count: 'Stock-take',
  grade: 'Graded',
  note: 'Note',
  hold: 'Hold',
  recall: 'Recall',
  suspect: 'Looked wrong',
  outage: 'A cold store stopped',
  rescue: 'Out of a stopped store',
  correct: 'Put right',
};
const TAKEN: Record<string, string> = { eaten: 'Eaten', given: 'Given', sold: 'Sold', spoiled: 'Thrown away' };

/** Sums an act moved of each line: what came into its lots, or what left them where nothing was made. */
function movedOf(act: Pick<StoredAct, 'movements'>, lots: ReadonlyMap<string, HeldLot>): string[] {
  const into = act.movements.some((m) => isLot(m.to) && lots.get(m.to.lot)?.kind !== 'empties');
  const sums = new Map<string, { lot: HeldLot; qty: number; codes: Set<string> }>();
  for (const m of act.movements) {
    const side = into ? m.to : m.from;
    const lot = isLot(side) ? lots.get(side.lot) : undefined;
    if (!lot) continue;
    const key = `${lot.label} ${lot.unit}`;
    const { qty, codes } = sums.get(key) ?? { qty: 0, codes: new Set<string>() };
    sums.set(key, { lot, qty: qty + amountIn(lot.unit, m), codes: codes.add(shortCode(lot)) });
  }
  return [...sums.values()].map(
    ({ lot, qty, codes }) => `${amountText(lot.unit, qty)} ${lot.label.toLowerCase()} (${[...codes].join(', ')})`,
  );
}

/** A pan by its batch, a grade by its harvest. */
const shortCode = (lot: HeldLot): string =>
  lot.kind === 'batch' || lot.kind === 'fruit' ? lot.code.replace(/\/[A-Za-z]+$/, '') : lot.code;

export const amountText = (unit: string, qty: number): string =>
  unit === 'g' ? mass(qty) : unit === 'dg' ? mass(qty / 10) : unit === 'ml' ? `${qty} ml` : counted(qty, unit);

const SHOWN = 4;

/** "Given: 2 jars damson jam (25256-DAM-A), a neighbour". */
export function entryWords(act: StoredAct, lots: ReadonlyMap<string, HeldLot>): string {
  const head = act.kind === 'take' ? (TAKEN[String(act.payload.to)] ?? 'Taken') : (HEADS[act.kind] ?? act.kind);
  const moved = movedOf(act, lots);
  const more = moved.length > SHOWN ? [`${moved.length - SHOWN} more`] : [];
  const what = [...moved.slice(0, SHOWN), ...more].join(', ') || 'nothing moved';
  return `${head}: ${what}${act.note ? `, ${act.note}` : ''}`;
}
