/** Which numbered jars (or packs) of a lot are still there. Every piece is in exactly one state: there, or where it last went. */
import { isLot, type Movement, type Sink } from './movement.ts';

export type PieceState = { at: 'here' } | { at: 'lot'; lot: string } | { at: 'sink'; sink: Sink };

/**
 * State of every piece of a lot, from the movements that touch it in the order they were written.
 * An inflow without a piece number brings the next `qty` pieces, numbered on from the highest.
 */
export function pieceStates(lotId: string, movements: readonly Movement[]): Map<number, PieceState> {
  const states = new Map<number, PieceState>();
  let highest = 0;
  for (const m of movements) {
    if (isLot(m.to) && m.to.lot === lotId) {
      if (m.piece !== null) states.set(m.piece, { at: 'here' });
      else for (let i = 0; i < m.qty; i++) states.set(++highest, { at: 'here' });
      highest = Math.max(highest, ...states.keys());
    } else if (isLot(m.from) && m.from.lot === lotId) {
      const gone: PieceState = isLot(m.to) ? { at: 'lot', lot: m.to.lot } : { at: 'sink', sink: m.to.sink };
      for (const piece of m.piece !== null ? [m.piece] : lowestHere(states, m.qty)) states.set(piece, gone);
    }
  }
  return states;
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
