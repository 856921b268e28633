/**
 * What the household wants of each product: litres still wanted until its next harvest, from what left the shelf in the
 * last year, less what is there. The first of them are worth most; the value falls, so that nobody makes forty jars of
 * what is never opened. Worth per litre is a starting figure of this program (estimate), for the household to overrule.
 */
import { isLot } from '#lib/ledger/movement.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { RecipeKind } from '#lib/reference/recipes/recipe.ts';
import type { PlanProduct, StoragePlace } from '#lib/plan/instance.ts';
import { movementsBetween } from '#lib/store/ledger-store.ts';
import { addDays } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

/** Worth of a litre while it is wanted, in the place's money. Estimate. */
const WORTH: Partial<Record<RecipeKind, number>> = {
  jam: 12, jelly: 13, preserve: 14, conserve: 14, marmalade: 13, butter: 12, paste: 18, sauce: 5, puree: 5, 'whole-fruit': 7, 'pie-filling': 8,
  juice: 4, syrup: 10, leather: 8, dried: 9, candied: 12, 'freezer-jam': 10, 'fridge-jam': 8, frozen: 4, blend: 10, tomato: 5,
};
/** Pieces used in a year where the ledger says nothing yet. Estimate: two a quarter. */
const FIRST_YEAR_PIECES = 8;

/** Pieces of each recipe that left in the last year (eaten, given, sold). */
export async function usedLastYear(ctx: Context, lots: readonly HeldLot[]): Promise<Map<string, number>> {
  const recipeOfLot = new Map(lots.filter((l) => l.recipeId && l.unit !== 'g').map((l) => [l.id, l.recipeId as string]));
  const used = new Map<string, number>();
  for (const m of await movementsBetween(ctx.db, ctx.place.id, addDays(ctx.today, -365), ctx.today)) {
    if (!isLot(m.from) || isLot(m.to) || !['eaten', 'given', 'sold'].includes(m.to.sink)) continue;
    const recipe = recipeOfLot.get(m.from.lot);
    if (recipe) used.set(recipe, (used.get(recipe) ?? 0) + m.qty);
  }
  return used;
}

export function wantOf(q: { recipeId: string; name: string; kind: RecipeKind; place: StoragePlace; unitLitres: number; used: number | undefined; onHand: number }): PlanProduct {
  const yearly = q.used ?? FIRST_YEAR_PIECES;
  const wanted = Math.max(0, yearly - q.onHand) * q.unitLitres;
  const value = WORTH[q.kind] ?? 8;
  const half = yearly * 0.5 * q.unitLitres;
  return {
    id: q.recipeId,
    name: q.name,
    place: q.place,
    segments: [
      { litres: Math.max(0.001, wanted), value },
      { litres: Math.max(q.unitLitres * 2, half), value: value * 0.45 },
      { litres: Math.max(q.unitLitres * 4, half * 2), value: value * 0.15 },
    ],
  };
}
