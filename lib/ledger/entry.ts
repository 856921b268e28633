/**
 * What one act writes: the act itself, the lots it creates, the movements, and the facts about lots it changes
 * (seal seen, shelf address). The store writes an entry in one transaction or not at all; the act's id, made where
 * it happened, makes a replay change nothing.
 */
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { BatchChange, BatchRecord, ReadingRecord } from './batch-record.ts';
import type { Lot, LotUnit } from './lot.ts';
import { type Account, amountIn, counterMovement, isLot, type Movement } from './movement.ts';

export interface Act {
  id: string;
  kind: ActKind;
  day: PlainDate;
  /** ISO instant the act happened, as the device says. */
  at: string;
  person: string | null;
  device: string | null;
  note: string | null;
  /** What was typed, never edited. */
  payload: Record<string, unknown>;
  corrects: string | null;
}

export type ActKind =
  | 'opening'
  | 'harvest'
  | 'sight'
  | 'weather'
  | 'receive'
  | 'place-fruit'
  | 'start-batch'
  | 'fill'
  | 'process'
  | 'seal'
  | 'shelve'
  | 'freeze'
  | 'take'
  | 'set-aside'
  | 'count'
  | 'grade'
  | 'place'
  | 'note'
  | 'hold'
  | 'recall'
  | 'suspect'
  | 'outage'
  | 'rescue'
  | 'question'
  | 'answer'
  | 'correct';

export type LotChange = { lotId: string } & Partial<
  Pick<
    Lot,
    | 'roomId'
    | 'address'
    | 'process'
    | 'seal'
    | 'hold'
    | 'household'
    | 'bestBefore'
    | 'since'
    | 'grade'
    | 'flags'
    | 'lockedUntil'
    | 'item'
    | 'label'
    /** Put over those the lot has; the others stay. */
    | 'details'
  >
>;

export interface Entry {
  act: Act;
  lots: Lot[];
  movements: Movement[];
  changes: LotChange[];
  batches?: BatchRecord[];
  batchChanges?: BatchChange[];
  readings?: ReadingRecord[];
}

/** A refusal in words, with the numbers in it; returned, never thrown. */
export interface Refusal {
  refused: string;
}
export const isRefusal = (x: unknown): x is Refusal => typeof x === 'object' && x !== null && 'refused' in x;

/** Change of every lot's balance by these movements, in the lot's own unit. */
export function balanceChanges(
  movements: readonly Movement[],
  unitOf: (lotId: string) => LotUnit,
): Map<string, number> {
  const change = new Map<string, number>();
  const add = (account: Account, m: Movement, sign: number) => {
    if (!isLot(account)) return;
    change.set(account.lot, (change.get(account.lot) ?? 0) + sign * amountIn(unitOf(account.lot), m));
  };
  for (const m of movements) {
    add(m.from, m, -1);
    add(m.to, m, 1);
  }
  return change;
}

/**
 * The entry that puts an act right: every movement is answered by its counter-movement, nothing is deleted.
 * It may be refused by the store when what the act brought in has since been used. A correction is not itself put
 * right: the act it took back is entered again, or a jar would leave twice under one act.
 */
export function correction(of: Entry, act: Omit<Act, 'kind' | 'corrects'>): Entry | Refusal {
  if (of.act.kind === 'correct') return { refused: 'A correction is not taken back. Enter the act again.' };
  return {
    act: { ...act, kind: 'correct', corrects: of.act.id },
    lots: [],
    movements: of.movements.map(counterMovement),
    changes: [],
  };
}

/** Ids of what an act creates are derived from the act's own, so that a replay names the same things. */
export const childId = (actId: string, what: string): string => `${actId}.${what}`;
