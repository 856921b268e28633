/**
 * A stock-take's difference becomes movements with a reason, never an edit: too few leave the oldest numbers first, too many
 * are found and numbered on. Miscounted means the book stands.
 */
import type { Refusal } from '../entry.ts';
import type { HeldLot } from '../lot.ts';
import { type Movement, movePieces, type Sink } from '../movement.ts';

export const COUNT_REASONS = ['eaten', 'given', 'broken', 'missing', 'found', 'miscounted'] as const;
export type CountReason = (typeof COUNT_REASONS)[number];

/** Too few or too many, in whole jars; `lots` of that line and shelf, oldest first, with their numbered jars. */
export interface CountDifference {
  difference: number;
  reason: CountReason;
  lots: readonly { lot: Pick<HeldLot, 'id' | 'details' | 'label'>; pieces: readonly number[] }[];
  /** Lot of empties an eaten jar's glass returns to; null where it does not. */
  glass: string | null;
}

export function settleCount(d: CountDifference): Movement[] | Refusal {
  const line = d.lots[0]?.lot.label ?? 'this line';
  if (d.difference === 0 || d.reason === 'miscounted') return [];
  if (d.difference > 0) {
    const into = d.lots.at(-1);
    if (d.reason !== 'found')
      return { refused: `${line}: ${d.difference} more than expected are found, not ${d.reason}` };
    if (!into) return { refused: `${line}: there is no lot here to add to` };
    const netG = netOf(into.lot);
    const grams = netG === null ? null : netG * d.difference;
    return [{ from: { sink: 'found' }, to: { lot: into.lot.id }, qty: d.difference, grams, piece: null }];
  }
  if (d.reason === 'found') return { refused: `${line}: ${-d.difference} fewer than expected cannot be found jars` };
  const gone = d.lots.flatMap(({ lot, pieces }) => pieces.map((piece) => ({ lot, piece }))).slice(0, -d.difference);
  if (gone.length < -d.difference)
    return { refused: `${line}: ${gone.length} left here, ${-d.difference} to take out` };
  const to = { sink: d.reason as Sink };
  const out = gone.map(({ lot, piece }): Movement => ({ from: { lot: lot.id }, to, qty: 1, grams: netOf(lot), piece }));
  return d.reason === 'eaten' && d.glass !== null
    ? [...out, movePieces({ sink: 'in-use' }, { lot: d.glass }, gone.length)]
    : out;
}

const netOf = (lot: Pick<HeldLot, 'details'>): number | null =>
  typeof lot.details.netG === 'number' ? lot.details.netG : null;
