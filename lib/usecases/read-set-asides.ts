/** What is set aside: fresh (today), on the trays, in its conditioning jar, ready; and one set-aside with all that is known of it. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { CONDITIONING, pasteuriseAfter } from '#lib/reference/dried-storage.ts';
import { setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import type { Clot } from '#lib/science/clot-test.ts';
import { CLOT_POWDER_G } from '#lib/science/learn-powder.ts';
import { stockCarries } from '#lib/science/stock-carries.ts';
import { loadLots, lotOfCode } from '#lib/store/ledger-store.ts';
import { counted, mass } from '#lib/units/format.ts';
import { daysBetween, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type Drying, type DryingDetails, dryingDetails, dryingOf } from './drying-of.ts';
import { type DryingShown, dryingsOf, roomAsked, stopsAt } from './drying-ways.ts';
import { learnRecords } from './learn-records.ts';
import { localClock } from './local-clock.ts';
import { conditioningOf } from './set-aside-acts.ts';
import { type WayShown, waysOf } from './set-aside-ways.ts';
import {
  clotOf,
  type LotStrength,
  POWDER_RANGE,
  powderStrengthsOf,
  rangeOf,
  type StrengthTest,
  stockWord,
  testsOf,
  UNTRIED,
} from './strength-of-lots.ts';
import { isTestable } from './strength-tests.ts';

export type SetAsideState = 'fresh' | 'drying' | 'conditioning' | 'dry' | 'frozen' | 'working' | 'unknown';

export interface SetAsideRow {
  code: string;
  label: string;
  amount: number;
  unit: string;
  madeOn: PlainDate;
  bestBefore: PlainDate | null;
  where: string;
  state: SetAsideState;
  strength: string;
  grade: string | null;
  seedsOut: boolean;
  /** What is to be done with it now. */
  next: string;
}

export interface SetAsideView {
  lots: SetAsideRow[];
  powderG: number;
}

export async function readSetAsides(ctx: Context): Promise<SetAsideView> {
  const all = await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'], emptied: true });
  const strengths = powderStrengthsOf((await learnRecords(ctx)).batches, all);
  const lots = all.filter((l) => l.onHand > 0);
  return {
    lots: lots.map((l) => rowOf(ctx, l, strengths)),
    powderG: lots
      .filter((l) => l.item === 'apple-powder' && l.details.state === 'dry')
      .reduce((g, l) => g + l.onHand, 0),
  };
}

const STATES: readonly SetAsideState[] = ['fresh', 'drying', 'conditioning', 'dry', 'frozen', 'working'];

type Strengths = ReadonlyMap<string, LotStrength>;

function rowOf(ctx: Context, l: HeldLot, strengths: Strengths): SetAsideRow {
  const state = STATES.find((s) => s === l.details.state) ?? 'unknown';
  return {
    code: l.code,
    label: l.label,
    amount: l.onHand,
    unit: l.unit,
    madeOn: l.madeOn,
    bestBefore: l.bestBefore,
    where: ctx.place.rooms.find((r) => r.id === l.roomId)?.label ?? 'no place given',
    state,
    strength: wordOf(l, strengths),
    grade: l.grade,
    seedsOut: l.details.seedsOut === true,
    next: nextOf(ctx, l, state),
  };
}

/** Strength is asked of powder and stock; of rings and rind nobody asks. */
function wordOf(l: HeldLot, strengths: Strengths): string {
  if (l.item === 'pectin-stock') return stockWord(clotOf(l));
  return strengths.get(l.code)?.word ?? 'untested';
}

function nextOf(ctx: Context, l: HeldLot, state: SetAsideState): string {
  if (state === 'fresh') return 'dry, freeze or boil it today';
  if (state === 'drying') {
    const d = dryingOf(l);
    return d ? `dry at ${mass(d.targetG)}; ${doneBy(ctx, l, d)}` : 'weigh it';
  }
  if (state === 'working')
    return `vinegar, day ${daysBetween(l.madeOn, ctx.today)}: stir it, strain it when it is sour`;
  const jar = conditioningOf(l);
  if (!jar) return '';
  const days = daysBetween(jar.since, ctx.today);
  if (days >= CONDITIONING.days) return 'look once more, then to the cupboard';
  return jar.shaken.includes(ctx.today)
    ? `shaken today, day ${days} of ${CONDITIONING.days}`
    : `shake it, day ${days} of ${CONDITIONING.days}`;
}

