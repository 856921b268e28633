/** Where every numbered jar is, for a recall: on a shelf, gone to somebody, gone to the stall on a day, eaten, thrown away. */
import type { HeldLot } from './lot.ts';
import { isLot, type Movement, type Sink } from './movement.ts';
import { pieceCode, pieceStates } from './pieces.ts';

export type Whereabouts =
  | { at: 'here' }
  | { at: 'lot'; lot: string }
  | { at: 'gone'; sink: Sink; day: string; who: string | null };

export interface TracedJar {
  code: string;
  lotId: string;
  where: Whereabouts;
}

/** Movements carry their day and what the act noted (to whom, where sold). */
export type NotedMovement = Movement & { day: string; who: string | null };

/** Every jar of a lot with where it last went, in order of its number. */
export function whereabouts(lot: Pick<HeldLot, 'id' | 'code'>, movements: readonly NotedMovement[]): TracedJar[] {
  return [...pieceStates(lot.id, movements).entries()]
    .sort(([a], [b]) => a - b)
    .map(([piece, state]): TracedJar => {
      const last = movements.findLast(
        (m) => isLot(m.from) && m.from.lot === lot.id && (m.piece === piece || m.piece === null),
      );
      const where: Whereabouts =
        state.at === 'sink' ? { at: 'gone', sink: state.sink, day: last?.day ?? '', who: last?.who ?? null } : state;
      return { code: pieceCode(lot.code, piece), lotId: lot.id, where };
    });
}

/** Known where it is: here, eaten or thrown away; sold on a day; given to somebody who is named. */
export const isPlaced = (w: Whereabouts): boolean => w.at !== 'gone' || w.sink !== 'given' || w.who !== null;
