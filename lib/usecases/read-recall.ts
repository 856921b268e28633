/** One step forward, all the way: from a lot that is doubted to every jar it went into, and where each of them is. */
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { lineage, reach } from '#lib/ledger/trace.ts';
import { isPlaced, type TracedJar, type Whereabouts, whereabouts } from '#lib/ledger/whereabouts.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { type DatedMovement, loadLots, lotOfCode, movementsOf } from '#lib/store/ledger-store.ts';
import { mass } from '#lib/units/format.ts';
import { isPlainDate, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { splitCode } from './read-trace.ts';

export interface RecallView {
  code: string;
  label: string;
  batches: { code: string; line: string; day: string; jars: number }[];
  jars: { code: string; line: string; at: Whereabouts['at']; where: string; placed: boolean }[];
  /** Here, given, sold, eaten, thrown away: how many of each. */
  sums: { what: string; count: number }[];
  /** How many are where: what is here first, then given, sold and gone. */
  places: { where: string; count: number; placed: boolean }[];
  /** Jars as counted one by one, and as filled: they must agree. */
  total: number;
  made: number;
  /** Whole per cent, rounded down. */
  placedPercent: number;
  /** Held by weight: partial jars, set-asides, what is left of the lot itself. */
  byWeight: { code: string; label: string; left: string }[];
  /** Lots of the circle with something left that are not on hold. */
  free: number;
  held: string[];
}

const PIECES = ['jars', 'cold-jars', 'frozen', 'dried'];
const isCounted = (l: HeldLot): boolean => PIECES.includes(l.kind) && l.unit !== 'g';
export type JarPlace = RecallView['jars'][number];

/** The circle around a lot; a jar's code stands for its lot. Null when nothing bears the code. */
export async function readRecall(ctx: Context, code: string): Promise<RecallView | null> {
  const lot = await lotOf(ctx, ctx.db, code);
  if (!lot) return null;
  const { lots, movements } = await circleOf(ctx, ctx.db, lot);
  const pieces = lots.filter(isCounted);
  const inCircle = new Set(pieces.map((l) => l.id));
  const rows = await jarRows(ctx, ctx.db, pieces, movements);
  const batches = await loadBatches(ctx.db, ctx.place.id, {
    ids: [...new Set(pieces.flatMap((l) => (l.batchId ? [l.batchId] : [])))],
  });
  const filledInto = (batchId: string) => madeOf(movements, inCircle, new Set([panLotId(batchId)]));
  const placed = rows.filter((r) => r.placed).length;
  return {
    code: lot.code,
    label: lot.label,
    batches: batches
      .map((b) => ({ code: b.code, line: b.label, day: b.day, jars: filledInto(b.id) }))
      .sort((a, b) => a.code.localeCompare(b.code)),
    jars: rows,
    sums: sumsOf(rows),
    places: placesOf(rows),
    total: rows.length,
    made: madeOf(movements, inCircle, null),
    placedPercent: rows.length === 0 ? 100 : Math.floor((100 * placed) / rows.length),
    byWeight: lots
      .filter((l) => l.unit === 'g' && l.kind !== 'batch' && l.onHand > 0)
      .map((l) => ({ code: l.code, label: l.label, left: mass(l.onHand) })),
    free: lots.filter((l) => l.kind !== 'batch' && l.onHand > 0 && !l.hold).length,
    held: lots.filter((l) => l.hold).map((l) => l.code),
  };
}

export async function lotOf(ctx: Context, db: Db | Tx, code: string): Promise<HeldLot | null> {
  const typed = code.trim();
  const [lotCode] = splitCode(typed.toUpperCase());
  for (const c of [typed, typed.toUpperCase(), lotCode]) {
    const found = c ? await lotOfCode(db, ctx.place.id, c) : null;
    if (found) return found;
  }
  return null;
}

const touches = (m: DatedMovement, id: string): boolean =>
  (isLot(m.from) && m.from.lot === id) || (isLot(m.to) && m.to.lot === id);

/**
 * The lot and everything it went into, generation by generation, with the movements between. Lids and glass go to no lot:
 * the jars filled by the same act stand for them.
 */
export async function circleOf(
  ctx: Context,
  db: Db | Tx,
  lot: HeldLot,
): Promise<{ lots: HeldLot[]; movements: DatedMovement[] }> {
  const seen = new Map<string, DatedMovement>();
  let layer = [lot.id, ...(await filledBy(ctx, db, lot))];
  const starts = [...layer];
  const known = new Set(layer);
  while (layer.length > 0) {
    const found = await movementsOf(db, ctx.place.id, layer);
    for (const m of found) seen.set(`${m.actId} ${JSON.stringify([m.from, m.to, m.piece, m.qty])}`, m);
    layer = [
      ...new Set(found.flatMap((m) => (isLot(m.from) && isLot(m.to) && known.has(m.from.lot) ? [m.to.lot] : []))),
    ].filter((id) => !known.has(id));
    for (const id of layer) known.add(id);
  }
  const movements = [...seen.values()];
  const { children } = lineage([{ movements }]);
  const ids = [...new Set(starts.flatMap((id) => [id, ...reach(id, children)]))];
  return { lots: await loadLots(db, ctx.place.id, { ids, emptied: true }), movements };
}

async function filledBy(ctx: Context, db: Db | Tx, lot: HeldLot): Promise<string[]> {
  if (lot.kind !== 'lids' && lot.kind !== 'empties') return [];
  const acts = [...new Set((await movementsOf(db, ctx.place.id, [lot.id])).map((m) => m.actId))];
  const fills = (await loadActs(db, ctx.place.id, { ids: acts })).filter((a) => a.kind === 'fill');
  return fills.flatMap((a) => a.movements.flatMap((m) => (isLot(m.from) && isLot(m.to) ? [m.to.lot] : [])));
}

/** Jars filled into lots of the circle: from these pans, or from anywhere outside it. */
function madeOf(
  movements: readonly DatedMovement[],
  circle: ReadonlySet<string>,
  pans: ReadonlySet<string> | null,
): number {
  const into = movements.filter((m) => {
    if (!isLot(m.to) || !circle.has(m.to.lot) || m.piece !== null) return false;
    if (pans) return isLot(m.from) && pans.has(m.from.lot);
    return !(isLot(m.from) && circle.has(m.from.lot));
  });
  return into.reduce((n, m) => n + m.qty, 0);
}

/** Every numbered jar of these lots and where it is; one that went on into another of them is counted there. */
export async function jarRows(
  ctx: Context,
  db: Db | Tx,
  pieces: readonly HeldLot[],
  movements: readonly DatedMovement[],
): Promise<JarPlace[]> {
  const acts = await loadActs(db, ctx.place.id, { ids: [...new Set(movements.map((m) => m.actId))] });
  const notes = new Map(acts.map((a) => [a.id, a.note]));
  const noted = movements.map((m) => ({ ...m, who: notes.get(m.actId) ?? null }));
  const byId = new Map(pieces.map((l) => [l.id, l]));
  return pieces
    .flatMap((l) =>
      whereabouts(
        l,
        noted.filter((m) => touches(m, l.id)),
      ),
    )
    .filter((j) => j.where.at !== 'lot' || !byId.has(j.where.lot))
    .map((j) => jarRow(ctx, j, byId.get(j.lotId) as HeldLot));
}

const jarRow = (ctx: Context, jar: TracedJar, lot: HeldLot): JarPlace => ({
  code: jar.code,
  line: lot.label,
  at: jar.where.at,
  where: whereText(ctx, jar.where, lot),
  placed: isPlaced(jar.where),
});

function whereText(ctx: Context, w: Whereabouts, lot: HeldLot): string {
  const room = ctx.place.rooms.find((r) => r.id === lot.roomId)?.label.toLowerCase();
  if (w.at === 'here') return lot.address ? `on ${lot.address}` : room ? `in the ${room}` : 'not shelved yet';
  if (w.at === 'lot') return 'moved to another lot';
  const day = isPlainDate(w.day) ? `${shortDate(w.day)} ${w.day.slice(0, 4)}` : w.day;
  if (w.sink === 'sold') return `sold, ${w.who ?? 'where is not written'}, ${day}`;
  if (w.sink === 'given') return w.who ? `given to ${w.who}, ${day}` : `given on ${day}, to whom is not written`;
  return w.sink === 'spoiled' ? 'thrown away' : w.sink;
}

export function placesOf(rows: readonly JarPlace[]): RecallView['places'] {
  const places = new Map<string, RecallView['places'][number]>();
  for (const { where, placed } of rows) {
    const known = places.get(where);
    if (known) known.count += 1;
    else places.set(where, { where, count: 1, placed });
  }
  return [...places.values()].sort(
    (a, b) => groupOf(a.where) - groupOf(b.where) || b.count - a.count || a.where.localeCompare(b.where),
  );
}

const GROUPS: readonly { what: string; test: RegExp }[] = [
  { what: 'here', test: /^(on|in|not shelved|moved)/ },
  { what: 'given', test: /^given/ },
  { what: 'sold', test: /^sold/ },
  { what: 'eaten', test: /^eaten/ },
  { what: 'thrown away', test: /^thrown/ },
];
const groupOf = (where: string): number => {
  const at = GROUPS.findIndex((g) => g.test.test(where));
  return at < 0 ? GROUPS.length : at;
};

/** "2 on B2-S2, 3 given, 1 sold": what is here by its place, the rest by what became of it. */
export const placesText = (rows: readonly JarPlace[]): string =>
  [
    ...placesOf(rows.filter((r) => groupOf(r.where) === 0)).map((p) => `${p.count} ${p.where}`),
    ...sumsOf(rows)
      .filter((s) => s.what !== 'here')
      .map((s) => `${s.count} ${s.what}`),
  ].join(', ');

/** Went to somebody: given, or sold on a day. */
export const isWithPeople = (where: string): boolean => groupOf(where) === 1 || groupOf(where) === 2;

const sumsOf = (rows: readonly JarPlace[]): RecallView['sums'] =>
  [...GROUPS.map((g) => g.what), 'otherwise gone']
    .map((what, i) => ({ what, count: rows.filter((r) => groupOf(r.where) === i).length }))
    .filter((s) => s.count > 0);

export interface DrillLine {
  day: string;
  code: string;
  total: number;
  placedPercent: number;
}

/** Drills written down, the newest first. */
export async function drillsOf(ctx: Context): Promise<DrillLine[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['recall'] });
  return acts.map((a) => ({
    day: a.day,
    code: String(a.payload.code),
    total: Number(a.payload.total),
    placedPercent: Number(a.payload.placedPercent),
  }));
}