const HOUR_MS = 3_600_000;

/** "done about 15:30 Sat 18 Oct (14:10 to 17:00)" by the posterior; where room air stops it, that. */
function doneBy(ctx: Context, l: HeldLot, d: Drying): string {
  if (d.stop?.reaches === 'no') return stopsAt(d.stop);
  if (!d.end) return 'by its weight it is dry and the drops say it is not: go by feel, a few hours more';
  const started = dryingDetails(l)?.startedAt ?? l.since;
  const [low, middle, high] = [d.end.p10, d.end.p50, d.end.p90].map((hours) => {
    const at = new Date(Date.parse(started) + hours * HOUR_MS).toISOString();
    const { day, time } = localClock(at, ctx.place.timeZone);
    return { time, day: shortDate(day as PlainDate) };
  }) as [Clock, Clock, Clock];
  const sameDay = low.day === high.day;
  const days = d.end.p90 - d.end.p10 > 24;
  const text = (c: Clock) => (sameDay ? c.time : days ? c.day : `${c.day} ${c.time}`);
  return `done about ${days ? '' : `${middle.time} `}${middle.day}, four cases of five between ${text(low)} and ${text(high)}`;
}
interface Clock {
  time: string;
  day: string;
}

export interface StrengthShown {
  word: string;
  /** g sugar a gram carries. */
  perG: { low: number; typ: number; high: number };
  /** "by the table, untested", "by 1 alcohol test", "learnt from …". */
  basis: string;
  batches: string[];
  tests: string[];
  /** Grams of powder the alcohol test takes to the cup; null for a stock, which is tested as it is. */
  testG: number | null;
  mayTest: boolean;
}

export interface SetAsidePage extends SetAsideRow {
  material: { id: string; name: string; seeds: boolean; rind: boolean } | null;
  drying: (Drying & { done: string }) | null;
  conditioning: { days: number; least: number; usual: number; shakenToday: boolean } | null;
  /** What is known of its strength, and whether it can be tried now; null for what nothing is set with. */
  known: StrengthShown | null;
  ways: WayShown[];
  /** For a fresh one: what each way of drying would take. */
  dryings: DryingShown[];
  room: { celsius: number; humidityPct: number };
  /** Trays that take it, by the loads a m². */
  traysAsked: number;
  dryerC: number;
  pasteurise: string[];
  /** Dry and fit to be packed for the pantry. */
  mayPack: boolean;
}

/** Herbs dry at 35 to 46 °C (newspaper column quoting Penn State Extension): the upper end. */
const HERB_C = 46;

export interface BlendView {
  lots: { code: string; label: string; grams: number; bestBefore: PlainDate | null }[];
}

/** Dry lots that may go into a blend, oldest first. */
export async function readBlend(ctx: Context): Promise<BlendView> {
  const lots = await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'] });
  return {
    lots: lots
      .filter((l) => mayPack(l))
      .map((l) => ({ code: l.code, label: l.label, grams: l.onHand, bestBefore: l.bestBefore })),
  };
}

const mayPack = (l: HeldLot): boolean =>
  l.details.state === 'dry' &&
  l.unit === 'g' &&
  l.onHand > 0 &&
  l.hold === null &&
  l.details.waxed !== true &&
  !l.groundFall &&
  l.grade !== 'cull';

