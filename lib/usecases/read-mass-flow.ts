/** The mass pictures: of one batch, and of a season. */
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import { batchFlow, type MassFlow, seasonFlow } from '#lib/ledger/mass-flow.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { loadLots, movementsBetween, movementsOf } from '#lib/store/ledger-store.ts';
import { plainDate, yearOf } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

/** Of the batch a lot was made in; null where none is on record. */
export async function readBatchFlow(ctx: Context, batchId: string | null): Promise<MassFlow | null> {
  if (!batchId) return null;
  const pan = panLotId(batchId);
  const movements = await movementsOf(ctx.db, ctx.place.id, [pan]);
  if (movements.length === 0) return null;
  const named = movements.flatMap((m) => [m.from, m.to]).flatMap((a) => (isLot(a) ? [a.lot] : []));
  const lots = new Map(
    (await loadLots(ctx.db, ctx.place.id, { ids: [...new Set(named)], emptied: true })).map((l) => [l.id, l]),
  );
  return batchFlow({ id: pan, label: '' }, movements, (id) => lots.get(id));
}

export interface SeasonMass {
  year: number;
  flow: MassFlow;
}

/** Of a calendar year; of the last one with a picking, where none is named and this one has none yet. */
export async function readSeasonFlow(ctx: Context, asked: number | null): Promise<SeasonMass> {
  const year = asked ?? yearOf(ctx.today);
  const flow = await flowOf(ctx, year);
  const picked = flow.links.some((l) => l.from === 'trees');
  if (picked || asked !== null) return { year, flow };
  const before = await flowOf(ctx, year - 1);
  return before.links.length > 0 ? { year: year - 1, flow: before } : { year, flow };
}

async function flowOf(ctx: Context, year: number): Promise<MassFlow> {
  const [movements, lots] = await Promise.all([
    movementsBetween(ctx.db, ctx.place.id, plainDate(`${year}-01-01`), plainDate(`${year}-12-31`)),
    loadLots(ctx.db, ctx.place.id, { emptied: true }),
  ]);
  const byId = new Map(lots.map((l) => [l.id, l]));
  return seasonFlow(movements, (id) => byId.get(id));
}
