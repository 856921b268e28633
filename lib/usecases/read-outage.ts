/** The page of a cold box that has stopped: how long it keeps, what is in it by worth, what to do tonight, what was done. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { THAW_RULES, type ThawRuleId } from '#lib/reference/outage-times.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { type ColdTime, freezerColdTime, freezerRoomG, fridgeColdTime } from '#lib/science/cold-box-outage.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { leftByRecipe, loadLots } from '#lib/store/ledger-store.ts';
import { bothMasses, counted, duration } from '#lib/units/format.ts';
import { addDays, dayInZone, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { localClock } from './local-clock.ts';
import { fridgeDays, isFreezerJam, withWhom } from './outage-acts.ts';
import {
  type ColdLot,
  coldRooms,
  contentsAway,
  gramsOf,
  loadOutages,
  type Outage,
  openOutages,
  undecided,
} from './outage-contents.ts';
import {
  meansOf,
  planTonight,
  preserveOf,
  type RescueBatch,
  type RescueFruit,
  type TonightPlan,
} from './outage-tonight.ts';
import { lineSlug } from './read-pantry.ts';

export interface OutageItem {
  line: string;
  slug: string;
  packs: string;
  grams: number;
  mass: string;
  /** Fruit is frozen again or cooked; the rest goes to the fridge or is looked at. */
  rule: ThawRuleId;
  /** What it would become, and how much of that is left. */
  becomes: string | null;
  left: string | null;
  /** Weeks the shelf still has of it, at last year's use. */
  weeks: number | null;
  fridgeUntil: string | null;
}

export interface OutageView {
  id: string;
  room: string;
  kind: 'freezer' | 'fridge';
  failed: string | null;
  found: string;
  lasted: string | null;
  load: string;
  /** "371 lb", and the share of it; null where its size is not known. */
  roomLb: string | null;
  percent: number | null;
  fullness: string | null;
  hours: number;
  source: string;
  status: string;
  /** "02:10 Sun 18 Jan"; null where nobody knows when it failed. */
  until: string | null;
  endsInMs: number | null;
  items: OutageItem[];
  leftG: number;
  tonight: Omit<TonightPlan, 'batches'> & { batches: (RescueBatch & { when: string })[] };
  burners: { free: number; all: number };
  rules: { text: string; source: string }[];
  done: { id: string; what: string; mass: string; how: string }[];
  /** What stands with others now. */
  away: { to: string; mass: string }[];
}

