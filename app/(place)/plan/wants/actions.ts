'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { wantForm } from '#lib/forms/want.ts';
import { stateWant } from '#lib/usecases/state-wants.ts';
import { placeContext } from '../../../place-context.ts';

export async function state(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(wantForm, data);
  const told = parsed.ok
    ? await stateWant(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  redirect(
    `/plan/wants?${'refused' in told ? refusedQuery(told.refused, data) : new URLSearchParams({ said: told.done.said })}`,
  );
}
