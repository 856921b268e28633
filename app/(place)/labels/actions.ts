'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { ingredientForm, ruleCardForm } from '#lib/forms/labels.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { keepRuleCard, noteIngredient } from '#lib/usecases/note-jars.ts';
import { placeContext } from '../../place-context.ts';

export async function note(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(ingredientForm, data);
  if (!parsed.ok)
    return redirect(`/labels?${refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data)}`);
  const done = await noteIngredient(context, parsed.value);
  revalidatePath('/', 'layout');
  const told = 'refused' in done ? { refused: done.refused } : { said: done.done.said };
  redirect(`/labels?${new URLSearchParams({ lot: parsed.value.lot, ...told })}`);
}

export async function keepCard(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(ruleCardForm, data);
  if (!parsed.ok)
    return redirect(`/labels?${refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data)}`);
  const done = await keepRuleCard(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(`/labels?${new URLSearchParams('refused' in done ? { refused: done.refused } : { said: done.done.said })}`);
}
