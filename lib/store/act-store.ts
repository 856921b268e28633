/** Acts as they were recorded. */
import type { Act } from '#lib/ledger/entry.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Db, Tx } from './database/open-database.ts';
import { toMovement } from './lot-rows.ts';
import { inParts } from './many-ids.ts';

export type StoredAct = Act & { movements: Movement[] };

export interface ActFilter {
  kinds?: string[];
  from?: PlainDate;
  to?: PlainDate;
  ids?: readonly string[];
  take?: number;
}

/** Acts with their movements, newest day first. */
export async function loadActs(db: Db | Tx, placeId: string, f: ActFilter): Promise<StoredAct[]> {
  const where = {
    placeId,
    ...(f.kinds ? { kind: { in: f.kinds } } : {}),
    ...(f.from || f.to ? { day: { ...(f.from ? { gte: f.from } : {}), ...(f.to ? { lte: f.to } : {}) } } : {}),
  };
  const newest = [{ day: 'desc' as const }, { enteredAt: 'desc' as const }];
  const acts = f.ids
    ? await inParts(f.ids, (ids) => db.act.findMany({ where: { ...where, id: { in: ids } }, orderBy: newest }))
    : await db.act.findMany({ where, orderBy: newest, ...(f.take ? { take: f.take } : {}) });
  // By the acts' own condition where it is one, for a list of ids may be longer than a database takes.
  const moved =
    f.ids || f.take
      ? await inParts(
          acts.map((act) => act.id),
          (ids) => db.movement.findMany({ where: { actId: { in: ids } } }),
        )
      : await db.movement.findMany({ where: { placeId, act: where } });
  const byAct = new Map<string, typeof moved>();
  for (const m of moved.sort((x, y) => x.seq - y.seq)) byAct.set(m.actId, [...(byAct.get(m.actId) ?? []), m]);
  return acts.map(({ placeId: _p, enteredAt: _e, outcome: _o, at, ...row }) => ({
    ...(row as unknown as Act),
    at: at.toISOString(),
    movements: (byAct.get(row.id) ?? []).map(toMovement),
  }));
}

/** The act that took this one back, or null. */
export async function correctionOf(db: Db | Tx, placeId: string, id: string): Promise<StoredAct | null> {
  const found = await db.act.findFirst({ where: { placeId, corrects: id }, select: { id: true } });
  return found ? ((await loadActs(db, placeId, { ids: [found.id] }))[0] ?? null) : null;
}

/** Of these acts, those that were taken back, with the reason that was given. */
export async function correctionsAmong(
  db: Db | Tx,
  placeId: string,
  ids: readonly string[],
): Promise<Map<string, string>> {
  const found = await inParts(ids, (part) =>
    db.act.findMany({ where: { placeId, corrects: { in: part } }, select: { corrects: true, note: true } }),
  );
  return new Map(found.map((a) => [a.corrects as string, a.note ?? '']));
}

/** Changes with every act of a place: how many there are, and when the last was entered. */
export async function actMark(db: Db, placeId: string): Promise<string> {
  const { _count, _max } = await db.act.aggregate({ where: { placeId }, _count: true, _max: { enteredAt: true } });
  return `${_count} ${_max.enteredAt?.toISOString() ?? ''}`;
}

export const actIds = async (db: Db | Tx, placeId: string): Promise<string[]> =>
  (await db.act.findMany({ where: { placeId }, select: { id: true } })).map((a) => a.id);
