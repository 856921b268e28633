/** One look at a place: everything the season ahead is reckoned from, read once and never written. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { loadActs, type StoredAct } from '#lib/store/act-store.ts';
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
  movements: DatedMovement[];
  /** First day anything was recorded, within those weeks. */
  recordedFrom: PlainDate;
  /** Pickings and looks of all years, corrected ones left out. */
  harvests: StoredAct[];
  /** What was seen hanging, by eye, the newest first, corrected ones left out. */
  sights: StoredAct[];
  /** Use a week as the household stated it. */
  rates: { line: string; perWeek: number; source: string }[];
  /** The plan in force, or null. */
  plan: StoredPlan | null;
}

export async function seasonSnapshot(ctx: Context): Promise<SeasonSnapshot> {
  const { db, today, place } = ctx;
  const from = addDays(today, -7 * SEASON_WEEKS - 7);
  const [lots, moved, looked, corrections, rates, plan] = await Promise.all([
    loadLots(db, place.id, { emptied: true }),
    movementsBetween(db, place.id, from, today),
    loadActs(db, place.id, { kinds: ['harvest', 'sight'], to: today }),
    loadActs(db, place.id, { kinds: ['correct'] }),
    statedUse(db, place.id),
    planInForce(db, place.id, today),
  ]);
  const wrong = new Set(corrections.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  const movements = moved.filter((m) => m.kind !== 'correct' && !wrong.has(m.actId));
  return {
    today,
    place,
    lots,
    movements,
    recordedFrom: movements[0]?.day ?? today,
    harvests: looked.filter((a) => a.kind === 'harvest' && !wrong.has(a.id)),
    sights: looked.filter((a) => a.kind === 'sight' && !wrong.has(a.id)),
    rates,
    plan,
  };
}
