/** Plans and season forecasts as they were computed: input snapshot, options and result frozen in the row. */

import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Forecast, Plan } from '#prisma/generated/sqlite/client.ts';
import type { Db, Tx } from './database/open-database.ts';

export interface StoredPlan {
  id: string;
  day: PlainDate;
  createdAt: string;
  state: string;
  options: Record<string, unknown>;
  snapshot: unknown;
  result: unknown;
  chosen: boolean;
  solver: string;
}

const toPlan = ({ placeId: _, createdAt, ...row }: Plan): StoredPlan =>
  ({ ...row, createdAt: createdAt.toISOString() }) as StoredPlan;

export async function savePlan(db: Db | Tx, placeId: string, plan: StoredPlan): Promise<void> {
  const data = {
    ...plan,
    placeId,
    createdAt: new Date(plan.createdAt),
    options: plan.options as object,
    snapshot: plan.snapshot as object,
    result: plan.result as object,
  };
  await db.plan.upsert({ where: { id: plan.id }, create: data, update: data });
}
export const loadPlan = async (db: Db | Tx, placeId: string, id: string): Promise<StoredPlan | null> => {
  const row = await db.plan.findFirst({ where: { id, placeId } });
  return row ? toPlan(row) : null;
};
/** The newest plan of a place made on or before a day. */
export const newestPlan = async (db: Db | Tx, placeId: string, day: PlainDate): Promise<StoredPlan | null> => {
  const row = await db.plan.findFirst({
    where: { placeId, day: { lte: day } },
    orderBy: [{ day: 'desc' }, { createdAt: 'desc' }],
  });
  return row ? toPlan(row) : null;
};
/** The plan chosen last on or before a day; newer proposals that nobody chose do not hide it. */
export const planInForce = async (db: Db | Tx, placeId: string, day: PlainDate): Promise<StoredPlan | null> => {
  const row = await db.plan.findFirst({
    where: { placeId, chosen: true, day: { lte: day } },
    orderBy: [{ day: 'desc' }, { createdAt: 'desc' }],
  });
  return row ? toPlan(row) : null;
};
export async function choosePlan(tx: Tx, placeId: string, id: string): Promise<void> {
  await tx.plan.updateMany({ where: { placeId }, data: { chosen: false } });
  await tx.plan.updateMany({ where: { placeId, id }, data: { chosen: true } });
}

export interface StoredForecast {
  id: string;
  day: PlainDate;
  createdAt: string;
  seed: number;
  seasons: number;
  modelVersion: string;
  inputHash: string;
  summary: unknown;
}
const toForecast = ({ placeId: _, createdAt, ...row }: Forecast): StoredForecast =>
  ({ ...row, createdAt: createdAt.toISOString() }) as StoredForecast;

export const forecastOf = async (db: Db, placeId: string, inputHash: string): Promise<StoredForecast | null> => {
  const row = await db.forecast.findUnique({ where: { placeId_inputHash: { placeId, inputHash } } });
  return row ? toForecast(row) : null;
};
export async function saveForecast(db: Db, placeId: string, f: StoredForecast): Promise<void> {
  const data = { ...f, placeId, createdAt: new Date(f.createdAt), summary: f.summary as object };
  await db.forecast.upsert({
    where: { placeId_inputHash: { placeId, inputHash: f.inputHash } },
    create: data,
    update: { summary: f.summary as object },
  });
}
