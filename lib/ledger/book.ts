/**
 * The ledger in memory: lots, balances and movements, posted one entry at a time. The demo season and the tests run
 * on it; the store does the same arithmetic in the database. No balance may go below zero by any path.
 */
import { balanceChanges, type Entry, type Refusal } from './entry.ts';
import type { HeldLot, Lot } from './lot.ts';
import { isLot, type Movement } from './movement.ts';

export interface Book {
  lots: Map<string, HeldLot>;
  entries: Entry[];
  acts: Set<string>;
}

export const emptyBook = (): Book => ({ lots: new Map(), entries: [], acts: new Set() });

export type Posting = { posted: true } | { replayed: true } | Refusal;

/** Posts an entry. A replayed act changes nothing; an entry that would overdraw a lot is refused whole, with the figures. */
export function post(book: Book, entry: Entry): Posting {
  if (book.acts.has(entry.act.id)) return { replayed: true };
  const created = new Map(entry.lots.map((lot) => [lot.id, lot]));
  const lotOf = (id: string): Lot => {
    const lot = created.get(id) ?? book.lots.get(id);
    if (!lot) throw new RangeError(`movement names a lot that does not exist: ${id}`);
    return lot;
  };
  const changes = balanceChanges(entry.movements, (id) => lotOf(id).unit);
  for (const [id, change] of changes) {
    const have = book.lots.get(id)?.onHand ?? 0;
    if (have + change < 0) return overdrawn(lotOf(id), have, -change);
  }
  for (const lot of entry.lots) book.lots.set(lot.id, { ...lot, onHand: 0 });
  for (const [id, change] of changes) {
    const held = book.lots.get(id) as HeldLot;
    held.onHand += change;
  }
  for (const { lotId, details, ...facts } of entry.changes) {
    const held = book.lots.get(lotId) as HeldLot;
    Object.assign(held, facts, details ? { details: { ...held.details, ...details } } : {});
  }
  book.entries.push(entry);
  book.acts.add(entry.act.id);
  return { posted: true };
}

/** "4 left of Quince paste (25290-QUI-A); 6 asked for". */
export const overdrawn = (lot: Pick<Lot, 'label' | 'code' | 'unit'>, have: number, asked: number): Refusal => ({
  refused: `${have} ${lot.unit} left of ${lot.label} (${lot.code}); ${asked} asked for`,
});

/** Movements into and out of one lot, oldest entry first. */
export function movementsOf(book: Book, lotId: string): Movement[] {
  return book.entries.flatMap((e) =>
    e.movements.filter((m) => (isLot(m.from) && m.from.lot === lotId) || (isLot(m.to) && m.to.lot === lotId)),
  );
}
