/**
 * The ledger in the database. An entry is written in one transaction or not at all; the act's own id makes a replay
 * answer as the first time did; the balance kept beside each lot is changed in the same transaction and may never go
 * below zero.
 */

import type { BatchChange, LogLine } from '#lib/ledger/batch-record.ts';
import { type Book, overdrawn } from '#lib/ledger/book.ts';
import { type Act, balanceChanges, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot, LotKind, LotUnit } from '#lib/ledger/lot.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import { pieceStates, piecesHere } from '#lib/ledger/pieces.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { Prisma } from '#prisma/generated/sqlite/client.ts';
import type { Db, Tx } from './database/open-database.ts';
import { fromAct, fromLot, fromMovement, toLot, toMovement } from './lot-rows.ts';
import { inParts } from './many-ids.ts';
import { lockPlace } from './place-store.ts';

/** Thrown inside a transaction so that it rolls back; turned into a returned refusal at its edge. */
class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.refused);
  }
}

export type Written<T> = { done: T; replayed: boolean } | Refusal;

/** An act that is sent: its id, and where the caller has it at hand what was typed. */
export type Sent = string | Pick<Act, 'id' | 'payload'>;

/**
 * Runs one act: `make` reads what it needs inside the transaction and says what to write and what to tell the person;
 * a refusal rolls everything back. When the act id is known already nothing is written and the first answer is given again;
 * the same id with something else typed is refused, for a form that was sent twice with a change is no replay. `first` is an
 * act that belongs to it and is written before it, in the same transaction.
 */
export async function writeAct<T extends object>(
  db: Db,
  placeId: string,
  sent: Sent,
  enteredAt: Date,
  make: (tx: Tx) => Promise<{ entry: Entry; tell: T; first?: Entry | null } | Refusal>,
): Promise<Written<T>> {
  return refusedOr(async () => {
    const told = await outcomeOf<T>(db, placeId, sent);
    if (told) return { done: told, replayed: true };
    try {
      return await db.$transaction(
        async (tx) => {
          await lockPlace(tx, placeId);
          const again = await outcomeOf<T>(tx, placeId, sent);
          if (again) return { done: again, replayed: true };
          const made = await make(tx);
          if ('refused' in made) throw new Refused(made);
          if (made.first) await writeEntry(tx, placeId, made.first, {}, enteredAt);
          await writeEntry(tx, placeId, made.entry, made.tell, enteredAt);
          return { done: made.tell, replayed: false };
        },
        { timeout: 20_000, maxWait: 20_000 },
      );
    } catch (error) {
      const raced = error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2002';
      const first = raced ? await outcomeOf<T>(db, placeId, sent) : null;
      if (!first) throw error;
      return { done: first, replayed: true };
    }
  });
}

async function refusedOr<T>(run: () => Promise<T>): Promise<T | Refusal> {
  try {
    return await run();
  } catch (error) {
    if (error instanceof Refused) return error.refusal;
    throw error;
  }
}

async function outcomeOf<T>(db: Db | Tx, placeId: string, sent: Sent): Promise<T | null> {
  const id = typeof sent === 'string' ? sent : sent.id;
  const act = await db.act.findUnique({ where: { id }, select: { outcome: true, placeId: true, payload: true } });
  if (!act) return null;
  if (act.placeId !== placeId) throw new Refused({ refused: 'this was recorded in another place already' });
  if (typeof sent !== 'string' && plainText(act.payload) !== plainText(sent.payload))
    throw new Refused({
      refused: 'this form was sent already, with something else in it: open it again and enter the change',
    });
  return act.outcome as T;
}

/** What was typed, in one order of its keys, as it would be read back. */
function plainText(value: unknown): string {
  return JSON.stringify(JSON.parse(JSON.stringify(value)), (_, v) =>
    typeof v === 'object' && v !== null && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
      : v,
  );
}

/**
 * Instants of entry rise strictly within a place, whatever the clock does: they are the order the ledger was written in,
 * and which numbered jar went first hangs on it.
 */
async function nextEnteredAt(tx: Tx, placeId: string, enteredAt: Date): Promise<Date> {
  const { _max } = await tx.act.aggregate({ where: { placeId }, _max: { enteredAt: true } });
  return _max.enteredAt && _max.enteredAt >= enteredAt ? new Date(_max.enteredAt.getTime() + 1) : enteredAt;
}

