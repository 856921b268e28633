'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { actId } from '#lib/forms/fields.ts';
import { fittingForm, HABIT_FIELDS } from '#lib/forms/fittings.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { keepHabits } from '#lib/usecases/keep-habits.ts';
import { placeContext } from '../../../place-context.ts';

export async function keep(data: FormData): Promise<void> {
  const ctx = await placeContext();
  const id = actId.safeParse(data.get('id'));
  const parsed = parseForm(fittingForm(HABIT_FIELDS), data);
  const refused = (why: string) => redirect(`/place/habits?${refusedQuery(why, data)}`);
  if (!id.success) return refused(id.error.issues[0]?.message ?? '');
  if (!parsed.ok) return refused(Object.values(parsed.state.fields).flat().join('; '));
  const told = await keepHabits(ctx, { id: id.data, values: parsed.value });
  if ('refused' in told) return refused(told.refused);
  revalidatePath('/', 'layout');
  redirect(`/place?${new URLSearchParams({ said: told.done.said })}`);
}
