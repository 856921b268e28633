'use server';
import { z } from 'zod';
import { actId } from '#lib/forms/fields.ts';
import { ownRecipeForm } from '#lib/forms/own-recipe.ts';
import { dropRecipe, keepRecipe } from '#lib/usecases/own-recipes.ts';
import { runAct, saying } from '../../../run-act.ts';

const withId = z.object({ id: actId });

export async function keep(data: FormData): Promise<void> {
  const code = String(data.get('change') ?? '') || null;
  await runAct(data, {
    form: withId.and(ownRecipeForm),
    run: (ctx, { id, ...figures }) => keepRecipe(ctx, { id, code, figures }),
    back: '/recipes/own',
    next: (done) => saying(`/recipes/${done.recipeId}`, done),
  });
}

export async function drop(data: FormData): Promise<void> {
  const code = String(data.get('code') ?? '');
  await runAct(data, {
    form: withId,
    run: (ctx, { id }) => dropRecipe(ctx, { id, code }),
    back: '/recipes',
  });
}
