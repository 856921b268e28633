/** What one jar that looks wrong says of its batch: its sisters, where each of them is, who is to be told, and whether it is held. */
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import { pieceCode } from '#lib/ledger/pieces.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { SPOILAGE_SIGNS, SPOILED_JAR } from '#lib/reference/spoilage-signs.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { movementsOf } from '#lib/store/ledger-store.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { isWithPeople, type JarPlace, jarRows, lotOf, placesOf, placesText } from './read-recall.ts';
import { splitCode } from './read-trace.ts';
import { allReports, lotsOfBatch, reportsOf } from './report-jar.ts';

export interface SuspectView {
  /** Null where only the lot is known: which of its jars is still to be said. */
  jar: string | null;
  lot: string;
  line: string;
  madeOn: string;
  batch: string | null;
  /** Where this jar is by the book. */
  place: string | null;
  /** The sign this jar was reported for. */
  sign: string | null;
  /** Jars of the batch that were reported, with their sign. */
  reported: { jar: string; sign: string; day: string }[];
  sisters: JarPlace[];
  /** "2 on B2-S2, 1 given, 1 sold". */
  where: string;
  /** Jars that went to somebody: given to whom, sold where and when. */
  calls: { where: string; jars: string[] }[];
  /** Where those that are here stand. */
  here: { where: string; jars: string[] }[];
  held: string | null;
  /** Other batches that were in the same canner load. */
  sameLoad: string[];
  signs: { id: string; name: string; look: string }[];
  signSource: string;
  rule: string;
}

const NAMES: ReadonlyMap<string, string> = new Map(SPOILAGE_SIGNS.map((s) => [s.id, s.name]));
const signOf = (id: string): string => NAMES.get(id) ?? id;

/** Null when nothing kept by the jar bears the code. */
export async function readSuspect(ctx: Context, code: string): Promise<SuspectView | null> {
  const lot = await lotOf(ctx, ctx.db, code);
  if (!lot || (lot.unit !== 'jar' && lot.unit !== 'pack')) return null;
  const batch = lot.batchId ? (await loadBatches(ctx.db, ctx.place.id, { ids: [lot.batchId] }))[0] : undefined;
  const lots = await lotsOfBatch(ctx, ctx.db, lot);
  const pieces = lots.filter((l) => l.unit === 'jar' || l.unit === 'pack');
  const movements = await movementsOf(
    ctx.db,
    ctx.place.id,
    pieces.map((l) => l.id),
  );
  const rows = await jarRows(ctx, ctx.db, pieces, movements);
  const reports = await reportsOf(ctx, ctx.db, lots);
  const [, piece] = splitCode(code.trim().toUpperCase());
  const jar = piece === null ? null : pieceCode(lot.code, piece);
  const sisters = rows.filter((r) => r.code !== jar);
  const spoiled = new Set(reports.map((r) => r.jar));
  const left = sisters.filter((r) => !spoiled.has(r.code));
  const sign = reports.find((r) => r.jar === jar)?.sign;
  return {
    jar,
    lot: lot.code,
    line: lot.label,
    madeOn: longDate(lot.madeOn),
    batch: batch?.code ?? null,
    place: rows.find((r) => r.code === jar)?.where ?? null,
    sign: sign ? signOf(sign) : null,
    reported: reports.map((r) => ({ jar: r.jar, sign: signOf(r.sign), day: longDate(r.day) })),
    sisters,
    where: placesText(sisters),
    calls: byPlace(left.filter((r) => isWithPeople(r.where))),
    here: byPlace(left.filter((r) => r.at === 'here')),
    held: lots.find((l) => l.hold)?.hold ?? null,
    sameLoad: batch ? await sameLoad(ctx, batch) : [],
    signs: SPOILAGE_SIGNS.map(({ id, name, look }) => ({ id, name, look })),
    signSource: SOURCES[SPOILAGE_SIGNS[0].source].title,
    rule: SPOILED_JAR.text,
  };
}

const byPlace = (rows: readonly JarPlace[]): SuspectView['calls'] =>
  placesOf(rows).map(({ where }) => ({ where, jars: rows.filter((r) => r.where === where).map((r) => r.code) }));

/** Batches lifted out of the canner by the same act. */
async function sameLoad(ctx: Context, batch: BatchRecord): Promise<string[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['process'], from: batch.day });
  const loads = acts
    .filter((a) => a.payload.step === 'out')
    .map((a) => (Array.isArray(a.payload.codes) ? a.payload.codes.map(String) : []));
  return (loads.find((codes) => codes.includes(batch.code)) ?? []).filter((c) => c !== batch.code);
}

/** Jars reported so far, the newest first. */
export async function readReports(ctx: Context): Promise<{ jar: string; sign: string; day: string }[]> {
  return (await allReports(ctx)).reverse().map((r) => ({ jar: r.jar, sign: signOf(r.sign), day: longDate(r.day) }));
}
