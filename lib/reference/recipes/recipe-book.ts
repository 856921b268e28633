/** Every recipe the program knows, published and house, in the order they are listed to the cook. */
import { DRIED, FREEZER_JAMS, FRIDGE_JAMS, FROZEN } from './cold-and-dry.ts';
import { JAMS } from './jams.ts';
import { JELLIES } from './jellies.ts';
import { PIE_FILLINGS, TOMATOES } from './pies-and-tomatoes.ts';
import type { Recipe } from './recipe.ts';
import { JUICES, MIXED, SAUCES } from './sauces-and-juices.ts';
import { BUTTERS, CONSERVES, MARMALADES, PASTES, PRESERVES } from './thick-spreads.ts';
import { WHOLE_FRUIT } from './whole-fruit.ts';

export const RECIPES: readonly Recipe[] = [
  ...JAMS,
  ...JELLIES,
  ...PRESERVES,
  ...CONSERVES,
  ...MARMALADES,
  ...BUTTERS,
  ...PASTES,
  ...SAUCES,
  ...WHOLE_FRUIT,
  ...PIE_FILLINGS,
  ...JUICES,
  ...TOMATOES,
  ...MIXED,
  ...FREEZER_JAMS,
  ...FRIDGE_JAMS,
  ...FROZEN,
  ...DRIED,
];

const BY_ID = new Map(RECIPES.map((recipe) => [recipe.id, recipe]));

/** The recipe of an id. RangeError when the book has none. */
export function recipeOf(id: string): Recipe {
  const recipe = BY_ID.get(id);
  if (!recipe) throw new RangeError(`"${id}" is not a recipe of the book`);
  return recipe;
}
