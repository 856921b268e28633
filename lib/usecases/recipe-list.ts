/** The recipe book as this place's main kitchen reads it: every recipe and where it would go. */
import { ownRecipe } from '#lib/reference/recipes/own-recipe.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { choiceOf, type RecipeChoice, usualFruit } from './choose-recipe.ts';
import type { Context } from './context.ts';
import { ownOffered } from './recipes-here.ts';

/** The household's own first, then the book grouped by kind; each is judged for the fruits it names first, in their usual shares. Empty without a kitchen. */
export function readRecipeList(ctx: Context): { kind: string; recipes: RecipeChoice[] }[] {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) return [];
  const choices = (recipes: readonly Recipe[]) =>
    recipes.map((r) => choiceOf(r, usualFruit(r), feet(kitchen.altitudeM)));
  const own = choices(ownOffered(ctx.place).map((r) => ownRecipe(r.recipeId, r.figures)));
  const book = choices(RECIPES);
  const kinds = [...new Set(book.map((r) => r.kind))];
  return [
    ...(own.length > 0 ? [{ kind: 'your own', recipes: own }] : []),
    ...kinds.map((kind) => ({ kind, recipes: book.filter((r) => r.kind === kind) })),
  ];
}