async function writeEntry(tx: Tx, placeId: string, entry: Entry, outcome: object, enteredAt: Date): Promise<void> {
  await tx.act.create({ data: fromAct(placeId, entry.act, outcome, await nextEnteredAt(tx, placeId, enteredAt)) });
  for (const b of entry.batches ?? []) await createBatch(tx, placeId, b);
  if (entry.lots.length > 0) await tx.lot.createMany({ data: entry.lots.map((l) => fromLot(placeId, l, 0)) });
  await changeBalances(tx, placeId, entry.movements, new Map(entry.lots.map((l) => [l.id, l.unit])));
  await tx.movement.createMany({ data: entry.movements.map((m, seq) => fromMovement(placeId, entry.act, m, seq)) });
  for (const { lotId, since, details, ...facts } of entry.changes)
    await tx.lot.updateMany({
      where: { id: lotId, placeId },
      data: {
        ...facts,
        ...(since ? { since: new Date(since) } : {}),
        ...(details ? { details: { ...(await detailsOf(tx, lotId)), ...details } as object } : {}),
      },
    });
  for (const change of entry.batchChanges ?? []) await changeBatch(tx, change);
  if (entry.readings?.length)
    await tx.reading.createMany({
      data: entry.readings.map((r) => ({ ...r, placeId, actId: entry.act.id, at: new Date(r.at) })),
    });
}

const detailsOf = async (tx: Tx, id: string): Promise<object> =>
  (await tx.lot.findUniqueOrThrow({ where: { id }, select: { details: true } })).details as object;

const createBatch = (tx: Tx, placeId: string, b: NonNullable<Entry['batches']>[number]) =>
  tx.batch.create({
    data: {
      ...b,
      placeId,
      startedAt: b.startedAt ? new Date(b.startedAt) : null,
      filledAt: b.filledAt ? new Date(b.filledAt) : null,
      outAt: b.outAt ? new Date(b.outAt) : null,
      inputs: b.inputs as object,
      result: b.result as object,
      log: b.log as unknown as object,
    },
  });

async function changeBatch(
  tx: Tx,
  { batchId, addLog, startedAt, filledAt, outAt, ...change }: BatchChange,
): Promise<void> {
  const log = addLog?.length ? { log: [...(await logOf(tx, batchId)), ...addLog] as unknown as object } : {};
  const instants = Object.fromEntries(
    Object.entries({ startedAt, filledAt, outAt }).flatMap(([k, v]) =>
      v === undefined ? [] : [[k, v === null ? null : new Date(v)]],
    ),
  );
  const { result, ...rest } = change;
  await tx.batch.update({
    where: { id: batchId },
    data: { ...rest, ...(result ? { result: result as object } : {}), ...instants, ...log },
  });
}

const logOf = async (tx: Tx, batchId: string): Promise<LogLine[]> =>
  ((await tx.batch.findUniqueOrThrow({ where: { id: batchId }, select: { log: true } })).log ??
    []) as unknown as LogLine[];

/** Adds each lot's change where the balance allows it; the condition is in the update itself, so two at once cannot both pass. */
async function changeBalances(
  tx: Tx,
  placeId: string,
  movements: readonly Movement[],
  units: Map<string, LotUnit>,
): Promise<void> {
  const named = [...new Set(movements.flatMap((m) => [m.from, m.to]).flatMap((a) => ('lot' in a ? [a.lot] : [])))];
  const stored = await tx.lot.findMany({
    where: { id: { in: named.filter((id) => !units.has(id)) }, placeId },
    select: { id: true, unit: true },
  });
  for (const row of stored) units.set(row.id, row.unit as LotUnit);
  const unitOf = (id: string): LotUnit => {
    const unit = units.get(id);
    if (!unit) throw new Refused({ refused: `there is no lot ${id} here` });
    return unit;
  };
  for (const [id, change] of balanceChanges(movements, unitOf)) {
    if (change === 0) continue;
    const { count } = await tx.lot.updateMany({
      where: { id, placeId, ...(change < 0 ? { onHand: { gte: -change } } : {}) },
      data: { onHand: { increment: change } },
    });
    if (count === 1) continue;
    const lot = toLot(await tx.lot.findUniqueOrThrow({ where: { id } }));
    throw new Refused(overdrawn(lot, lot.onHand, -change));
  }
}

export interface LotFilter {
  kinds?: readonly LotKind[];
  item?: string;
  ids?: readonly string[];
  batchId?: string;
  madeFrom?: PlainDate;
  /** Also lots of which nothing is left. */
  emptied?: boolean;
}

