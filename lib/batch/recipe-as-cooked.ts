/**
 * The recipe with the cook's own amounts and finish put in, as the gate has to see it: a jam stopped at 45 °Bx or a conserve
 * with twice the nuts is no longer the recipe that was tested, whatever its title.
 */
import type { Dose, Recipe } from '#lib/reference/recipes/recipe.ts';
import type { AskedAmounts } from './measured-doses.ts';

export interface AsCooked {
  readonly recipe: Recipe;
  readonly changed: boolean;
}

/** `baseG`: fruit or juice in one pan, grams; amounts are for one pan. */
export function recipeAsCooked(
  recipe: Recipe,
  q: { readonly baseG: number; readonly amounts?: AskedAmounts | undefined; readonly targetBrix?: number | undefined },
): AsCooked {
  const { finish } = recipe;
  const stopped =
    finish.by === 'solids' && q.targetBrix !== undefined && q.targetBrix !== finish.brix ? q.targetBrix : null;
  const others = recipe.others.map((d): Dose => {
    const asked = q.amounts?.[d.item];
    return asked === undefined || !(q.baseG > 0) ? d : { ...d, gPerKg: (1000 * asked) / q.baseG };
  });
  return {
    recipe: { ...recipe, others, ...(stopped === null ? {} : { finish: { by: 'solids', brix: stopped } as const }) },
    changed: stopped !== null || Object.keys(q.amounts ?? {}).length > 0,
  };
}