/** The failure by its id; null when there is none. */
export async function readOutage(ctx: Context, id: string): Promise<OutageView | null> {
  const outage = (await loadOutages(ctx)).find((o) => o.id === id);
  if (!outage) return null;
  const [left, busy, held, acts] = await Promise.all([
    undecided(ctx, ctx.db, outage),
    loadBatches(ctx.db, ctx.place.id, { states: ['cooking', 'filled'] }),
    loadLots(ctx.db, ctx.place.id),
    loadActs(ctx.db, ctx.place.id, { kinds: ['rescue'], from: dayInZone(outage.foundAt, ctx.place.timeZone) }),
  ]);
  const cold = coldTimeOf(outage);
  const ends = endOf(outage, cold);
  const kitchen = await madeHere(ctx);
  const items = itemsOf(ctx, outage, left, kitchen);
  const endsInMs = ends ? ends.getTime() - ctx.now.getTime() : null;
  const means = meansOf(ctx, held, busy.length, endsInMs === null ? null : Math.max(0, endsInMs / 3_600_000));
  const fruits = items.filter((i) => i.rule === 'fruit').flatMap((i) => fruitOfItem(i, left, kitchen));
  const rules = new Set(items.map((i) => i.rule));
  const own = acts.filter((a) => a.payload.outage === id);
  const holders = [...new Set(own.flatMap((a) => (a.payload.did === 'moved' && a.note ? [a.note] : [])))];
  const away = await Promise.all(
    holders.map(async (to) => ({ to, grams: gramsOf(await contentsAway(ctx, ctx.db, withWhom(to))) })),
  );
  return {
    id,
    room: outage.room.label,
    kind: outage.room.kind === 'fridge' ? 'fridge' : 'freezer',
    failed: outage.failedAt ? clockText(ctx, outage.failedAt) : null,
    found: clockText(ctx, outage.foundAt),
    lasted: outage.failedAt ? duration((outage.foundAt.getTime() - outage.failedAt.getTime()) / 60_000) : null,
    load: bothMasses(outage.loadG),
    roomLb: cold.share === null ? null : bothMasses(freezerRoomG(outage.room.litres as number)),
    percent: cold.share === null ? null : Math.floor(100 * cold.share),
    fullness: cold.row.fullness,
    hours: cold.row.hours,
    source: SOURCES[cold.row.source].title,
    status: cold.row.status,
    until: ends ? clockText(ctx, ends) : null,
    endsInMs,
    items,
    leftG: gramsOf(left),
    tonight: timed(ctx, planTonight(ctx, fruits, means)),
    burners: means.burners,
    rules: THAW_RULES.filter((r) => rules.has(r.id)).map((r) => ({
      text: r.text,
      source: `${SOURCES[r.source].title} (${r.status})`,
    })),
    away: away.filter((a) => a.grams > 0).map((a) => ({ to: a.to, mass: bothMasses(a.grams) })),
    done: own.map((a) => ({
      id: a.id,
      what: (a.payload.lines as string[]).join(', '),
      mass: bothMasses(Number(a.payload.grams)),
      how: howText(String(a.payload.did), a.note, outage.room.kind),
    })),
  };
}

/** The batches by the clock of the house, to ten minutes. */
function timed(ctx: Context, plan: TonightPlan): OutageView['tonight'] {
  const at = (hours: number) => {
    const tenMin = 600_000;
    const instant = new Date(Math.ceil((ctx.now.getTime() + hours * 3_600_000) / tenMin) * tenMin);
    return localClock(instant.toISOString(), ctx.place.timeZone).time;
  };
  return { ...plan, batches: plan.batches.map((b) => ({ ...b, when: `${at(b.fromH)} to ${at(b.untilH)}` })) };
}

const coldTimeOf = (o: Outage): ColdTime =>
  o.room.kind === 'fridge' ? fridgeColdTime() : freezerColdTime(o.loadG, o.room.litres);

/** When it is no longer to be relied on; null where nobody knows when it failed. */
const endOf = (o: Outage, cold: ColdTime): Date | null =>
  o.failedAt ? new Date(o.failedAt.getTime() + cold.row.hours * 3_600_000) : null;

function clockText(ctx: Context, instant: Date): string {
  const { day, time } = localClock(instant.toISOString(), ctx.place.timeZone);
  return `${time} ${shortDate(day as Parameters<typeof shortDate>[0])}`;
}

function howText(did: string, to: string | null, kind: string): string {
  if (did === 'moved') return `moved, with ${to}`;
  if (did === 'back') return `back from ${to}`;
  if (did === 'thawed') return 'thawed, to be cooked';
  if (did === 'fridge') return 'to the fridge';
  if (did === 'thrown') return 'thrown away';
  return kind === 'fridge' ? 'stayed cold' : 'frozen again, or still frozen';
}

/** Jars of each recipe on the shelf, how many left it in a year, and so which recipes are made here. */
interface MadeHere {
  jars: HeldLot[];
  year: ReadonlyMap<string, number>;
  recipes: ReadonlySet<string>;
}

async function madeHere(ctx: Context): Promise<MadeHere> {
  const [jars, { pieces: year }] = await Promise.all([
    loadLots(ctx.db, ctx.place.id, { kinds: ['jars'] }),
    leftByRecipe(ctx.db, ctx.place.id, {
      from: addDays(ctx.today, -365),
      to: ctx.today,
      sinks: ['eaten', 'given', 'sold'],
    }),
  ]);
  return { jars, year, recipes: new Set([...year.keys(), ...jars.flatMap((l) => l.recipeId ?? [])]) };
}

