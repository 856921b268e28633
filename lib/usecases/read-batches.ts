/** Batches on the go and lately made, and one batch with all that belongs to it. */
import { meantToSet } from '#lib/batch/set-of-batch.ts';
import { SEAL_CLOCK, type WayOut, type WhyOut } from '#lib/batch/verdicts.ts';
import { type BatchRecord, JAR_SET, type ReadingRecord } from '#lib/ledger/batch-record.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { batchOfCode, loadBatches, readingsOf } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, piecesOf } from '#lib/store/ledger-store.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type CookTrack, cookTrack } from './cook-track.ts';
import { type FrozenSheet, sheetOf } from './frozen-sheet.ts';
import { trimOfFruit, trimText } from './learn-trim.ts';
import { localClock } from './local-clock.ts';
import { heldByHighPh, waitsForPh } from './ph-hold.ts';
import { PH_STATES } from './ph-log.ts';
import { suggestAddress } from './read-pantry.ts';
import { recipeHere } from './recipes-here.ts';
import { SET_HOURS, SET_WORDS } from './report-set.ts';
import { hoursSinceOut } from './seal-check.ts';
import { type LabelledFigure, shownWith } from './shown-figure.ts';
import { coldUntil, waysOf, whyOut } from './take-out.ts';
import { readUnset, type UnsetView } from './unset.ts';

export interface BatchCard {
  code: string;
  label: string;
  state: BatchRecord['state'];
  day: PlainDate;
}
export interface BatchesView {
  going: BatchCard[];
  /** With the jars and packs that are left of each. */
  done: (BatchCard & { left: { count: number; unit: string }[] })[];
}

