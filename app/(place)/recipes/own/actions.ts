'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { actId } from '#lib/forms/fields.ts';
import { ownRecipeForm } from '#lib/forms/own-recipe.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { dropRecipe, keepRecipe } from '#lib/usecases/own-recipes.ts';
import { placeContext } from '../../../place-context.ts';

export async function keep(data: FormData): Promise<void> {
  const refused = (why: string) => redirect(`/recipes/own?${refusedQuery(why, data)}`);
  const id = actId.safeParse(data.get('id'));
  if (!id.success) return refused(id.error.issues[0]?.message ?? '');
  const parsed = parseForm(ownRecipeForm, data);
  if (!parsed.ok) return refused(Object.values(parsed.state.fields).flat().join('; '));
  const code = String(data.get('change') ?? '') || null;
  const told = await keepRecipe(await placeContext(), { id: id.data, code, figures: parsed.value });
  if ('refused' in told) return refused(told.refused);
  revalidatePath('/', 'layout');
  redirect(`/recipes/${told.done.recipeId}?${new URLSearchParams({ said: told.done.said })}`);
}

export async function drop(data: FormData): Promise<void> {
  const id = actId.safeParse(data.get('id'));
  const code = String(data.get('code') ?? '');
  if (!id.success) redirect('/recipes');
  const told = await dropRecipe(await placeContext(), { id: id.data, code });
  revalidatePath('/', 'layout');
  redirect(`/recipes?${new URLSearchParams({ said: 'refused' in told ? told.refused : told.done.said })}`);
}