/** Lines by what the shelf lacks most: the fewest weeks left of what they become; what cannot be cooked comes last. */
function itemsOf(
  ctx: Context,
  outage: Outage,
  left: readonly ColdLot[],
  { jars, year, recipes }: MadeHere,
): OutageItem[] {
  const lines = new Map<string, ColdLot[]>();
  for (const c of left) lines.set(c.lot.label, [...(lines.get(c.lot.label) ?? []), c]);
  const items = [...lines].map(([line, of]): OutageItem => {
    const rule = ruleOf(outage, of);
    const grams = gramsOf(of);
    const foodId = of[0]?.lot.foodId ?? null;
    const found = rule === 'fruit' && foodId ? preserveOf(ctx, { line, foodId, grams, made: recipes }) : null;
    const onHand = found ? jars.filter((l) => l.recipeId === found.recipe.id).reduce((n, l) => n + l.onHand, 0) : 0;
    const used = found ? (year.get(found.recipe.id) ?? 0) : 0;
    const days = rule === 'freezer-jam' || rule === 'pectin-stock' ? fridgeDays(of.map((c) => c.lot)) : null;
    return {
      line,
      slug: lineSlug(line),
      packs: packsText(of),
      grams,
      mass: bothMasses(grams),
      rule,
      becomes: found?.recipe.title ?? null,
      left: found ? `${counted(onHand, 'jar')} left` : null,
      weeks: found && used > 0 ? Math.floor((52 * onHand) / used) : null,
      fridgeUntil: typeof days === 'number' ? shortDate(addDays(ctx.today, days)) : null,
    };
  });
  const last = (i: OutageItem) => (i.becomes === null ? 2 : i.weeks === null ? 1 : 0);
  return items.sort((a, b) => last(a) - last(b) || (a.weeks ?? 0) - (b.weeks ?? 0) || b.grams - a.grams);
}

function packsText(of: readonly ColdLot[]): string {
  const packs = of.filter((c) => c.lot.unit !== 'g');
  return packs.length === 0
    ? ''
    : counted(
        packs.reduce((n, c) => n + c.lot.onHand, 0),
        packs[0]?.lot.unit ?? 'pack',
      );
}

function ruleOf(outage: Outage, of: readonly ColdLot[]): ThawRuleId {
  if (outage.room.kind === 'fridge') return 'fridge';
  if (of.every((c) => c.lot.item === 'pectin-stock')) return 'pectin-stock';
  return of.every((c) => isFreezerJam(c.lot)) ? 'freezer-jam' : 'fruit';
}

const fruitOfItem = (i: OutageItem, left: readonly ColdLot[], { recipes }: MadeHere): RescueFruit[] => {
  const foodId = left.find((c) => c.lot.label === i.line)?.lot.foodId;
  return foodId && i.becomes ? [{ line: i.line, foodId, grams: i.grams, made: recipes }] : [];
};

export interface OutageNow {
  id: string;
  room: string;
  until: Date | null;
  untilText: string | null;
  left: string;
}

/** Cold boxes that stand still now, for Today, the pantry and the calendar. */
export const outagesNow = async (ctx: Context): Promise<OutageNow[]> =>
  (await openOutages(ctx)).map(({ outage, left }) => {
    const until = endOf(outage, coldTimeOf(outage));
    return {
      id: outage.id,
      room: outage.room.label,
      until,
      untilText: until ? clockText(ctx, until) : null,
      left: bothMasses(gramsOf(left)),
    };
  });

/** Boxes that can be named as stopped, with what is in each by the list. */
export async function readColdRooms(ctx: Context): Promise<{ code: string; label: string; kind: string }[]> {
  return coldRooms(ctx).map(({ code, label, kind }) => ({ code, label, kind }));
}