/** `room` is the air asked about, as typed. */
export async function readSetAside(
  ctx: Context,
  code: string,
  asked: { roomC?: string | undefined; humidity?: string | undefined } = {},
): Promise<SetAsidePage | null> {
  const lot = await lotOfCode(ctx.db, ctx.place.id, code);
  if (lot?.kind !== 'set-aside') return null;
  const all = await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'], emptied: true });
  const strengths = powderStrengthsOf((await learnRecords(ctx)).batches, all);
  const row = rowOf(ctx, lot, strengths);
  const material = typeof lot.details.material === 'string' ? setAsideMaterial(lot.details.material) : null;
  const drying = dryingOf(lot);
  const jar = conditioningOf(lot);
  const dryer = ctx.place.kitchens.flatMap((k) => k.dryers)[0];
  const perTray = dryer && material ? (1000 * material.kgPerM2[1] * dryer.trayCm2) / 10_000 : (dryer?.gPerTray ?? 700);
  const room = roomAsked(asked);
  const dryerC = material?.hangs ? HERB_C : (dryer?.centiC ?? 5700) / 100;
  const fresh = row.state === 'fresh' || row.state === 'unknown';
  const food = !lot.groundFall && lot.grade !== 'cull';
  return {
    ...row,
    material: material && { id: material.id, name: material.name, seeds: material.seeds, rind: material.rind },
    drying: drying && { ...drying, done: doneBy(ctx, lot, drying) },
    conditioning: jar && {
      days: daysBetween(jar.since, ctx.today),
      least: CONDITIONING.low,
      usual: CONDITIONING.days,
      shakenToday: jar.shaken.includes(ctx.today),
    },
    known: knownOf(lot, strengths),
    ways: fresh ? waysOf(lot) : [],
    dryings: fresh && food && material ? dryingsOf(material, lot.onHand, { dryerC, room }) : [],
    room,
    mayPack: mayPack(lot),
    traysAsked: Math.max(1, Math.min(dryer?.trays ?? 10, Math.ceil(lot.onHand / perTray))),
    dryerC,
    pasteurise: pasteuriseAfter(driedIn(lot)).map(
      (p) => `${p.how}, ${p.minutes >= 1440 ? `${p.minutes / 60} h` : `${p.minutes} min`}`,
    ),
  };
}

/** Room air leaves insects alive; a heated dryer does not. */
function driedIn(lot: HeldLot): 'dryer' | 'oven' | 'windowsill' {
  const way = (lot.details.drying as DryingDetails | undefined)?.way ?? 'dryer';
  return way === 'hung' ? 'windowsill' : way;
}

const CLOT_SHOWN: Readonly<Record<Clot, string>> = {
  high: 'one lump',
  medium: 'several lumps',
  low: 'flakes or nothing',
};
const SET_SHOWN = ['ran', 'thickened', 'set'] as const;

const testText = (t: StrengthTest): string =>
  t.how === 'clot'
    ? `${shortDate(t.day)}: alcohol test, ${CLOT_SHOWN[t.result]}`
    : `${shortDate(t.day)}: cup trial, ${t.powderG} g to ${t.sugarG} g of sugar ${SET_SHOWN[t.set]}`;

function knownOf(lot: HeldLot, strengths: Strengths): StrengthShown | null {
  const tests = testsOf(lot);
  const common = { word: wordOf(lot, strengths), tests: tests.map(testText), mayTest: isTestable(lot) };
  if (lot.item === 'pectin-stock') {
    const clot = clotOf(lot);
    const basis = clot ? 'by its last alcohol test' : 'untested: taken as several lumps';
    return { ...common, perG: stockCarries({ grams: 1, clot: clot ?? 'untested' }), basis, batches: [], testG: null };
  }
  if (lot.item !== 'apple-powder') return null;
  const own = strengths.get(lot.code);
  const perG = strengths.size === 1 ? POWDER_RANGE : rangeOf((own ?? (strengths.get(UNTRIED) as LotStrength)).learnt);
  return {
    ...common,
    perG,
    basis: basisOf(own, strengths.size > 1),
    batches: own?.batches ?? [],
    testG: CLOT_POWDER_G,
  };
}

function basisOf(own: LotStrength | undefined, others: boolean): string {
  if (!own) return others ? 'untested: by the table, moved by the other lots of the house' : 'untested: by the table';
  const from = [
    ...(own.batches.length > 0 ? [counted(own.batches.length, 'batch', 'batches')] : []),
    ...(own.tests.length > 0 ? [counted(own.tests.length, 'test')] : []),
  ];
  return `from ${from.join(' and ')} of this lot`;
}
