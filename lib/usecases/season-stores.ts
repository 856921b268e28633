/** Where jars and packs stand, what they are put up in, and the lids, in the forecast's units (cm of shelf front, litres). */
import type { ContainerSpec, LidSpec, StoreSpec } from '#lib/forecast/scenario.ts';
import { perColumn, USABLE_SHARE } from '#lib/forecast/space.ts';
import type { JarKind, StoreRoom } from '#lib/store/place.ts';
import type { SeasonLine } from './season-lines.ts';
import type { SeasonSnapshot } from './season-snapshot.ts';

export type StoreKind = 'shelf' | 'freezer' | 'fridge' | 'dry';
export interface SeasonStore extends StoreSpec {
  kind: StoreKind;
  label: string;
  /** How the room came about, in words. */
  basis: string;
}

/** The season is simulated as if jars could be bought when short: so many are lent, and what is drawn of them is to be bought. */
export const LENT_JARS = 10_000;
const KINDS: readonly StoreKind[] = ['shelf', 'freezer', 'fridge', 'dry'];
export const storeOfKind: Record<SeasonLine['kind'], StoreKind> = {
  jars: 'shelf',
  frozen: 'freezer',
  dried: 'dry',
  'cold-jars': 'fridge',
};
const NAMES: Record<StoreKind, string> = {
  shelf: 'the shelf',
  freezer: 'the freezer',
  fridge: 'the fridge',
  dry: 'the dry cupboard',
};

const roomsOf = (s: SeasonSnapshot, kind: StoreKind): StoreRoom[] => s.place.rooms.filter((r) => r.kind === kind);
const SHELF = { widthMm: 900, depthMm: 320, clearMm: 230 };
const shelfSize = (room: StoreRoom | undefined) => ({
  widthMm: room?.widthMm ?? SHELF.widthMm,
  depthMm: room?.depthMm ?? SHELF.depthMm,
  clearMm: room?.clearMm ?? SHELF.clearMm,
});

/** One store for each kind of room; a kind the place does not have gets no capacity and is never called full. */
export function seasonStores(s: SeasonSnapshot): SeasonStore[] {
  return KINDS.map((kind): SeasonStore => {
    const rooms = roomsOf(s, kind);
    const label = rooms.length === 1 ? `the ${(rooms[0] as StoreRoom).label.toLowerCase()}` : NAMES[kind];
    if (kind === 'shelf') {
      const boards = rooms.reduce((n, r) => n + (r.bays ?? 0) * (r.shelvesPerBay ?? 0), 0);
      const cm = rooms.reduce(
        (sum, r) => sum + ((r.bays ?? 0) * (r.shelvesPerBay ?? 0) * shelfSize(r).widthMm) / 10,
        0,
      );
      return {
        id: kind,
        kind,
        label: rooms.length > 0 ? label : 'the shelf',
        capacity: cm,
        unit: 'cm',
        basis: `${boards} shelves, ${cm} cm of front`,
      };
    }
    const litres = rooms.reduce((sum, r) => sum + (r.litres ?? 0), 0);
    const others = otherLitres(s, rooms);
    const capacity = Math.max(0, litres * USABLE_SHARE - others);
    const less = others > 0 ? `, less ${others.toFixed(0)} l of other things in it` : '';
    return {
      id: kind,
      kind,
      label,
      capacity,
      unit: 'l',
      hard: kind === 'freezer',
      basis: `${litres} l, of which ${USABLE_SHARE * 10} parts in 10 can be filled (from memory)${less}`,
    };
  });
}

/** Litres of what stands in a cold box besides lines: packs at half a litre, the rest a litre a kilogram. Estimate. */
function otherLitres(s: SeasonSnapshot, rooms: readonly StoreRoom[]): number {
  const lines = new Set(Object.keys(storeOfKind));
  const others = s.lots.filter(
    (l) => l.onHand > 0 && rooms.some((r) => r.id === l.roomId) && besidesLines(l.kind, lines, l.unit),
  );
  const cold = rooms.some((r) => r.kind !== 'dry');
  return cold
    ? others.reduce((sum, l) => sum + (l.unit === 'g' || l.unit === 'ml' ? l.onHand / 1000 : l.onHand / 2), 0)
    : 0;
}
const besidesLines = (kind: string, lines: ReadonlySet<string>, unit: string): boolean =>
  !lines.has(kind) || unit === 'g';

export interface LineRoom {
  perColumn: number;
  perUnit: number;
}

/** Room one jar or pack takes. On a shelf the columns are those of a whole board, so that full boards add up. */
export function roomOfJar(s: SeasonSnapshot, line: Pick<SeasonLine, 'item' | 'kind'>): LineRoom {
  const kind = jarKind(s, line.item);
  if (storeOfKind[line.kind] !== 'shelf') return { perColumn: 1, perUnit: (kind?.fillMl ?? 500) / 1000 };
  const shelf = shelfSize(roomsOf(s, 'shelf')[0]);
  const pitchMm = kind?.pitchMm ?? 83;
  const column = perColumn(
    { diameterCm: pitchMm / 10, heightCm: (kind?.heightMm ?? 130) / 10 },
    { depthCm: shelf.depthMm / 10, heightCm: shelf.clearMm / 10 },
  );
  const across = Math.max(1, Math.floor(shelf.widthMm / pitchMm));
  return { perColumn: Math.max(1, column.perColumn), perUnit: shelf.widthMm / 10 / across };
}

export const jarKind = (s: SeasonSnapshot, item: string): JarKind | undefined =>
  s.place.jarKinds.find((k) => k.code === item);

/** Jars and packs by kind with their empties; bags and tubs of no counted kind are never short. */
export function seasonContainers(s: SeasonSnapshot, items: readonly string[]): ContainerSpec[] {
  return items.map((item): ContainerSpec => {
    const kind = jarKind(s, item);
    return {
      id: item,
      empties:
        s.lots.filter((l) => l.kind === 'empties' && l.item === item).reduce((n, l) => n + l.onHand, 0) + LENT_JARS,
      lid: kind?.canning ? 0 : -1,
      diameterCm: (kind?.pitchMm ?? 83) / 10,
      heightCm: (kind?.heightMm ?? 130) / 10,
      ml: kind?.fillMl ?? 500,
      ...(kind?.canning ? {} : { unlimited: true }),
    };
  });
}

/** Good lids on hand: those over five years old do not count. */
export const seasonLids = (s: SeasonSnapshot): LidSpec[] => [
  {
    id: 'lid-regular',
    stock: s.lots.filter((l) => l.kind === 'lids' && l.item === 'lid-regular').reduce((n, l) => n + l.onHand, 0),
  },
];
export const sugarOnHandG = (s: SeasonSnapshot): number =>
  s.lots.filter((l) => l.item === 'sugar' && l.kind === 'supply').reduce((g, l) => g + l.onHand, 0);

/** Front of one shelf of the first shelf room, cm. */
export const boardCm = (s: SeasonSnapshot): number => shelfSize(roomsOf(s, 'shelf')[0]).widthMm / 10;
export const largestFreezerL = (s: SeasonSnapshot): number | null => {
  const litres = Math.max(0, ...roomsOf(s, 'freezer').map((r) => r.litres ?? 0));
  return litres > 0 ? litres : null;
};
