'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm } from '#lib/forms/parse-form.ts';
import { plainHarvest } from '#lib/forms/plain-harvest.ts';
import { recordPlain } from '#lib/usecases/record-plain-harvest.ts';
import { placeContext } from '../../place-context.ts';

/** The shed screen without a script: one bucket, then back to the page with what was said. */
export async function recordPlainHarvest(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(plainHarvest, data);
  if (!parsed.ok)
    return redirect(
      `/harvest?${new URLSearchParams({ refused: Object.values(parsed.state.fields).flat().join('; ') })}`,
    );
  const done = await recordPlain(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(`/harvest?${new URLSearchParams('refused' in done ? { refused: done.refused } : { said: done.done.said })}`);
}
