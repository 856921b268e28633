/** Today's one question: what dies first, and what would it take? */

import { figure, input } from '#lib/batch/figure.ts';
import type { Grade, HeldLot } from '#lib/ledger/lot.ts';
import { freshLifeOf } from '#lib/reference/fresh-life.ts';
import { gradeOf } from '#lib/reference/fruit-grades.ts';
import { hoursLeft } from '#lib/science/perish-clock.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import type { StoreRoom } from '#lib/store/place.ts';
import { timeLeft } from '#lib/units/format.ts';
import { dayInZone, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type Due, dueList } from './due-list.ts';
import { freshLifeKnown } from './fresh-life-known.ts';
import { localClock } from './local-clock.ts';
import { type LabelledFigure, shown } from './shown-figure.ts';
import { wouldTake } from './would-take.ts';

export interface TurningLot {
  id: string;
  name: string;
  row: string | null;
  grade: Grade;
  grams: number;
  hours: number;
  low: number;
  high: number;
  shareLeft: number;
  deadline: string;
  left: string;
  foodId: string;
  lotIds: string[];
  state: 'due' | 'late' | null;
  /** What placing it would take, in words. */
  takes: string | null;
  /** What its time, its jars and its work rest on. */
  figures: LabelledFigure[];
}

export interface TodayView {
  turning: TurningLot[];
  /** Past the time its table gives: to be looked at, and cooked or composted today. */
  past: { name: string; grams: number }[];
  pastG: number;
  /** Remains of less than 100 g each, too little to plan for; they count in the sums. */
  remains: { kinds: number; grams: number };
  /** Of it, what turns within two days. */
  soonG: number;
  soonBy: string | null;
  totalG: number;
  cullG: number;
  due: { href: string; text: string; late: boolean }[];
  /** The same as a calendar to subscribe to. */
  feed: string;
  minutesFree: number;
  /** Whose minutes they are, today. */
  people: { name: string; minutes: number }[];
  lids: number;
  sugarG: number;
}

/** Less than this of a kind and grade is not shown as a line of its own. */
const REMAINS_G = 100;

/** Temperature a room is reckoned at: the middle of its range, or 15 °C where none was given (from memory: a cool room). */
const roomTemp = (room: StoreRoom | undefined): number =>
  room?.lowC != null && room.highC != null ? (room.lowC + room.highC) / 2 : 15;

/** How long a fruit lot has, at its grade and where it stands; null where no life is published for the food. */
export function lotClock(ctx: Context, lot: HeldLot): ReturnType<typeof hoursLeft> | null {
  if (!lot.foodId || !freshLifeKnown(lot.foodId)) return null;
  const room = ctx.place.rooms.find((r) => r.id === lot.roomId);
  const ageHours = Math.max(0, (ctx.now.getTime() - new Date(lot.since).getTime()) / 3_600_000);
  return hoursLeft({ foodId: lot.foodId, grade: lot.grade ?? 'perfect', storeTempC: roomTemp(room), ageHours });
}

