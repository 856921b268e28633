/** Cold boxes that have stopped, and what stands in each by the list. An outage lasts while something in it is undecided. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { loadActs, type StoredAct } from '#lib/store/act-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf } from '#lib/store/ledger-store.ts';
import type { StoreRoom } from '#lib/store/place.ts';
import { addDays } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

export interface Outage {
  id: string;
  room: StoreRoom;
  /** Instants; the first is null where nobody knows. */
  failedAt: Date | null;
  foundAt: Date;
  /** Grams in it by the list when it was found. */
  loadG: number;
}

/** A lot in a cold box with the grams of one of its packs (1 where it is held by mass). */
export interface ColdLot {
  lot: HeldLot;
  eachG: number;
  grams: number;
}

/** Long past any hours a cold box keeps. */
const LOOK_BACK_DAYS = 14;

export const coldRooms = (ctx: Context): StoreRoom[] =>
  ctx.place.rooms.filter((r) => r.kind === 'freezer' || r.kind === 'fridge');

/** Every failure of the last fortnight, the newest first. */
export async function loadOutages(ctx: Context, db: Db | Tx = ctx.db): Promise<Outage[]> {
  const acts = await loadActs(db, ctx.place.id, { kinds: ['outage'], from: addDays(ctx.today, -LOOK_BACK_DAYS) });
  return acts.flatMap((a) => outageOf(ctx, a) ?? []);
}

function outageOf(ctx: Context, a: StoredAct): Outage | null {
  const room = ctx.place.rooms.find((r) => r.code === a.payload.room);
  if (!room) return null;
  return {
    id: a.id,
    room,
    failedAt: typeof a.payload.failedAt === 'string' ? new Date(a.payload.failedAt) : null,
    foundAt: new Date(String(a.payload.foundAt)),
    loadG: Number(a.payload.loadG),
  };
}

/** What stands in a room, by weight. */
export const contentsOfRoom = (ctx: Context, db: Db | Tx, roomId: string): Promise<ColdLot[]> =>
  weighed(ctx, db, (l) => l.roomId === roomId);

/** What stands somewhere else by its address, by weight. */
export const contentsAway = (ctx: Context, db: Db | Tx, address: string): Promise<ColdLot[]> =>
  weighed(ctx, db, (l) => l.roomId === null && l.address === address);

async function weighed(ctx: Context, db: Db | Tx, isIn: (l: HeldLot) => boolean): Promise<ColdLot[]> {
  const lots = (await loadLots(db, ctx.place.id)).filter((l) => isIn(l) && l.kind !== 'batch');
  const bare = lots.filter((l) => l.unit !== 'g' && typeof l.details.netG !== 'number');
  const moved = await movementsOf(
    db,
    ctx.place.id,
    bare.map((l) => l.id),
  );
  return lots.map((lot) => {
    const eachG = lot.unit === 'g' ? 1 : typeof lot.details.netG === 'number' ? lot.details.netG : filledG(lot, moved);
    return { lot, eachG, grams: Math.round(eachG * lot.onHand) };
  });
}

/** Grams of a pack whose lot does not say: what came into the lot, over how many. */
function filledG(lot: HeldLot, moved: Awaited<ReturnType<typeof movementsOf>>): number {
  const into = moved.filter((m) => isLot(m.to) && m.to.lot === lot.id);
  const packs = into.reduce((n, m) => n + m.qty, 0);
  return packs > 0 ? into.reduce((g, m) => g + (m.grams ?? 0), 0) / packs : 0;
}

export const gramsOf = (lots: readonly ColdLot[]): number => lots.reduce((g, l) => g + l.grams, 0);

/** Decided on: it stays where it is, frozen again or cold enough all along. */
export const isKept = (lot: HeldLot, outageId: string): boolean => lot.details.keptIn === outageId;

/** What is still to be decided on. */
export const undecided = async (ctx: Context, db: Db | Tx, o: Outage): Promise<ColdLot[]> =>
  (await contentsOfRoom(ctx, db, o.room.id)).filter((c) => !isKept(c.lot, o.id));

/** Failures with something undecided, the newest first. */
export async function openOutages(ctx: Context): Promise<{ outage: Outage; left: ColdLot[] }[]> {
  const found: { outage: Outage; left: ColdLot[] }[] = [];
  for (const outage of await loadOutages(ctx)) {
    const left = await undecided(ctx, ctx.db, outage);
    if (left.length > 0 && !found.some((f) => f.outage.room.id === outage.room.id)) found.push({ outage, left });
  }
  return found;
}
