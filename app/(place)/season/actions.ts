'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { sightForm } from '#lib/forms/sight.ts';
import { recordSight } from '#lib/usecases/record-sight.ts';
import { placeContext } from '../../place-context.ts';

/** What somebody sees hanging, from under a crop's curve. */
export async function see(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(sightForm, data);
  if (!parsed.ok)
    return redirect(`/season?${refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data)}`);
  const done = await recordSight(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(`/season?${new URLSearchParams('refused' in done ? { refused: done.refused } : { said: done.done.said })}`);
}