export async function readToday(ctx: Context): Promise<TodayView> {
  const [fruit, supplies, batches, clocks] = await Promise.all([
    loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] }),
    loadLots(ctx.db, ctx.place.id, { kinds: ['supply', 'lids'] }),
    loadBatches(ctx.db, ctx.place.id, { states: ['cooking', 'filled', 'cooling'] }),
    dueList(ctx),
  ]);
  const good = fruit.filter((l) => l.grade !== 'cull');
  const all = grouped(ctx, good).sort((a, b) => a.hours - b.hours);
  const fresh = all.filter((t) => t.hours > 0);
  const turning = fresh.filter((t) => t.grams >= REMAINS_G);
  const remains = fresh.filter((t) => t.grams < REMAINS_G);
  const gone = all.filter((t) => t.hours <= 0);
  const soon = fresh.filter((t) => t.hours <= 48);
  const sum = (lots: { grams: number }[]) => lots.reduce((g, l) => g + l.grams, 0);
  const onHand = (item: string) => supplies.filter((s) => s.item === item).reduce((n, s) => n + s.onHand, 0);
  const people = ctx.place.people
    .map((p) => ({ name: p.label, minutes: p.minutes[weekdayIndex(ctx)] ?? 0 }))
    .filter((p) => p.minutes > 0);
  return {
    turning,
    past: gone.map((t) => ({ name: `${t.name}, ${t.grade}`, grams: t.grams })),
    pastG: sum(gone),
    soonG: sum(soon),
    soonBy: soon.at(-1)?.deadline ?? null,
    totalG: sum(fresh),
    remains: { kinds: new Set(remains.map((r) => r.name)).size, grams: sum(remains) },
    cullG: fruit.filter((l) => l.grade === 'cull').reduce((g, l) => g + l.onHand, 0),
    due: [...batches.map((b) => dueOf(ctx, b)), ...soonDue(ctx, clocks)],
    feed: `/api/due?${new URLSearchParams({ place: ctx.place.id })}`,
    minutesFree: people.reduce((a, b) => a + b.minutes, 0),
    people,
    lids: onHand('lid-regular'),
    sugarG: onHand('sugar'),
  };
}

const weekdayIndex = (ctx: Context): number => (new Date(`${ctx.today}T12:00:00Z`).getUTCDay() + 6) % 7;

/** Past, tonight, tomorrow, this week, later: lots of a kind within one of these stand in one line. */
const urgency = (hours = Number.POSITIVE_INFINITY): number => [0, 24, 48, 120].findIndex((h) => hours <= h);

/** Like fruit in one line: same crop and grade, the shortest clock shown. */
function grouped(ctx: Context, lots: HeldLot[]): TurningLot[] {
  const groups = new Map<string, HeldLot[]>();
  for (const lot of lots) {
    const key = [lot.label, lot.grade, urgency(lotClock(ctx, lot)?.hours)].join('|');
    groups.set(key, [...(groups.get(key) ?? []), lot]);
  }
  return [...groups.values()].map((same) => turningOf(ctx, same));
}

function turningOf(ctx: Context, lots: HeldLot[]): TurningLot {
  const clocked = lots.flatMap((l) => {
    const clock = lotClock(ctx, l);
    return clock ? [{ lot: l, clock }] : [];
  });
  const soonest = clocked.reduce<Clocked | null>((a, b) => (!a || b.clock.hours < a.clock.hours ? b : a), null);
  const first = soonest?.clock;
  const lot = lots[0] as HeldLot;
  const hours = first?.hours ?? Number.POSITIVE_INFINITY;
  const end = new Date(ctx.now.getTime() + Math.max(0, Number.isFinite(hours) ? hours : 0) * 3_600_000);
  const grams = lots.reduce((g, l) => g + l.onHand, 0);
  const takes = wouldTake(ctx, lot.foodId ?? '', lot.grade ?? 'perfect', grams);
  const rows = [...new Set(lots.map((l) => l.row).filter((r) => r !== null))];
  return {
    id: lot.id,
    name: lot.label,
    row: rows.join(', ') || null,
    grade: lot.grade ?? 'perfect',
    grams,
    hours,
    low: first?.low ?? hours,
    high: first?.high ?? hours,
    shareLeft: first ? first.hours / Math.max(1, first.hours + ageHours(ctx, lot)) : 1,
    deadline: deadlineText(ctx, hours, end),
    left: first ? timeLeft(hours) : 'no published life',
    foodId: lot.foodId ?? '',
    lotIds: lots.map((l) => l.id),
    state: hours <= 0 ? 'late' : hours <= 24 ? 'due' : null,
    takes: takes?.says ?? null,
    figures: [...(soonest ? [timeFigure(ctx, soonest)] : []), ...(takes?.figures ?? [])],
  };
}

interface Clocked {
  lot: HeldLot;
  clock: ReturnType<typeof hoursLeft>;
}

