/** Batches and readings. */
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Batch, Reading } from '#prisma/generated/sqlite/client.ts';
import type { Db, Tx } from './database/open-database.ts';

const toBatch = (row: Batch): BatchRecord => {
  const { placeId: _, startedAt, filledAt, outAt, ...rest } = row;
  return {
    ...rest,
    startedAt: startedAt?.toISOString() ?? null,
    filledAt: filledAt?.toISOString() ?? null,
    outAt: outAt?.toISOString() ?? null,
  } as unknown as BatchRecord;
};
const toReading = ({ placeId: _p, actId: _a, at, ...row }: Reading): ReadingRecord =>
  ({ ...row, at: at.toISOString() }) as unknown as ReadingRecord;

export const batchOfCode = async (db: Db | Tx, placeId: string, code: string): Promise<BatchRecord | null> => {
  const row = await db.batch.findUnique({ where: { placeId_code: { placeId, code } } });
  return row ? toBatch(row) : null;
};

export async function loadBatches(
  db: Db | Tx,
  placeId: string,
  f: { states?: string[]; since?: PlainDate; ids?: string[]; take?: number } = {},
): Promise<BatchRecord[]> {
  const rows = await db.batch.findMany({
    where: {
      placeId,
      ...(f.states ? { state: { in: f.states } } : {}),
      ...(f.since ? { day: { gte: f.since } } : {}),
      ...(f.ids ? { id: { in: f.ids } } : {}),
    },
    orderBy: [{ day: 'desc' }, { code: 'asc' }],
    ...(f.take ? { take: f.take } : {}),
  });
  return rows.map(toBatch);
}

export const batchCodesOfDay = async (db: Db | Tx, placeId: string, day: PlainDate): Promise<Set<string>> =>
  new Set((await db.batch.findMany({ where: { placeId, day }, select: { code: true } })).map((b) => b.code));

export async function readingsOf(
  db: Db | Tx,
  placeId: string,
  f: { batchId?: string; kind?: string; day?: PlainDate; kitchenId?: string },
): Promise<ReadingRecord[]> {
  const rows = await db.reading.findMany({
    where: {
      placeId,
      ...(f.batchId ? { batchId: f.batchId } : {}),
      ...(f.kind ? { kind: f.kind } : {}),
      ...(f.day ? { day: f.day } : {}),
      ...(f.kitchenId ? { kitchenId: f.kitchenId } : {}),
    },
    orderBy: { at: 'asc' },
  });
  return rows.map(toReading);
}
