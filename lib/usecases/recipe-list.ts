/** The recipe book as this place's main kitchen reads it: every recipe and where it would go. */
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { choiceOf, type RecipeChoice } from './choose-recipe.ts';
import type { Context } from './context.ts';

/** Recipes grouped by kind in the order of the book; each is judged for the first fruit it names. Empty without a kitchen. */
export function readRecipeList(ctx: Context): { kind: string; recipes: RecipeChoice[] }[] {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) return [];
  const all = RECIPES.map((r) => choiceOf(r, r.fruits[0]?.foodIds[0] ?? '', feet(kitchen.altitudeM)));
  return [...new Set(all.map((r) => r.kind))].map((kind) => ({ kind, recipes: all.filter((r) => r.kind === kind) }));
}
