/** What it would take to place some fruit tonight: the household's usual preserve of it, its jars and its work, and the freezer. */

import type { Grade } from '#lib/ledger/lot.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { counted, duration } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { litresPerKg, placeOf } from './plan-recipes.ts';
import { recipesHere } from './recipes-here.ts';

/** In this order of use: what most households make first of a soft fruit. Common practice. */
const KINDS: readonly Recipe['kind'][] = ['jam', 'jelly', 'butter', 'sauce', 'whole-fruit', 'juice', 'dried'];

/** "about 12 half-pints of damson jam, 1 h 30 min at the stove; or 5 packs in the freezer"; null when the book has nothing for it. */
export function wouldTake(ctx: Context, foodId: string, grade: Grade, grams: number): string | null {
  const fits = recipesHere(ctx.place).filter(
    (r) =>
      r.fruits[0]?.foodIds.includes(foodId) &&
      r.fruits.filter((p) => p.share.low > 0).length === 1 &&
      r.grades.some((g) => g === grade),
  );
  const cooked = KINDS.map((kind) => fits.find((r) => r.kind === kind)).find((r) => r !== undefined);
  const frozen = fits.find((r) => placeOf(r.kind) === 'freezer' && r.finish.by === 'pack');
  const parts = [
    cooked ? cookedText(ctx, cooked, grams) : null,
    frozen && frozen.finish.by === 'pack' ? packText(frozen.finish.packG, grams) : null,
  ].filter((t) => t !== null);
  return parts.length > 0 ? parts.join('; or ') : null;
}

function cookedText(ctx: Context, recipe: Recipe, grams: number): string | null {
  const litres = litresPerKg(recipe);
  const jar = ctx.place.jarKinds.find((k) => k.size === recipe.jarSizes[0]);
  if (litres === null || !jar) return null;
  const kg = grams / 1000;
  const jars = Math.floor((litres * kg) / (jar.fillMl / 1000));
  if (jars < 1) return null;
  const minutes = (recipe.work.activeFixedH + recipe.work.activeHPerKg * kg) * 60;
  return `about ${counted(jars, jar.label)} of ${recipe.title.toLowerCase()}, ${duration(Math.round(minutes / 5) * 5)} of work`;
}

const packText = (packG: number, grams: number): string | null =>
  grams < packG ? null : `${counted(Math.floor(grams / packG), 'pack')} in the freezer`;
