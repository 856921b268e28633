/** The fruit of a plan: lots that are there by their own clocks, and what is still to be picked by the life its crop has. */
import type { Grade, HeldLot } from '#lib/ledger/lot.ts';
import type { PlanLot } from '#lib/plan/instance.ts';
import type { Context } from './context.ts';
import { lotClock } from './read-today.ts';

export interface ExpectedPick {
  cropId: string;
  /** Day of the horizon, 0 = today. */
  day: number;
  kg: number;
}

/** A lot that keeps so many days past the plan keeps as well as any other as far as the plan can see (see carryWorth). */
const FAR_DAYS = 4;
/** The kitchen is lit in the evening: fruit that will not see this hour of a day cannot be cooked on it. Common practice. */
const EVENING_HOUR = 18;
/** Share trimmed off for every day a lot waits, by the days it still has: about a fifth over its whole time. Estimate. */
const TRIM_PER_DAY = [
  { days: 40, share: 0.005 },
  { days: 20, share: 0.01 },
  { days: 0, share: 0.02 },
];
/** Fruit counts as soft in the last fifth of its time. Estimate. */
const SOFT_FROM = 0.8;

export interface FruitAsk {
  horizon: number;
  expected: readonly ExpectedPick[];
}

/** Fruit on hand by its own clock, and what is still to be picked; culls, windfalls, locked lots and what is on hold stay out. */
export function planLots(ctx: Context, held: readonly HeldLot[], ask: FruitAsk): PlanLot[] {
  const there = held
    .filter(
      (l) =>
        l.kind === 'fruit' &&
        l.cropId &&
        l.grade !== 'cull' &&
        !l.groundFall &&
        l.hold === null &&
        (l.lockedUntil ?? '') <= ctx.today,
    )
    .flatMap((l): PlanLot[] => {
      const clock = lotClock(ctx, l);
      if (!clock || clock.hours <= 0) return [];
      const useBy = Math.floor((clock.hours + hourOfDay(ctx) - EVENING_HOUR) / 24);
      return [
        lot(
          { id: l.id, crop: l.cropId as string, grade: l.grade as Grade, kg: l.onHand / 1000, avail: 0, useBy },
          ask.horizon,
        ),
      ];
    });
  const life = new Map<string, number>();
  const coming = ask.expected.flatMap((e) => {
    const crop = ctx.place.crops.find((c) => c.id === e.cropId);
    const kept = crop ? 100 - crop.soldPercent - crop.eatenPercent - crop.cullPercent : 0;
    if (!crop || kept <= 0 || e.day >= ask.horizon) return [];
    return (['perfect', 'blemished'] as const).flatMap((grade): PlanLot[] => {
      const kg = Math.round(e.kg * kept * 10 * GRADE_SHARE[grade]) / 1000;
      const key = `${crop.foodId} ${grade}`;
      if (!life.has(key)) life.set(key, expectedDays(ctx, crop.foodId, grade));
      return kg < LEAST_EXPECTED_KG
        ? []
        : [
            lot(
              {
                id: `expected:${crop.id}:${e.day}:${grade}`,
                crop: crop.id,
                grade,
                kg,
                avail: e.day,
                useBy: e.day + (life.get(key) as number),
              },
              ask.horizon,
            ),
          ];
    });
  });
  return [...there, ...coming];
}

/** Grades of fruit not picked yet; the little that comes in soft is counted with the blemished. Estimate. */
const GRADE_SHARE = { perfect: 0.45, blemished: 0.55 };
/** The same fruit when what is still to be picked comes short or heavy; what is in the store stays. */
export const lotsComing = (lots: readonly PlanLot[], factor: (cropId: string) => number): PlanLot[] =>
  lots.map((l) => (isExpected(l.id) ? { ...l, kg: Math.round(l.kg * factor(l.crop) * 1000) / 1000 } : l));
export const isExpected = (lotId: string): boolean => lotId.startsWith('expected:');

/** Less than this of a kind and grade on one picking is not planned for. */
const LEAST_EXPECTED_KG = 0.2;

/** Hours and parts since midnight at the place. */
export function hourOfDay(ctx: Context): number {
  const [h, m] = new Intl.DateTimeFormat('en-GB', {
    timeZone: ctx.place.timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  })
    .format(ctx.now)
    .split(':');
  return Number(h) + Number(m) / 60;
}

function lot(
  l: { id: string; crop: string; grade: Grade; kg: number; avail: number; useBy: number },
  horizon: number,
): PlanLot {
  const useBy = Math.max(l.avail, l.useBy);
  const softFrom = l.grade === 'soft' ? l.avail : Math.max(l.avail, Math.ceil(l.avail + (useBy - l.avail) * SOFT_FROM));
  return {
    ...l,
    grade: l.grade as PlanLot['grade'],
    kg: Math.round(l.kg * 1000) / 1000,
    // Beyond the plan's sight all days are alike: lots differing only there are one class to the solver.
    useBy: Math.min(useBy, horizon + FAR_DAYS),
    ...(softFrom < horizon ? { softFrom } : {}),
    lossPerDay: TRIM_PER_DAY.find((t) => useBy - l.avail >= t.days)?.share ?? 0,
  };
}

function expectedDays(ctx: Context, foodId: string, grade: Grade): number {
  const room = ctx.place.rooms.find((r) => r.kind === 'ambient');
  const clock = lotClock(ctx, { foodId, grade, roomId: room?.id ?? null, since: ctx.now.toISOString() } as HeldLot);
  return clock ? Math.floor(clock.hours / 24) : 0;
}