export async function readBatches(ctx: Context): Promise<BatchesView> {
  const card = ({ code, label, state, day }: BatchRecord): BatchCard => ({ code, label, state, day });
  const [going, done, lots] = await Promise.all([
    loadBatches(ctx.db, ctx.place.id, { states: ['cooking', 'filled', 'cooling'] }),
    loadBatches(ctx.db, ctx.place.id, { states: ['jarred'], take: 30 }),
    loadLots(ctx.db, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'] }),
  ]);
  return { going: going.map(card), done: done.map((b) => ({ ...card(b), left: leftOf(lots, b.id) })) };
}

/** What is counted by the piece; a partial jar in the fridge is not. */
function leftOf(lots: readonly HeldLot[], batchId: string): { count: number; unit: string }[] {
  const left = new Map<string, number>();
  for (const l of lots)
    if (l.batchId === batchId && (l.unit === 'jar' || l.unit === 'pack'))
      left.set(l.unit, (left.get(l.unit) ?? 0) + l.onHand);
  return [...left].map(([unit, count]) => ({ unit, count }));
}

export interface PhView {
  /** A reading may be logged now. */
  may: boolean;
  /** Jars are on hold for want of a reading. */
  wanted: boolean;
  tooHigh: boolean;
  /** Hours since the jars were filled. */
  hours: number | null;
  readings: { at: string; read: string; pH: number; buffers: string | null; jar: string | null }[];
}

export interface OutView {
  pieces: number[];
  why: WhyOut;
  ways: WayOut[];
  /** "Sat 20 Sep". */
  fridgeBy: string;
  processMin: number | null;
}

export type ShownSheet = Omit<FrozenSheet, 'figures'> & { figures: LabelledFigure[] };

export interface BatchView {
  code: string;
  label: string;
  state: BatchRecord['state'];
  day: string;
  sheet: ShownSheet | null;
  inputs: { code: string; grams: number }[];
  readings: { at: string; kind: string; value: number; unit: string }[];
  /** While it is on the stove. */
  boil: CookTrack | null;
  foodId: string;
  /** While it cooks: the trim as published and as weighed here. */
  trim: string | null;
  /** `time` is the place's own clock. */
  log: { at: string; time: string; what: string }[];
  ph: PhView;
  jars: {
    code: string;
    onHand: number;
    kind: string;
    seal: string | null;
    process: string | null;
    address: string | null;
    hold: string | null;
    flags: string[];
  }[];
  partial: { grams: number; useBy: string | null } | null;
  /** ISO instant the process clock ends, on the real clock of the person looking; null when it does not run. */
  processEndsInMs: number | null;
  hoursOut: number | null;
  sealState: 'early' | 'due' | 'red' | 'locked' | null;
  address: { suggested: string; addresses: string[] } | null;
  /** Whether and how the cold jars set; null where nothing has to set or it is too soon. */
  set: { said: string | null } | null;
  /** The numbered jars still there, and where they may go if they may not stay. */
  out: OutView | null;
  /** Where it has to set. */
  unset: UnsetView | null;
  /** Other filled batches that could share the load. */
  sharing: BatchCard[];
  kitchen: string;
}

export async function readBatch(ctx: Context, code: string): Promise<BatchView | null> {
  const batch = await batchOfCode(ctx.db, ctx.place.id, code);
  if (!batch) return null;
  const [readings, lots, sharing] = await Promise.all([
    readingsOf(ctx.db, ctx.place.id, { batchId: batch.id }),
    loadLots(ctx.db, ctx.place.id, { batchId: batch.id, emptied: true }),
    sharingWith(ctx, batch),
  ]);
  const jars = lots.filter((l) => l.unit === 'jar' || l.unit === 'pack');
  const partial = lots.find((l) => l.kind === 'cold-jars' && l.unit === 'g');
  const own = batch.formulaVersion !== 'season';
  const hoursOut = batch.outAt ? hoursSinceOut(ctx, batch) : null;
  const sealState = batch.state === 'cooling' && hoursOut !== null ? sealStateOf(hoursOut) : null;
  const first = jars.find((l) => l.kind === 'jars');
  return {
    code: batch.code,
    label: batch.label,
    state: batch.state,
    day: batch.day,
    sheet: own ? { ...sheetOf(batch), figures: (sheetOf(batch).figures ?? []).map(shownWith) } : null,
    inputs: inputLots(batch),
    readings: readings.map(readingOf),
    boil: own && batch.state === 'cooking' ? cookTrack(sheetOf(batch), readings) : null,
    foodId: recipeHere(ctx.place, batch.recipeId)?.fruits[0]?.foodIds[0] ?? '',
    trim: own && batch.state === 'cooking' ? await trimWords(ctx, batch) : null,
    log: batch.log.map((l) => ({ ...l, time: localClock(l.at, ctx.place.timeZone).time })),
    ph: phOf(ctx, batch, jars, readings),
    jars: jars.map((l) => jarOf(l, sealState)),
    partial: partial ? { grams: partial.onHand, useBy: partial.bestBefore } : null,
    processEndsInMs: own ? processEndsIn(ctx, batch) : null,
    hoursOut,
    sealState,
    address: batch.state === 'cooling' && first ? await suggestAddress(ctx, first) : null,
    set: own ? setOf(ctx, batch, readings) : null,
    out: first && first.onHand > 0 ? await outOf(ctx, batch, first) : null,
    unset: own ? await readUnset(ctx, batch, readings) : null,
    sharing,
    kitchen: ctx.place.kitchens.find((k) => k.id === batch.kitchenId)?.label ?? '',
  };
}

function setOf(ctx: Context, batch: BatchRecord, readings: ReadingRecord[]): BatchView['set'] {
  const recipe = recipeHere(ctx.place, batch.recipeId);
  const hours = batch.filledAt ? (ctx.now.getTime() - Date.parse(batch.filledAt)) / 3_600_000 : 0;
  if (!recipe || !meantToSet(recipe) || hours < SET_HOURS.untouched) return null;
  const last = readings.findLast((r) => r.kind === 'set-test' && r.instrument === JAR_SET);
  return { said: last ? (SET_WORDS[last.value / 100] ?? null) : null };
}

/** The other filled batches a canner load can take along: one that is held for its pH is not boiled again, nor takes others with it. */
async function sharingWith(ctx: Context, batch: BatchRecord): Promise<BatchCard[]> {
  if (batch.state !== 'filled') return [];
  const filled = await loadBatches(ctx.db, ctx.place.id, { states: ['filled'] });
  const lots = await Promise.all(filled.map((b) => loadLots(ctx.db, ctx.place.id, { batchId: b.id })));
  const held = new Set(lots.flat().flatMap((l) => (l.batchId && heldByHighPh(l.hold) ? [l.batchId] : [])));
  return held.has(batch.id)
    ? []
    : filled
        .filter((b) => b.id !== batch.id && !held.has(b.id))
        .map(({ code, label, state, day }) => ({ code, label, state, day }));
}

/** Of a batch of one fruit that is trimmed. */
async function trimWords(ctx: Context, batch: BatchRecord): Promise<string | null> {
  if (sheetOf(batch).trimG <= 0) return null;
  const lots = await Promise.all(inputLots(batch).map((i) => lotOfCode(ctx.db, ctx.place.id, i.code)));
  const foods = new Set(lots.flatMap((l) => (l?.kind === 'fruit' ? [l.foodId ?? ''] : [])));
  const [foodId] = foods;
  const known = foods.size === 1 && foodId ? await trimOfFruit(ctx, foodId) : null;
  return known && trimText(known);
}

function phOf(ctx: Context, batch: BatchRecord, jars: HeldLot[], readings: ReadingRecord[]): PhView {
  const filled = batch.filledAt ? (ctx.now.getTime() - Date.parse(batch.filledAt)) / 3_600_000 : null;
  return {
    may: PH_STATES.includes(batch.state),
    wanted: jars.some((l) => waitsForPh(l.hold)),
    tooHigh: jars.some((l) => heldByHighPh(l.hold)),
    hours: filled,
    readings: readings
      .filter((r) => r.kind === 'ph')
      .map((r) => ({
        at: r.at,
        read: Object.values(localClock(r.at, ctx.place.timeZone)).join(' '),
        pH: r.value / 100,
        buffers: r.instrument,
        jar: r.note,
      })),
  };
}

const inputLots = (b: BatchRecord): { code: string; grams: number }[] =>
  Array.isArray(b.inputs.lots) ? (b.inputs.lots as { code: string; grams: number }[]) : [];
const readingOf = (r: ReadingRecord) => ({ at: r.at, kind: r.kind, value: r.value / 100, unit: r.unit });
/** A seal nobody answered in time is shown as what it has become. */
const jarOf = (l: HeldLot, sealState: BatchView['sealState']) => ({
  code: l.code,
  onHand: l.onHand,
  kind: l.kind,
  seal: sealState === 'locked' && l.seal === 'waiting' ? 'unverified' : l.seal,
  process: l.process,
  address: l.address,
  hold: l.hold,
  flags: l.flags,
});

/** Null while nothing is against the jars: a lid that gave is told while they cool, anything else as long as it stands. */
async function outOf(ctx: Context, batch: BatchRecord, lot: HeldLot): Promise<OutView | null> {
  const why = whyOut(lot);
  if (why === 'unsealed' && batch.state !== 'cooling') return null;
  const until = coldUntil(ctx.today, 'fridge');
  return {
    pieces: (await piecesOf(ctx.db, ctx.place.id, [lot.id])).get(lot.id) ?? [],
    why,
    ways: waysOf(ctx, batch, lot),
    fridgeBy: isRefusal(until) ? '' : shortDate(until),
    processMin: sheetOf(batch).processMin ?? null,
  };
}

/** Milliseconds from now to the end of the process, on the place's own clock. */
function processEndsIn(ctx: Context, b: BatchRecord): number | null {
  const started = b.result.boilingAt;
  const minutes = sheetOf(b).processMin;
  if (b.state !== 'filled' || typeof started !== 'string' || minutes === null) return null;
  return Date.parse(started) + minutes * 60_000 - ctx.now.getTime();
}

const sealStateOf = (hours: number): BatchView['sealState'] =>
  hours < SEAL_CLOCK.dueH ? 'early' : hours < SEAL_CLOCK.lateH ? 'due' : hours <= SEAL_CLOCK.closedH ? 'red' : 'locked';
