/** Rows of the database to lots and movements of the ledger, and back. */

import type { Act } from '#lib/ledger/entry.ts';
import type { HeldLot, Lot } from '#lib/ledger/lot.ts';
import { type Account, isLot, type Movement, type Sink } from '#lib/ledger/movement.ts';
import type { Lot as LotRow, Movement as MovementRow, Prisma } from '#prisma/generated/sqlite/client.ts';

export const toLot = (row: LotRow): HeldLot => {
  const { placeId: _, since, flags, details, ...rest } = row;
  return {
    ...rest,
    since: since.toISOString(),
    flags: flags as string[],
    details: details as Record<string, unknown>,
  } as HeldLot;
};

export const fromLot = (placeId: string, lot: Lot, onHand: number): Prisma.LotCreateManyInput => ({
  ...(lot as Omit<Lot, 'since' | 'details'>),
  onHand,
  placeId,
  since: new Date(lot.since),
  details: lot.details as object,
});

const account = (lotId: string | null, sink: string | null): Account =>
  lotId !== null ? { lot: lotId } : { sink: sink as Sink };

export const toMovement = (
  row: Pick<MovementRow, 'fromLotId' | 'fromSink' | 'toLotId' | 'toSink' | 'qty' | 'grams' | 'piece'>,
): Movement => ({
  from: account(row.fromLotId, row.fromSink),
  to: account(row.toLotId, row.toSink),
  qty: row.qty,
  grams: row.grams,
  piece: row.piece,
});

export const fromMovement = (placeId: string, act: Act, m: Movement, seq: number): Prisma.MovementCreateManyInput => ({
  id: `${act.id}#${seq}`,
  placeId,
  actId: act.id,
  day: act.day,
  seq,
  fromLotId: isLot(m.from) ? m.from.lot : null,
  fromSink: isLot(m.from) ? null : m.from.sink,
  toLotId: isLot(m.to) ? m.to.lot : null,
  toSink: isLot(m.to) ? null : m.to.sink,
  qty: m.qty,
  grams: m.grams,
  piece: m.piece,
});

export const fromAct = (placeId: string, act: Act, outcome: object, enteredAt: Date): Prisma.ActCreateManyInput => ({
  ...act,
  placeId,
  at: new Date(act.at),
  enteredAt,
  payload: act.payload as object,
  outcome,
});
