'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm } from '#lib/forms/parse-form.ts';
import { forgetForm } from '#lib/forms/ph.ts';
import { forgetLearnt } from '#lib/usecases/learn-forget.ts';
import { placeContext } from '../../place-context.ts';

export async function forget(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(forgetForm, data);
  const done = parsed.ok
    ? await forgetLearnt(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  redirect(`/trust?${new URLSearchParams('refused' in done ? { refused: done.refused } : { said: done.done.said })}`);
}
