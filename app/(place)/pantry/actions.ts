'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { takeForm } from '#lib/forms/take.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { placeContext } from '../../place-context.ts';

/** "Take one" on the shelf screen: one tap. */
export const take = async (data: FormData): Promise<void> => takeAndReturn(data, '/pantry');
export const takeFromLine = async (data: FormData): Promise<void> =>
  takeAndReturn(data, `/pantry/${encodeURIComponent(String(data.get('slug') ?? ''))}`);

async function takeAndReturn(data: FormData, back: string): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(takeForm, data);
  if (!parsed.ok)
    return redirect(`${back}?${refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data)}`);
  const done = await takeJars(context, { ...parsed.value, person: null, at: null });
  revalidatePath('/', 'layout');
  if ('refused' in done) return redirect(`${back}?${refusedQuery(done.refused, data)}`);
  const target = done.done.left === 0 ? '/pantry' : back;
  redirect(`${target}?${new URLSearchParams({ said: done.done.said })}`);
}
