'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { actId } from '#lib/forms/fields.ts';
import { fittingForm } from '#lib/forms/fittings.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { houseTopic } from '#lib/usecases/keep-habits.ts';
import { placeContext } from '../../../../place-context.ts';

export async function keep(data: FormData): Promise<void> {
  const name = String(data.get('topic') ?? '');
  const topic = houseTopic(name);
  if (!topic) redirect('/place');
  const refused = (why: string) => redirect(`/place/house/${name}?${refusedQuery(why, data)}`);
  const id = actId.safeParse(data.get('id'));
  if (!id.success) return refused(id.error.issues[0]?.message ?? '');
  const parsed = parseForm(fittingForm(topic.fields), data);
  if (!parsed.ok) return refused(Object.values(parsed.state.fields).flat().join('; '));
  const told = await topic.keep(await placeContext(), { id: id.data, values: parsed.value });
  if ('refused' in told) return refused(told.refused);
  revalidatePath('/', 'layout');
  redirect(`/place?${new URLSearchParams({ said: told.done.said })}`);
}
