/**
 * What the household wants of each product: litres still wanted until its next harvest, as it said itself or from what left
 * the shelf in the last year, less what is there. The first of them are worth most; the value falls, so that nobody makes forty jars of
 * what is never opened. Worth per litre is a starting figure of this program (estimate), for the household to overrule.
 */

import type { PlanProduct, StoragePlace } from '#lib/plan/instance.ts';
import type { RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { leftByRecipe } from '#lib/store/ledger-store.ts';
import { statedUse } from '#lib/store/place-store.ts';
import { addDays, daysBetween } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { recipesHere } from './recipes-here.ts';

/** Worth of a litre while it is wanted, in the place's money. Estimate. */
const WORTH: Partial<Record<RecipeKind, number>> = {
  jam: 12,
  jelly: 13,
  preserve: 14,
  conserve: 14,
  marmalade: 13,
  butter: 12,
  paste: 18,
  sauce: 5,
  puree: 5,
  'whole-fruit': 7,
  'pie-filling': 8,
  juice: 4,
  syrup: 10,
  leather: 8,
  dried: 9,
  candied: 12,
  'freezer-jam': 10,
  'fridge-jam': 8,
  frozen: 4,
  blend: 10,
  tomato: 5,
};
/**
 * A thing nobody here has made before is worth trying, a few of it, at less: estimate. With as much as a known line the
 * plan would be all novelties.
 */
const UNTRIED_PIECES = 4;
const UNTRIED_SHARE = 0.6;
/** Worth of further litres beside the first: half as many at 45 %, as many again at 15 %. Estimate. */
const SECOND = { share: 0.5, value: 0.45 };
const THIRD = { share: 1, value: 0.15 };
/** Days of record below which a year is not reckoned from them. */
const LEAST_DAYS = 120;
export const WEEKS_A_YEAR = 52;

/** Pieces of each recipe wanted in a year: what the household stated, else what left. */
export async function wantedInAYear(ctx: Context): Promise<Map<string, number>> {
  const [used, stated] = await Promise.all([usedInAYear(ctx), statedUse(ctx.db, ctx.place.id)]);
  if (stated.length === 0) return used;
  const perWeek = new Map(stated.map((s) => [s.line, s.perWeek]));
  const said = recipesHere(ctx.place).flatMap((r): [string, number][] => {
    const week = perWeek.get(r.title);
    return week === undefined ? [] : [[r.id, Math.round(week * WEEKS_A_YEAR)]];
  });
  return new Map([...used, ...said].sort(([x], [y]) => (x < y ? -1 : 1)));
}

/** Pieces of each recipe that leave in a year (eaten, given, sold), reckoned up from the days on record; mistakes put right cancel. */
export async function usedInAYear(ctx: Context): Promise<Map<string, number>> {
  const { pieces, firstDay } = await leftByRecipe(ctx.db, ctx.place.id, {
    from: addDays(ctx.today, -365),
    to: ctx.today,
    sinks: ['eaten', 'given', 'sold'],
  });
  const days = Math.max(LEAST_DAYS, firstDay ? daysBetween(firstDay, ctx.today) : 365);
  const yearly = [...pieces.entries()].map(([recipe, n]): [string, number] => [recipe, (n * 365) / days]);
  return new Map(yearly.filter(([, n]) => n > 0).sort(([x], [y]) => (x < y ? -1 : 1)));
}

export interface Want {
  recipeId: string;
  name: string;
  kind: RecipeKind;
  place: StoragePlace;
  unitLitres: number;
  /** Pieces a year; undefined where none ever left. */
  used: number | undefined;
  onHand: number;
}

export function wantOf(q: Want): PlanProduct {
  const yearly = q.used ?? UNTRIED_PIECES;
  const wanted = Math.max(0, yearly - q.onHand) * q.unitLitres;
  const value = (WORTH[q.kind] ?? 8) * (q.used === undefined ? UNTRIED_SHARE : 1);
  return {
    id: q.recipeId,
    name: q.name,
    place: q.place,
    segments: [
      { litres: Math.max(0.001, wanted), value },
      { litres: Math.max(q.unitLitres * 2, yearly * SECOND.share * q.unitLitres), value: value * SECOND.value },
      { litres: Math.max(q.unitLitres * 4, yearly * THIRD.share * q.unitLitres), value: value * THIRD.value },
    ],
  };
}