/** A lot's clock, with the published life it started from. */
function timeFigure(ctx: Context, { lot, clock }: Clocked): LabelledFigure {
  const life = freshLifeOf(lot.foodId ?? '');
  const grade = gradeOf(lot.grade ?? 'perfect');
  return {
    label: 'Time left',
    figure: shown(
      figure({
        value: Math.max(0, clock.hours),
        unit: 'h',
        band: { low: Math.max(0, clock.low), high: Math.max(0, clock.high) },
        formula: `life at the store’s temperature (log-linear between the two anchors) × its grade - age${clock.capped ? `, and never more than ${grade.capHours} h for ${lot.grade} fruit` : ''}`,
        inputs: [
          input(`in the cold, ${life.storeTempC} °C`, `${life.daysLow} to ${life.daysHigh}`, 'days'),
          input('at 20 °C, an estimate', life.daysAt20C, 'days'),
          input('the store, middle of its range', roomTemp(ctx.place.rooms.find((r) => r.id === lot.roomId)), '°C'),
          input(`${lot.grade ?? 'perfect'} keeps, an estimate`, grade.lifeFactor, 'of that'),
          input('age', Math.round(ageHours(ctx, lot)), 'h'),
        ],
        source: life.source,
        status: life.status,
      }),
    ),
  };
}

const ageHours = (ctx: Context, lot: HeldLot): number =>
  Math.max(0, (ctx.now.getTime() - new Date(lot.since).getTime()) / 3_600_000);

function deadlineText(ctx: Context, hours: number, end: Date): string {
  if (!Number.isFinite(hours)) return 'look at it each day';
  if (hours <= 0) return 'past its time: look, and cook or compost today';
  const day = dayInZone(end, ctx.place.timeZone);
  const time = new Intl.DateTimeFormat('en-GB', {
    timeZone: ctx.place.timeZone,
    hour: '2-digit',
    minute: '2-digit',
  }).format(end);
  return hours <= 48 ? `by ${time} ${shortDate(day)}` : `by ${shortDate(day)}`;
}

/** What the other clocks ask for by tomorrow; seals stand with their batch. */
function soonDue(ctx: Context, clocks: readonly Due[]): TodayView['due'] {
  const tomorrow = ctx.now.getTime() + 24 * 3_600_000;
  return clocks
    .filter((d) => !d.id.endsWith('-seal'))
    .filter(({ when }) => ('day' in when ? when.day <= ctx.today : when.at.getTime() <= tomorrow))
    .map(({ href, what, when }) => {
      if ('day' in when)
        return {
          href,
          text: `${what}: ${when.day < ctx.today ? `since ${shortDate(when.day)}` : 'today'}`,
          late: when.day < ctx.today,
        };
      const { day, time } = localClock(when.at.toISOString(), ctx.place.timeZone);
      return {
        href,
        text: `${what}: ${day === ctx.today ? time : `${shortDate(day as PlainDate)}, ${time}`}`,
        late: when.until < ctx.now,
      };
    });
}

/** What a batch on the go asks for next. */
function dueOf(
  ctx: Context,
  b: { code: string; label: string; state: string; outAt: string | null },
): { href: string; text: string; late: boolean } {
  const href = `/batches/${b.code}`;
  if (b.state !== 'cooling' || !b.outAt)
    return {
      href,
      text: `${b.label} ${b.code}: ${b.state === 'filled' ? 'to be processed' : 'on the stove'}`,
      late: false,
    };
  const hours = (ctx.now.getTime() - new Date(b.outAt).getTime()) / 3_600_000;
  if (hours < 12)
    return { href, text: `${b.label} ${b.code}: cooling, check the seals in ${Math.ceil(12 - hours)} h`, late: false };
  if (hours < 24)
    return {
      href,
      text: `${b.label} ${b.code}: check the seals now (${Math.floor(hours)} h since it came out)`,
      late: hours >= 20,
    };
  return { href, text: `${b.label} ${b.code}: nobody checked the seals in 24 h`, late: true };
}
