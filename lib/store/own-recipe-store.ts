/** Recipes a household wrote: each version a row of its own. */
import type { Tx } from './database/open-database.ts';
import type { OwnRecipe } from './place.ts';

export async function saveOwnRecipe(tx: Tx, placeId: string, r: OwnRecipe): Promise<void> {
  const { figures, ...row } = r;
  await tx.ownRecipe.create({
    data: { ...row, id: `${placeId}:${r.recipeId}`, placeId, figures: figures as unknown as object },
  });
}

/** Offers a recipe no longer, or again; every version of it stays. */
export const retireOwnRecipe = (tx: Tx, placeId: string, code: string, retired: boolean): Promise<unknown> =>
  tx.ownRecipe.updateMany({ where: { placeId, code }, data: { retired } });
