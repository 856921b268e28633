/**
 * Fruit as the kitchen sees it: crops of one food in one pool, since recipes ask for a food, and fruit bought in last year,
 * expected again in the same week.
 */
import { isLot } from '#lib/ledger/movement.ts';
import { freshLifeHours } from '#lib/science/fresh-life-hours.ts';
import { addDays, daysBetween } from '#lib/units/plain-date.ts';
import { freshLifeKnown } from './fresh-life-known.ts';
import type { SeasonCrop } from './season-crops.ts';
import { SEASON_WEEKS, type SeasonSnapshot } from './season-snapshot.ts';

export interface FruitPool {
  /** Food id, or "bought:" and the item. */
  id: string;
  foodId: string;
  /** Positions in the list of crops. */
  crops: number[];
  bought: { week: number; kg: number }[];
  onHandKg: number;
  keepPerWeek: number;
  /** Weeks in which the season under way ends (0 = none is) and the next one begins (52 = not within the year). */
  endsWeek: number;
  nextWeek: number;
}

/** Middle of the range of the cool room; 15 degrees where none was given (from memory: a cool room). */
const COOL_C = 15;

export function fruitPools(s: SeasonSnapshot, crops: readonly SeasonCrop[]): FruitPool[] {
  const foods = [...new Set(crops.map((c) => c.foodId))].sort();
  const grown = foods.map((foodId): FruitPool => {
    const of = crops.flatMap((c, i) => (c.foodId === foodId ? [i] : []));
    return {
      id: foodId,
      foodId,
      crops: of,
      bought: [],
      onHandKg: onHandKg(s, (l) => l.cropId !== null && l.foodId === foodId),
      keepPerWeek: keepPerWeek(s, foodId),
      ...seasonWeeks(
        s,
        of.map((i) => crops[i] as SeasonCrop),
      ),
    };
  });
  return [...grown, ...boughtPools(s)];
}

/** The weeks between a season's end and the next one's beginning, over all crops of a pool. */
function seasonWeeks(s: SeasonSnapshot, crops: readonly SeasonCrop[]): { endsWeek: number; nextWeek: number } {
  const week = (day: SeasonSnapshot['today']) =>
    Math.max(0, Math.min(SEASON_WEEKS, Math.floor(daysBetween(s.today, day) / 7)));
  const first = crops.map((c) => c.seasons[0]).filter((x) => x !== undefined);
  const year = Math.min(...first.map((x) => x.year));
  const current = first.filter((x) => x.year === year);
  const underWay = current.some((x) => x.windowFrom <= addDays(s.today, 7)) || first.some((x) => x.year > year);
  if (!underWay) return { endsWeek: 0, nextWeek: Math.min(...current.map((x) => week(x.windowFrom))) };
  const next = crops.flatMap((c) => c.seasons.filter((x) => x.year > year).map((x) => week(x.windowFrom)));
  return {
    endsWeek: Math.max(...current.map((x) => week(addDays(x.windowTo, 7)))),
    nextWeek: Math.min(SEASON_WEEKS, ...next),
  };
}

function onHandKg(s: SeasonSnapshot, fits: (l: SeasonSnapshot['lots'][number]) => boolean): number {
  const usable = s.lots.filter(
    (l) =>
      l.kind === 'fruit' &&
      l.onHand > 0 &&
      l.grade !== 'cull' &&
      !l.groundFall &&
      !l.hold &&
      (l.lockedUntil ?? '') <= s.today &&
      fits(l),
  );
  return usable.reduce((g, l) => g + l.onHand, 0) / 1000;
}

/** Of fruit of even age, the share that has more than a week left; a food without a printed life is used in its own week. */
function keepPerWeek(s: SeasonSnapshot, foodId: string): number {
  if (!freshLifeKnown(foodId)) return 0.02;
  const room = s.place.rooms.find((r) => r.kind === 'ambient');
  const storeTempC = room?.lowC != null && room.highC != null ? (room.lowC + room.highC) / 2 : COOL_C;
  const days = freshLifeHours({ foodId, grade: 'perfect', storeTempC }).hours / 24;
  return Math.max(0.02, 1 - 7 / Math.max(7, days));
}

/** Fruit bought in during the last year, by item: the same kg in the same week again. */
function boughtPools(s: SeasonSnapshot): FruitPool[] {
  const lots = new Map(s.lots.map((l) => [l.id, l]));
  const byItem = new Map<string, FruitPool>();
  for (const m of s.movements) {
    const to = isLot(m.to) ? lots.get(m.to.lot) : undefined;
    if (to?.kind !== 'fruit' || to.cropId || isLot(m.from) || m.from.sink !== 'bought') continue;
    const item = to.item ?? to.foodId ?? to.label;
    const foodId = to.foodId ?? item;
    const week = Math.floor((daysBetween(s.today, m.day) + 7 * SEASON_WEEKS) / 7);
    const pool = byItem.get(item) ?? {
      id: `bought:${item}`,
      foodId,
      crops: [],
      bought: [],
      onHandKg: onHandKg(s, (l) => l.cropId === null && (l.item ?? l.foodId) === item),
      keepPerWeek: keepPerWeek(s, foodId),
      endsWeek: 0,
      nextWeek: SEASON_WEEKS,
    };
    if (week >= 0 && week < SEASON_WEEKS) pool.bought.push({ week, kg: (m.grams ?? m.qty) / 1000 });
    pool.nextWeek = Math.min(pool.nextWeek, Math.max(0, week));
    byItem.set(item, pool);
  }
  return [...byItem.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}
