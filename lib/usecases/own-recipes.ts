/** A household writes a recipe, changes it (a new version) and takes it off the list; what was cooked keeps its version. */
import { ownDoubts } from '#lib/reference/recipes/own-doubts.ts';
import type { OwnFigures } from '#lib/reference/recipes/own-recipe.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { retireOwnRecipe, saveOwnRecipe } from '#lib/store/own-recipe-store.ts';
import { loadPlace } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { freeCode } from './free-code.ts';

/** `code` of the recipe that is changed; null for a new one. */
export interface OwnRecipeInput {
  id: string;
  code: string | null;
  figures: OwnFigures;
}

export async function keepRecipe(
  ctx: Context,
  { id, code, figures }: OwnRecipeInput,
): Promise<Written<{ recipeId: string; said: string }>> {
  const act = actOf(ctx, id, 'place', { recipe: code, figures });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const versions = ((await loadPlace(tx, ctx.place.id)) ?? ctx.place).ownRecipes;
    const own = versions.filter((r) => r.code === code);
    if (code !== null && own.length === 0) return { refused: `there is no recipe ${code} of yours` };
    const taken = new Set(versions.map((r) => r.code));
    const kept = code ?? freeCode(figures.title, { taken, longest: 40, otherwise: 'recipe' });
    const version = 1 + Math.max(0, ...own.map((r) => r.version));
    const recipeId = `own-${kept}-${version}`;
    await saveOwnRecipe(tx, ctx.place.id, { recipeId, code: kept, version, retired: false, figures });
    if (own.some((r) => r.retired)) await retireOwnRecipe(tx, ctx.place.id, kept, false);
    const said =
      version === 1
        ? `${figures.title} is in your book.`
        : `${figures.title} is changed. What was cooked before keeps version ${version - 1}.`;
    const doubts = ownDoubts(figures);
    const marked = doubts.length > 0 ? ` Doubtful: ${doubts.join('; ')}.` : '';
    return { entry: { act, lots: [], movements: [], changes: [] }, tell: { recipeId, said: `${said}${marked}` } };
  });
}

export async function dropRecipe(
  ctx: Context,
  { id, code }: { id: string; code: string },
): Promise<Written<{ said: string }>> {
  const act = actOf(ctx, id, 'place', { recipe: code, gone: true });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const own = ctx.place.ownRecipes.filter((r) => r.code === code);
    if (own.length === 0) return { refused: `there is no recipe ${code} of yours` };
    await retireOwnRecipe(tx, ctx.place.id, code, true);
    const title = own.at(-1)?.figures.title ?? code;
    return {
      entry: { act, lots: [], movements: [], changes: [] },
      tell: { said: `${title} is offered no longer. Batches cooked by it still show it.` },
    };
  });
}
