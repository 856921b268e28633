'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { bringBackForm, takeForm } from '#lib/forms/take.ts';
import { jarsBack } from '#lib/usecases/jars-back.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { placeContext } from '../../place-context.ts';

/** "Take one" on the shelf screen: one tap. */
export const take = async (data: FormData): Promise<void> => takeAndReturn(data, '/pantry');
export const takeFromLine = async (data: FormData): Promise<void> =>
  takeAndReturn(data, `/pantry/${encodeURIComponent(String(data.get('slug') ?? ''))}`);

export async function bringBack(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(bringBackForm, data);
  if (!parsed.ok)
    return redirect(`/pantry?${refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data)}`);
  const done = await jarsBack(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(`/pantry?${new URLSearchParams('refused' in done ? { refused: done.refused } : { said: done.done.said })}`);
}

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
