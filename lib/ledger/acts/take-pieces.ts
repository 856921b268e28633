/** Jars or packs leave by number: eaten, given, sold or spoiled. An eaten jar's glass comes back to the empties. */
import type { Act, Entry } from '../entry.ts';
import type { HeldLot } from '../lot.ts';
import { type Movement, movePieces, type Sink } from '../movement.ts';

export interface Taking {
  act: Act;
  to: Extract<Sink, 'eaten' | 'given' | 'sold' | 'spoiled'>;
  pieces: { lot: Pick<HeldLot, 'id' | 'details'>; piece: number }[];
  /** Lot of empties the glass returns to, and how many; null where it does not come back. */
  returns: { lotId: string; count: number } | null;
}

export function takePieces(t: Taking): Entry {
  const movements: Movement[] = t.pieces.map(({ lot, piece }) => ({
    from: { lot: lot.id },
    to: { sink: t.to },
    qty: 1,
    grams: typeof lot.details.netG === 'number' ? lot.details.netG : null,
    piece,
  }));
  if (t.returns && t.returns.count > 0)
    movements.push(movePieces({ sink: 'in-use' }, { lot: t.returns.lotId }, t.returns.count));
  return { act: t.act, lots: [], movements, changes: [] };
}
