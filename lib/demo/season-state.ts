/** The ledger as the season's script sees it while it plays: the book, and which numbered pieces of each lot are left. */
import { type Book, post } from '#lib/ledger/book.ts';
import { type Act, type ActKind, type Entry, isRefusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { seasonActId } from './demo-ids.ts';

export interface SeasonState {
  placeId: string;
  book: Book;
  /** Piece numbers still there, by lot id, lowest first. */
  pieces: Map<string, number[]>;
  /** "day crop" of pickings a person recorded: their entry stands for the script's. */
  personsPicks: Set<string>;
  /** "day recipe" of batches a person made. */
  personsBatches: Set<string>;
  /** Entries the script has posted in this run, in order: what the store has to write. */
  written: Entry[];
}

export const seasonAct = (
  s: SeasonState,
  key: string,
  kind: ActKind,
  day: PlainDate,
  clock: string,
  payload: Record<string, unknown> = {},
): Act => ({
  id: seasonActId(s.placeId, key),
  kind,
  day,
  at: `${day}T${clock}:00.000Z`,
  person: null,
  device: 'season',
  note: null,
  payload,
  corrects: null,
});

/** Posts to the book and remembers the entry; false when the book refuses it (the person used it first). */
export function write(s: SeasonState, entry: Entry): boolean {
  const posting = post(s.book, entry);
  if (isRefusal(posting)) return false;
  if ('posted' in posting) s.written.push(entry);
  return true;
}

const byAge = (a: HeldLot, b: HeldLot) =>
  a.madeOn === b.madeOn ? a.code.localeCompare(b.code) : a.madeOn.localeCompare(b.madeOn);

/** Lots with something left that fit, oldest first. */
export const held = (s: SeasonState, fits: (lot: HeldLot) => boolean): HeldLot[] =>
  [...s.book.lots.values()].filter((l) => l.onHand > 0 && fits(l)).sort(byAge);
