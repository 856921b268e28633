/** Acts as they were recorded. */
import type { Act } from '#lib/ledger/entry.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Db, Tx } from './database/open-database.ts';
import { toMovement } from './lot-rows.ts';

export type StoredAct = Act & { movements: Movement[] };

export async function loadActs(
  db: Db | Tx,
  placeId: string,
  f: { kinds?: string[]; from?: PlainDate; to?: PlainDate; ids?: readonly string[]; take?: number },
): Promise<StoredAct[]> {
  const rows = await db.act.findMany({
    where: {
      placeId,
      ...(f.kinds ? { kind: { in: f.kinds } } : {}),
      ...(f.ids ? { id: { in: [...f.ids] } } : {}),
      ...(f.from || f.to ? { day: { ...(f.from ? { gte: f.from } : {}), ...(f.to ? { lte: f.to } : {}) } } : {}),
    },
    include: { movements: { orderBy: { seq: 'asc' } } },
    orderBy: [{ day: 'desc' }, { enteredAt: 'desc' }],
    ...(f.take ? { take: f.take } : {}),
  });
  return rows.map(({ placeId: _p, enteredAt: _e, outcome: _o, at, movements, ...row }) => ({
    ...(row as unknown as Act),
    at: at.toISOString(),
    movements: movements.map(toMovement),
  }));
}

export const actIds = async (db: Db | Tx, placeId: string): Promise<string[]> =>
  (await db.act.findMany({ where: { placeId }, select: { id: true } })).map((a) => a.id);