/** Lots with something left (or all, when asked), oldest first. */
export async function loadLots(db: Db | Tx, placeId: string, f: LotFilter = {}): Promise<HeldLot[]> {
  if (f.ids && f.ids.length > 0) {
    const { ids, ...rest } = f;
    const parts = await inParts(ids, async (part) => rowsOf(db, placeId, { ...rest, ids: part }));
    return parts.map(toLot).sort((a, b) => a.madeOn.localeCompare(b.madeOn) || a.code.localeCompare(b.code));
  }
  return (await rowsOf(db, placeId, f)).map(toLot);
}

const rowsOf = (db: Db | Tx, placeId: string, f: LotFilter) =>
  db.lot.findMany({
    where: {
      placeId,
      ...(f.kinds ? { kind: { in: [...f.kinds] } } : {}),
      ...(f.item ? { item: f.item } : {}),
      ...(f.ids ? { id: { in: [...f.ids] } } : {}),
      ...(f.batchId ? { batchId: f.batchId } : {}),
      ...(f.madeFrom ? { madeOn: { gte: f.madeFrom } } : {}),
      ...(f.emptied ? {} : { onHand: { gt: 0 } }),
    },
    orderBy: [{ madeOn: 'asc' }, { code: 'asc' }],
  });

/** These lots, also emptied ones; none for no id. */
export const lotsOfIds = async (db: Db | Tx, placeId: string, ids: readonly string[]): Promise<HeldLot[]> =>
  ids.length === 0 ? [] : loadLots(db, placeId, { ids, emptied: true });

export const lotOfCode = async (db: Db | Tx, placeId: string, code: string): Promise<HeldLot | null> => {
  const row = await db.lot.findUnique({ where: { placeId_code: { placeId, code } } });
  return row ? toLot(row) : null;
};

export type DatedMovement = Movement & { actId: string; day: PlainDate };

/** Every movement that touches one of these lots, in the order written. */
export async function movementsOf(db: Db | Tx, placeId: string, lotIds: readonly string[]): Promise<DatedMovement[]> {
  const found = await inParts(lotIds, (ids) =>
    db.movement.findMany({ where: { placeId, OR: [{ fromLotId: { in: ids } }, { toLotId: { in: ids } }] } }),
  );
  const rows = [...new Map(found.map((row) => [row.id, row])).values()];
  const entered = new Map(
    (
      await inParts(
        rows.map((row) => row.actId),
        (ids) => db.act.findMany({ where: { id: { in: ids } }, select: { id: true, enteredAt: true } }),
      )
    ).map((act) => [act.id, act.enteredAt.getTime()]),
  );
  const written = (row: { actId: string }) => entered.get(row.actId) ?? 0;
  return rows
    .sort((x, y) => written(x) - written(y) || x.actId.localeCompare(y.actId) || x.seq - y.seq)
    .map((row) => ({ ...toMovement(row), actId: row.actId, day: row.day as PlainDate }));
}

/** Numbers of the jars or packs still there in each lot. */
export async function piecesOf(
  db: Db | Tx,
  placeId: string,
  lotIds: readonly string[],
): Promise<Map<string, number[]>> {
  const movements = await movementsOf(db, placeId, lotIds);
  return new Map(lotIds.map((id) => [id, piecesHere(pieceStates(id, movements))]));
}

/** All movements of a span of days, oldest first, with the kind of act that made them. */
export async function movementsBetween(
  db: Db | Tx,
  placeId: string,
  from: PlainDate,
  to: PlainDate,
): Promise<(DatedMovement & { kind: string })[]> {
  const day = { gte: from, lte: to };
  const [rows, acts] = await Promise.all([
    db.movement.findMany({ where: { placeId, day }, orderBy: [{ day: 'asc' }, { actId: 'asc' }, { seq: 'asc' }] }),
    db.act.findMany({ where: { placeId, day }, select: { id: true, kind: true } }),
  ]);
  const kinds = new Map(acts.map((act) => [act.id, act.kind]));
  return rows.map((row) => ({
    ...toMovement(row),
    actId: row.actId,
    day: row.day as PlainDate,
    kind: kinds.get(row.actId) ?? '',
  }));
}

