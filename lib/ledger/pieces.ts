/** Which numbered jars (or packs) of a lot are still there. Every piece is in exactly one state: there, or where it last went. */
import { isLot, type Movement, type Sink } from './movement.ts';

export type PieceState = { at: 'here' } | { at: 'lot'; lot: string } | { at: 'sink'; sink: Sink };

/**
 * State of every piece of a lot, from the movements that touch it in the order they were written.
 * An inflow without a piece number brings the next `qty` pieces, numbered on from the highest.
 */
export const pieceStates = (lotId: string, movements: readonly Movement[]): Map<number, PieceState> =>
  followed(lotId, movements).states;

/** Numbers each movement brought into a lot or took out of it, in the order of the movements; none where it touches another. */
export const piecesMoved = (lotId: string, movements: readonly Movement[]): number[][] =>
  followed(lotId, movements).moved;

function followed(
  lotId: string,
  movements: readonly Movement[],
): { states: Map<number, PieceState>; moved: number[][] } {
  const states = new Map<number, PieceState>();
  let highest = 0;
  const moved = movements.map((m) => {
    if (isLot(m.to) && m.to.lot === lotId) {
      const brought = m.piece !== null ? [m.piece] : Array.from({ length: m.qty }, (_, i) => highest + 1 + i);
      for (const piece of brought) states.set(piece, { at: 'here' });
      highest = Math.max(highest, ...brought);
      return brought;
    }
    if (!isLot(m.from) || m.from.lot !== lotId) return [];
    const gone: PieceState = isLot(m.to) ? { at: 'lot', lot: m.to.lot } : { at: 'sink', sink: m.to.sink };
    const taken = m.piece !== null ? [m.piece] : lowestHere(states, m.qty);
    for (const piece of taken) states.set(piece, gone);
    return taken;
  });
  return { states, moved };
}

const lowestHere = (states: Map<number, PieceState>, n: number): number[] =>
  [...states.entries()]
    .filter(([, s]) => s.at === 'here')
    .map(([p]) => p)
    .sort((a, b) => a - b)
    .slice(0, n);

/** Numbers of the pieces still there, lowest first: the next one to take is the first. */
export const piecesHere = (states: Map<number, PieceState>): number[] => lowestHere(states, states.size);

/** "25256-DAM-A/01". */
export const pieceCode = (lotCode: string, piece: number): string => `${lotCode}/${String(piece).padStart(2, '0')}`;
