/** The pantry's question: what is on which shelf, and what else is kept where. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { addressFor, shelfHolds, shelfTaken } from '#lib/ledger/shelf-room.ts';
import { loadLots, piecesOf } from '#lib/store/ledger-store.ts';
import type { JarKind, StoreRoom } from '#lib/store/place.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

export interface PantryLine {
  line: string;
  slug: string;
  foodId: string;
  kinds: { code: string; label: string; count: number }[];
  oldest: PlainDate;
  lots: {
    id: string;
    code: string;
    count: number;
    address: string | null;
    madeOn: PlainDate;
    bestBefore: PlainDate | null;
    seal: string | null;
    process: string | null;
    hold: string | null;
  }[];
  onHand: number;
}
export interface PantryShelf {
  address: string;
  widthMm: number;
  depthMm: number;
  clearMm: number;
  jars: {
    line: string;
    slug: string;
    foodId: string;
    kind: { code: string; pitchMm: number; heightMm: number };
    count: number;
  }[];
}
export interface PantryView {
  shelves: PantryShelf[];
  floor: { line: string; slug: string; count: number }[];
  lines: PantryLine[];
  cold: {
    room: string;
    line: string;
    slug: string;
    count: number;
    unit: string;
    bestBefore: PlainDate | null;
    grams: number | null;
  }[];
  jars: number;
  /** Half-pints the shelves still have room for. */
  roomFor: number;
  waiting: number;
}

export const lineSlug = (line: string): string =>
  line
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
const FOOD_OF_CROP = (ctx: Context, lot: HeldLot): string =>
  lot.foodId ?? foodOfRecipe(lot) ?? ctx.place.crops.find((c) => c.id === lot.cropId)?.foodId ?? '';
const foodOfRecipe = (lot: HeldLot): string | null =>
  typeof lot.details.foodId === 'string' ? lot.details.foodId : null;

export async function readPantry(ctx: Context): Promise<PantryView> {
  const lots = await loadLots(ctx.db, ctx.place.id, { kinds: ['jars', 'cold-jars', 'frozen', 'dried'] });
  const jars = lots.filter((l) => l.kind === 'jars');
  const room = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const kinds = new Map(ctx.place.jarKinds.map((k) => [k.code, k]));
  const shelved = jars.filter((l) => l.address && l.address !== 'floor');
  return {
    shelves: room ? shelvesOf(ctx, room, shelved, kinds) : [],
    floor: jars
      .filter((l) => l.address === 'floor')
      .map((l) => ({ line: l.label, slug: lineSlug(l.label), count: l.onHand })),
    lines: linesOf(
      ctx,
      lots.filter((l) => l.unit !== 'g'),
      kinds,
    ),
    cold: coldOf(
      ctx,
      lots.filter((l) => l.kind !== 'jars'),
    ),
    jars: jars.reduce((n, l) => n + l.onHand, 0),
    roomFor: room ? roomForHalfPints(room, shelved, kinds) : 0,
    waiting: jars.filter((l) => l.seal === 'waiting').reduce((n, l) => n + l.onHand, 0),
  };
}

/** Cold and dry stock by room and line, the earliest best-before first. */
function coldOf(ctx: Context, lots: HeldLot[]): PantryView['cold'] {
  const rows = new Map<string, PantryView['cold'][number]>();
  for (const l of lots) {
    const room = ctx.place.rooms.find((r) => r.id === l.roomId)?.label ?? l.address ?? 'no place given';
    const grams = l.unit === 'g' ? l.onHand : null;
    const known = rows.get(`${room} ${l.label} ${l.unit}`);
    if (!known)
      rows.set(`${room} ${l.label} ${l.unit}`, {
        room,
        line: l.label,
        slug: lineSlug(l.label),
        count: l.onHand,
        unit: l.unit,
        bestBefore: l.bestBefore,
        grams,
      });
    else {
      known.count += l.onHand;
      if (grams !== null) known.grams = (known.grams ?? 0) + grams;
      if (l.bestBefore && (!known.bestBefore || l.bestBefore < known.bestBefore)) known.bestBefore = l.bestBefore;
    }
  }
  return [...rows.values()].sort(
    (x, y) => x.room.localeCompare(y.room) || (x.bestBefore ?? '9').localeCompare(y.bestBefore ?? '9'),
  );
}

/** Addresses of a shelf room, bay by bay. */
export const addressesOf = (room: StoreRoom): string[] =>
  Array.from({ length: room.bays ?? 0 }, (_, b) =>
    Array.from({ length: room.shelvesPerBay ?? 0 }, (_, s) => `B${b + 1}-S${s + 1}`),
  ).flat();
const sizeOf = (room: StoreRoom) => ({
  widthMm: room.widthMm ?? 900,
  depthMm: room.depthMm ?? 300,
  clearMm: room.clearMm ?? 230,
});

