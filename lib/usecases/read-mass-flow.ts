/** The mass pictures: of one batch, and of a season. */
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import { batchFlow, type MassFlow, seasonFlow } from '#lib/ledger/mass-flow.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { loadLots, movementsBetween, movementsOf } from '#lib/store/ledger-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
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

/** Of the calendar year of a day, up to that day. */
export async function readSeasonFlow(ctx: Context, year: number): Promise<MassFlow> {
  const [movements, lots] = await Promise.all([
    movementsBetween(ctx.db, ctx.place.id, plainDate(`${year}-01-01`), plainDate(`${year}-12-31`)),
    loadLots(ctx.db, ctx.place.id, { emptied: true }),
  ]);
  const byId = new Map(lots.map((l) => [l.id, l]));
  return seasonFlow(movements, (id) => byId.get(id));
}