/** What left for these sinks in a span of days, net of what was put right: pieces by recipe, and the first day on record in it. */
export async function leftByRecipe(
  db: Db | Tx,
  placeId: string,
  q: { from: PlainDate; to: PlainDate; sinks: readonly string[] },
): Promise<{ pieces: Map<string, number>; firstDay: PlainDate | null }> {
  const day = { gte: q.from, lte: q.to };
  const sinks = { in: [...q.sinks] };
  const [lots, out, back, first] = await Promise.all([
    db.lot.findMany({
      where: { placeId, recipeId: { not: null }, unit: { not: 'g' } },
      select: { id: true, recipeId: true },
    }),
    db.movement.groupBy({ by: ['fromLotId'], where: { placeId, day, toSink: sinks }, _sum: { qty: true } }),
    db.movement.groupBy({ by: ['toLotId'], where: { placeId, day, fromSink: sinks }, _sum: { qty: true } }),
    db.movement.findFirst({ where: { placeId, day }, orderBy: { day: 'asc' }, select: { day: true } }),
  ]);
  const recipeOf = new Map(lots.map((l) => [l.id, l.recipeId as string]));
  const pieces = new Map<string, number>();
  const add = (lotId: string | null, qty: number | null) => {
    const recipe = recipeOf.get(lotId ?? '');
    if (recipe && qty) pieces.set(recipe, (pieces.get(recipe) ?? 0) + qty);
  };
  for (const m of out) add(m.fromLotId, m._sum.qty);
  for (const m of back) add(m.toLotId, -(m._sum.qty ?? 0));
  return { pieces, firstDay: (first?.day as PlainDate | undefined) ?? null };
}

const CHUNK = 300;
async function inChunks<T>(rows: T[], write: (part: T[]) => Promise<unknown>): Promise<void> {
  for (let i = 0; i < rows.length; i += CHUNK) await write(rows.slice(i, i + CHUNK));
}

/**
 * Writes many entries that were posted to a book in memory. `known` are the lots the database had before: they are
 * brought to the book's balance and facts, all others are created with theirs.
 */
export async function writeEntries(
  tx: Tx,
  placeId: string,
  entries: readonly Entry[],
  book: Book,
  known: ReadonlySet<string>,
  enteredAt: Date,
): Promise<void> {
  const first = (await nextEnteredAt(tx, placeId, enteredAt)).getTime();
  await inChunks(
    entries.map((e, i) => fromAct(placeId, e.act, {}, new Date(first + i))),
    (data) => tx.act.createMany({ data }),
  );
  for (const e of entries) for (const b of e.batches ?? []) await createBatch(tx, placeId, b);
  const touched = new Set(
    entries.flatMap((e) => [
      ...e.movements.flatMap((m) => [m.from, m.to]).flatMap((a) => ('lot' in a ? [a.lot] : [])),
      ...e.changes.map((c) => c.lotId),
    ]),
  );
  const lots = [...new Set([...touched, ...entries.flatMap((e) => e.lots.map((l) => l.id))])].map(
    (id) => book.lots.get(id) as HeldLot,
  );
  await inChunks(
    lots.filter((l) => !known.has(l.id)).map(({ onHand, ...lot }) => fromLot(placeId, lot, onHand)),
    (data) => tx.lot.createMany({ data }),
  );
  for (const { id, onHand, seal, address, roomId, process, hold, details } of lots.filter((l) => known.has(l.id)))
    await tx.lot.update({
      where: { id },
      data: { onHand, seal, address, roomId, process, hold, details: details as object },
    });
  await inChunks(
    entries.flatMap((e) => e.movements.map((m, seq) => fromMovement(placeId, e.act, m, seq))),
    (data) => tx.movement.createMany({ data }),
  );
  for (const e of entries) for (const change of e.batchChanges ?? []) await changeBatch(tx, change);
  const readings = entries.flatMap((e) =>
    (e.readings ?? []).map((r) => ({ ...r, placeId, actId: e.act.id, at: new Date(r.at) })),
  );
  await inChunks(readings, (data) => tx.reading.createMany({ data }));
}

/** Rebuilds every kept balance from the movements; returns the codes that had drifted (there should be none). */
export async function rebuildBalances(db: Db, placeId: string): Promise<string[]> {
  return db.$transaction(async (tx) => {
    await lockPlace(tx, placeId);
    const lots = await loadLots(tx, placeId, { emptied: true });
    const units = new Map(lots.map((l) => [l.id, l.unit]));
    const rows = await tx.movement.findMany({ where: { placeId } });
    const sums = balanceChanges(rows.map(toMovement), (id) => units.get(id) as LotUnit);
    const drifted = lots.filter((l) => (sums.get(l.id) ?? 0) !== l.onHand);
    for (const l of drifted) await tx.lot.update({ where: { id: l.id }, data: { onHand: sums.get(l.id) ?? 0 } });
    return drifted.map((l) => l.code);
  });
}
