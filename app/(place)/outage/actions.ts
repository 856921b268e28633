'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { outageForm, rescueForm } from '#lib/forms/outage.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { rescue as rescueIt, startOutage } from '#lib/usecases/outage-acts.ts';
import { placeContext } from '../../place-context.ts';

export async function start(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(outageForm, data);
  const done = parsed.ok
    ? await startOutage(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  if ('refused' in done) return redirect(`/outage?${refusedQuery(done.refused, data)}`);
  revalidatePath('/', 'layout');
  redirect(`/outage/${done.done.outage}`);
}

/** What became of some of it. */
export async function rescue(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(rescueForm, data);
  const done = parsed.ok
    ? await rescueIt(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  const back = `/outage/${encodeURIComponent(String(data.get('outage') ?? ''))}`;
  if ('refused' in done) return redirect(`${back}?${refusedQuery(done.refused, data)}`);
  revalidatePath('/', 'layout');
  redirect(`${back}?${new URLSearchParams({ said: done.done.said })}`);
}
