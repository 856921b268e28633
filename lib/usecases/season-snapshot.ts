/** One look at a place: everything the season ahead is reckoned from, read once and never written. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { actMark, loadActs, type StoredAct } from '#lib/store/act-store.ts';
import { type DatedMovement, loadLots, movementsBetween } from '#lib/store/ledger-store.ts';
import type { Place } from '#lib/store/place.ts';
import { statedUse } from '#lib/store/place-store.ts';
import { planInForce, type StoredPlan } from '#lib/store/plan-store.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

/** Weeks of the ledger that use is learnt from, and weeks looked ahead. */
export const SEASON_WEEKS = 52;

export interface SeasonSnapshot {
  today: PlainDate;
  place: Place;
  /** All lots, also those of which nothing is left: movements name them. */
  lots: HeldLot[];
  /** Movements of the last 52 weeks and a few days, mistakes and their corrections left out. */
  movements: (DatedMovement & { kind: string })[];
  /** First day anything was recorded, within those weeks. */
  recordedFrom: PlainDate;
  /** Pickings and looks of all years, corrected ones left out. */
  harvests: StoredAct[];
  /** What was seen hanging, by eye, the newest first, corrected ones left out. */
  sights: StoredAct[];
  /** Counts of the shelves as they were called out, the newest first, corrected ones left out. */
  counts: StoredAct[];
  /** Use a week as the household stated it. */
  rates: { line: string; perWeek: number; source: string }[];
  /** The plan in force, or null. */
  plan: StoredPlan | null;
}

export async function seasonSnapshot(ctx: Context): Promise<SeasonSnapshot> {
  const { db, today, place } = ctx;
  const [ledger, rates, plan] = await Promise.all([
    ledgerOn(ctx),
    statedUse(db, place.id),
    planInForce(db, place.id, today),
  ]);
  return { today, place, ...ledger, rates, plan };
}

type Ledger = Pick<SeasonSnapshot, 'lots' | 'movements' | 'recordedFrom' | 'harvests' | 'sights' | 'counts'>;
/** The last look at each place: reading a year of movements takes longer than all that is done with them. Never changed. */
const looked = new WeakMap<Context['db'], Map<string, { mark: string; ledger: Promise<Ledger> }>>();

/** The ledger's year, read again only when an act has been added since. Every change of a lot is an act. */
async function ledgerOn(ctx: Context): Promise<Ledger> {
  const places = looked.get(ctx.db) ?? new Map<string, { mark: string; ledger: Promise<Ledger> }>();
  looked.set(ctx.db, places);
  const mark = `${ctx.today} ${await actMark(ctx.db, ctx.place.id)}`;
  const known = places.get(ctx.place.id);
  if (known?.mark === mark) return known.ledger;
  const ledger = readLedger(ctx);
  places.set(ctx.place.id, { mark, ledger });
  ledger.catch(() => places.delete(ctx.place.id));
  return ledger;
}

async function readLedger({ db, today, place }: Context): Promise<Ledger> {
  const from = addDays(today, -7 * SEASON_WEEKS - 7);
  const [lots, moved, acts, corrections] = await Promise.all([
    loadLots(db, place.id, { emptied: true }),
    movementsBetween(db, place.id, from, today),
    loadActs(db, place.id, { kinds: ['harvest', 'sight', 'count'], to: today }),
    loadActs(db, place.id, { kinds: ['correct'] }),
  ]);
  const wrong = new Set(corrections.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  const movements = moved.filter((m) => m.kind !== 'correct' && !wrong.has(m.actId));
  return {
    lots,
    movements,
    recordedFrom: movements[0]?.day ?? today,
    harvests: acts.filter((a) => a.kind === 'harvest' && !wrong.has(a.id)),
    sights: acts.filter((a) => a.kind === 'sight' && !wrong.has(a.id)),
    counts: acts.filter((a) => a.kind === 'count' && Array.isArray(a.payload.counts) && !wrong.has(a.id)),
  };
}