/** Shelf by shelf from the top, the bays side by side as they stand in the room. */
function shelvesOf(ctx: Context, room: StoreRoom, lots: HeldLot[], kinds: Map<string, JarKind>): PantryShelf[] {
  const asSeen = [...addressesOf(room)].sort(
    (a, b) => (a.split('-')[1] as string).localeCompare(b.split('-')[1] as string) || a.localeCompare(b),
  );
  return asSeen.map((address) => {
    const here = new Map<string, PantryShelf['jars'][number]>();
    for (const lot of lots.filter((l) => l.address === address)) {
      const kind = kinds.get(lot.item ?? '');
      if (!kind) continue;
      const key = `${lot.label} ${kind.code}`;
      const known = here.get(key);
      if (known) known.count += lot.onHand;
      else
        here.set(key, {
          line: lot.label,
          slug: lineSlug(lot.label),
          foodId: FOOD_OF_CROP(ctx, lot),
          kind,
          count: lot.onHand,
        });
    }
    return { address, ...sizeOf(room), jars: [...here.values()] };
  });
}

function linesOf(ctx: Context, lots: HeldLot[], kinds: Map<string, JarKind>): PantryLine[] {
  const lines = new Map<string, HeldLot[]>();
  for (const lot of lots) lines.set(lot.label, [...(lines.get(lot.label) ?? []), lot]);
  return [...lines.entries()]
    .map(([line, of]): PantryLine => {
      const counts = new Map<string, number>();
      for (const l of of) counts.set(l.item ?? l.unit, (counts.get(l.item ?? l.unit) ?? 0) + l.onHand);
      return {
        line,
        slug: lineSlug(line),
        foodId: FOOD_OF_CROP(ctx, of[0] as HeldLot),
        kinds: [...counts.entries()].map(([code, count]) => ({ code, label: kinds.get(code)?.label ?? code, count })),
        oldest: (of[0] as HeldLot).madeOn,
        lots: of.map((l) => ({
          id: l.id,
          code: l.code,
          count: l.onHand,
          address: l.address,
          madeOn: l.madeOn,
          bestBefore: l.bestBefore,
          seal: l.seal,
          process: l.process,
          hold: l.hold,
        })),
        onHand: of.reduce((n, l) => n + l.onHand, 0),
      };
    })
    .sort((a, b) => a.line.localeCompare(b.line));
}

function roomForHalfPints(room: StoreRoom, lots: HeldLot[], kinds: Map<string, JarKind>): number {
  const half = kinds.get('HP');
  if (!half) return 0;
  const taken = shelfTaken(lots, sizeOf(room), kinds);
  const whole = shelfHolds(sizeOf(room), half);
  return addressesOf(room).reduce((n, a) => n + Math.max(0, Math.floor(whole * (1 - (taken.get(a) ?? 0)))), 0);
}

/** Where a batch's jars would go: the line's own shelf where there is room, else the emptiest, else the floor. */
export async function suggestAddress(ctx: Context, lot: HeldLot): Promise<{ suggested: string; addresses: string[] }> {
  const room = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const kind = ctx.place.jarKinds.find((k) => k.code === lot.item);
  if (!room || !kind) return { suggested: 'floor', addresses: ['floor'] };
  const jars = (await loadLots(ctx.db, ctx.place.id, { kinds: ['jars'], emptied: true })).filter(
    (l) => l.address !== null,
  );
  const wanted = [
    ...new Set(
      jars
        .filter((l) => l.label === lot.label)
        .map((l) => l.address as string)
        .reverse(),
    ),
  ];
  const taken = shelfTaken(
    jars.filter((l) => l.onHand > 0),
    sizeOf(room),
    new Map(ctx.place.jarKinds.map((k) => [k.code, k])),
  );
  const all = addressesOf(room);
  return { suggested: addressFor(lot.onHand, kind, wanted, all, taken, sizeOf(room)), addresses: [...all, 'floor'] };
}

export interface LineView extends PantryLine {
  pieces: {
    lot: string;
    code: string;
    piece: number;
    address: string | null;
    madeOn: PlainDate;
    mayLeave: boolean;
    why: string | null;
  }[];
}

/** One line with its numbered jars, oldest first. */
export async function readLine(ctx: Context, slug: string): Promise<LineView | null> {
  const lots = (await loadLots(ctx.db, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'] })).filter(
    (l) => lineSlug(l.label) === slug && l.unit !== 'g',
  );
  if (lots.length === 0) return null;
  const line = linesOf(ctx, lots, new Map(ctx.place.jarKinds.map((k) => [k.code, k])))[0] as PantryLine;
  const pieces = await piecesOf(
    ctx.db,
    ctx.place.id,
    lots.map((l) => l.id),
  );
  return {
    ...line,
    pieces: lots.flatMap((l) =>
      (pieces.get(l.id) ?? []).map((piece) => ({
        lot: l.id,
        code: `${l.code}/${String(piece).padStart(2, '0')}`,
        piece,
        address: l.address,
        madeOn: l.madeOn,
        mayLeave: leaves(l) === null,
        why: leaves(l),
      })),
    ),
  };
}

/** Why a jar may not be taken, or null. */
export const leaves = (lot: HeldLot): string | null =>
  lot.hold ? `on hold: ${lot.hold}` : lot.seal === 'waiting' ? 'its seal has not been checked yet' : null;
