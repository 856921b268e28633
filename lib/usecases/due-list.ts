/**
 * What the house's clocks ask for: seals to try, a set to judge, a conditioning jar to shake, what in the fridge comes to its day,
 * a load on the trays, a freezer that stands still. Seals at 12 h and locked at 24 h; a set at 48 h, 14 days for plum kinds (needs of the trade; USDA and extension
 * texts on seals and on slow sets).
 */
import { SEAL_CLOCK } from '#lib/batch/verdicts.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { CONDITIONING } from '#lib/reference/dried-storage.ts';
import { judgedAfterH } from '#lib/reference/remake.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { dryingDetails, dryingOf } from './drying-of.ts';
import { type OutageNow, outagesNow } from './read-outage.ts';
import { recipeHere } from './recipes-here.ts';
import { conditioningOf } from './set-aside-acts.ts';

export type DueWhen = { at: Date; until: Date } | { day: PlainDate };

export interface Due {
  /** Stays the same while the thing does, so that a calendar moves it instead of doubling it. */
  id: string;
  what: string;
  when: DueWhen;
  href: string;
}

const HOUR_MS = 3_600_000;
/** What goes back to the trays only because drops showed. Common practice. */
const FEW_HOURS = { p10: 2, p90: 4 };
export const SETS: readonly string[] = ['jam', 'jelly', 'preserve', 'conserve', 'marmalade'];

/** Soonest first. */
export async function dueList(ctx: Context): Promise<Due[]> {
  const [batches, lots, outages] = await Promise.all([
    loadBatches(ctx.db, ctx.place.id, { states: ['cooling', 'jarred'], take: 60 }),
    loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside', 'cold-jars', 'frozen'] }),
    outagesNow(ctx),
  ]);
  const all = [
    ...outages.map((o) => outageDue(ctx, o)),
    ...batches.flatMap((b) => [...sealDue(b), ...setDue(ctx, b)]),
    ...lots.flatMap((l) => [...dryingDue(l), ...conditioningDue(ctx, l), ...fridgeDue(ctx, l)]),
  ];
  return all.sort((a, b) => orderOf(a).localeCompare(orderOf(b)) || a.id.localeCompare(b.id));
}

const orderOf = ({ when }: Due): string => ('day' in when ? `${when.day}T00:00` : when.at.toISOString());

function sealDue(b: BatchRecord): Due[] {
  if (b.state !== 'cooling' || !b.outAt) return [];
  const out = Date.parse(b.outAt);
  const when = { at: new Date(out + SEAL_CLOCK.dueH * HOUR_MS), until: new Date(out + SEAL_CLOCK.closedH * HOUR_MS) };
  return [{ id: `${b.id}-seal`, what: `Try the seals of ${b.label} ${b.code}`, when, href: `/batches/${b.code}` }];
}

/** While the set may still be judged: until a week after its day. */
function setDue(ctx: Context, b: BatchRecord): Due[] {
  const recipe = recipeHere(ctx.place, b.recipeId);
  if (!b.outAt || b.formulaVersion === 'season' || !recipe || !SETS.includes(recipe.kind)) return [];
  const hours = judgedAfterH(recipe.fruits.flatMap((p) => p.foodIds));
  const at = new Date(Date.parse(b.outAt) + hours * HOUR_MS);
  const until = new Date(at.getTime() + HOUR_MS);
  if (ctx.now.getTime() > at.getTime() + 7 * 24 * HOUR_MS) return [];
  return [
    { id: `${b.id}-set`, what: `Has it set? ${b.label} ${b.code}`, when: { at, until }, href: `/batches/${b.code}` },
  ];
}

function dryingDue(l: HeldLot): Due[] {
  const drying = dryingOf(l);
  const started = dryingDetails(l)?.startedAt;
  if (!drying || !started) return [];
  const at = (hours: number) => new Date(Date.parse(started) + hours * HOUR_MS);
  const { p10, p90 } = drying.end ?? FEW_HOURS;
  const when = { at: at(p10), until: at(p90) };
  return [{ id: `${l.id}-dry`, what: `Weigh the trays: ${l.label} ${l.code}`, when, href: `/set-asides/${l.code}` }];
}

function conditioningDue(ctx: Context, l: HeldLot): Due[] {
  const jar = conditioningOf(l);
  if (!jar) return [];
  const days = Array.from({ length: CONDITIONING.days }, (_, i) => addDays(jar.since, i + 1));
  return days
    .filter((day) => day >= ctx.today && !jar.shaken.includes(day))
    .map((day) => ({
      id: `${l.id}-shake-${day}`,
      what: `Shake the jar: ${l.label} ${l.code}`,
      when: { day },
      href: `/set-asides/${l.code}`,
    }));
}

/** A freezer or fridge stands still: until it has thawed, or now where nobody knows when it failed. */
function outageDue(ctx: Context, o: OutageNow): Due {
  const at = o.until ?? ctx.now;
  return { id: o.id, what: `${o.room} stands still, ${o.left}`, when: { at, until: at }, href: `/outage/${o.id}` };
}

/** What stands in the fridge comes to its day within two weeks, or is past it. */
function fridgeDue(ctx: Context, l: HeldLot): Due[] {
  const room = ctx.place.rooms.find((r) => r.id === l.roomId);
  if (room?.kind !== 'fridge' || !l.bestBefore || l.bestBefore > addDays(ctx.today, 14)) return [];
  return [
    { id: `${l.id}-use`, what: `Use up ${l.label} ${l.code}`, when: { day: l.bestBefore }, href: `/trace/${l.code}` },
  ];
}
