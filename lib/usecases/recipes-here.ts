/** The recipes of a place: the book, and those its household wrote. The one spot where a recipe's id is resolved. */
import { ownRecipe } from '#lib/reference/recipes/own-recipe.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import type { OwnRecipe, Place } from '#lib/store/place.ts';

type Here = Pick<Place, 'ownRecipes'>;

/** The newest version of each recipe the household wrote and still offers. */
export const ownOffered = ({ ownRecipes }: Here): OwnRecipe[] =>
  ownRecipes.filter((r) => !r.retired && !ownRecipes.some((o) => o.code === r.code && o.version > r.version));

/** Every recipe that is offered here: the household's own first, then the book. */
export const recipesHere = (place: Here): readonly Recipe[] => [
  ...ownOffered(place).map((r) => ownRecipe(r.recipeId, r.figures)),
  ...RECIPES,
];

/** A recipe by its id, also a version that is no longer offered; undefined when there is none. */
export function recipeHere(place: Here, id: string): Recipe | undefined {
  const own = place.ownRecipes.find((r) => r.recipeId === id);
  return own ? ownRecipe(own.recipeId, own.figures) : RECIPES.find((r) => r.id === id);
}

/** The recipe a record names. RangeError when neither the book nor the household has it. */
export function recordedRecipe(place: Here, id: string): Recipe {
  const recipe = recipeHere(place, id);
  if (!recipe) throw new RangeError(`"${id}" is not a recipe of this place`);
  return recipe;
}
