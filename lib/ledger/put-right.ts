/**
 * Putting an act right. Nothing is deleted: an act is taken back by its counter-movements, which name the very jars it moved;
 * a harvest is entered again with other figures, and what was used beyond them is found, so that no lot ends below zero.
 */
import { type Act, correction, type Entry, isRefusal, type Refusal } from './entry.ts';
import type { HeldLot, LotUnit } from './lot.ts';
import { type Account, amountIn, isLot, type Movement, moveGrams } from './movement.ts';
import { pieceCode, pieceStates, piecesMoved } from './pieces.ts';

/** A movement with the act that wrote it. */
export type ActMovement = Movement & { actId: string };

/** A lot counted by numbered pieces, with every movement that touches it, oldest first. */
export interface PiecedLot {
  lot: Pick<HeldLot, 'id' | 'code'>;
  movements: readonly ActMovement[];
}

/**
 * The entry that takes an act back. A jar that came without a number goes back by the number it was given, and is refused by
 * that number when it is no longer here.
 */
export function takenBack(
  of: Pick<Entry, 'act' | 'movements'>,
  act: Omit<Act, 'kind' | 'corrects'>,
  pieced: readonly PiecedLot[],
): Entry | Refusal {
  const numbered = of.movements.map((m, index) => byNumber(of, m, index, pieced));
  const refused = numbered.find(isRefusal);
  if (refused) return refused;
  return correction({ ...of, movements: (numbered as Movement[][]).flat(), lots: [], changes: [] }, act);
}

function byNumber(
  of: Pick<Entry, 'act' | 'movements'>,
  m: Movement,
  index: number,
  pieced: readonly PiecedLot[],
): Movement[] | Refusal {
  const lotId = isLot(m.to) ? m.to.lot : isLot(m.from) ? m.from.lot : null;
  const held = pieced.find((p) => p.lot.id === lotId);
  if (!held || lotId === null) return [m];
  const touches = (x: Movement) => (isLot(x.to) && x.to.lot === lotId) || (isLot(x.from) && x.from.lot === lotId);
  const nth = of.movements.slice(0, index).filter(touches).length;
  const mine = held.movements.flatMap((x, i) => (x.actId === of.act.id ? [i] : []))[nth];
  const numbers = mine === undefined ? [] : (piecesMoved(lotId, held.movements)[mine] as number[]);
  if (isLot(m.to)) {
    const states = pieceStates(lotId, held.movements);
    const gone = numbers.find((n) => states.get(n)?.at !== 'here');
    if (gone !== undefined) return { refused: `${pieceCode(held.lot.code, gone)} is no longer here` };
  }
  const gramsEach = m.grams === null ? null : m.grams / Math.max(1, numbers.length);
  return numbers.map((piece) => ({ ...m, qty: 1, grams: gramsEach === null ? null : Math.round(gramsEach), piece }));
}

/** What went on from a lot, net of what came back: to another lot or to a sink; in the order it first went. */
export interface WentOn {
  to: Account;
  /** In the lot's own unit. */
  qty: number;
}

const nameOf = (a: Account): string => (isLot(a) ? `lot ${a.lot}` : a.sink);

/** Where a lot's content went, oldest first. What went back to where the lot came from is no use of it. */
export function wentOn(lotId: string, unit: LotUnit, movements: readonly Movement[]): WentOn[] {
  const sums = new Map<string, WentOn>();
  const add = (to: Account, qty: number) => {
    const known = sums.get(nameOf(to)) ?? { to, qty: 0 };
    sums.set(nameOf(to), { to, qty: known.qty + qty });
  };
  for (const m of movements) {
    if (isLot(m.from) && m.from.lot === lotId) add(m.to, amountIn(unit, m));
    if (isLot(m.to) && m.to.lot === lotId) add(m.from, -amountIn(unit, m));
  }
  return [...sums.values()].filter((w) => w.qty > 0);
}

/** What each drew beyond what there was, the first come served from it; what fits is left out. */
export function beyond(went: readonly WentOn[], there: number): WentOn[] {
  let left = there;
  return went.flatMap((w) => {
    const over = w.qty - Math.max(0, Math.min(left, w.qty));
    left -= w.qty;
    return over > 0 ? [{ ...w, qty: over }] : [];
  });
}

/** A fruit lot of a harvest with the figure it should have had; whole grams. */
export interface Reweighed {
  lot: Pick<HeldLot, 'id' | 'onHand'>;
  wasG: number;
  isG: number;
  /** Written as found by an earlier correction. */
  foundG: number;
}

/** More that left the lot than the new figure brings; 0 when it covers all. */
export const beyondG = ({ lot, wasG, isG, foundG }: Reweighed): number => Math.max(0, wasG + foundG - lot.onHand - isG);

/**
 * A harvest with other figures: it is entered again, then the first entry is taken back. Fruit used beyond the new figure
 * is written as found, for it did go into the pan; what else the harvest moved (sold at once, culled) stays as it was.
 */
export function reweigh(
  of: Pick<Entry, 'act' | 'movements'>,
  acts: { again: Act; back: Omit<Act, 'kind' | 'corrects'> },
  lots: readonly Reweighed[],
): { again: Entry; back: Entry } | Refusal {
  const back = correction({ ...of, lots: [], changes: [] }, acts.back);
  if (isRefusal(back)) return back;
  const flow = (from: Account, to: Account, g: number): Movement[] =>
    g > 0 ? [moveGrams(from, to, g)] : g < 0 ? [moveGrams(to, from, -g)] : [];
  const straight = of.movements.filter((m) => !isLot(m.to));
  return {
    again: {
      act: acts.again,
      lots: [],
      movements: [...lots.flatMap((r) => flow({ sink: 'harvest' }, { lot: r.lot.id }, r.isG)), ...straight],
      changes: [],
    },
    back: {
      ...back,
      movements: [
        ...back.movements,
        ...lots.flatMap((r) => flow({ sink: 'found' }, { lot: r.lot.id }, beyondG(r) - r.foundG)),
      ],
    },
  };
}
