'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { lateBatchForm, stateLateForm } from '#lib/forms/late-batch.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { logFromMemory, stateLate } from '#lib/usecases/late-batch.ts';
import { placeContext } from '../../../place-context.ts';

export async function logLate(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(lateBatchForm, data);
  const done = parsed.ok
    ? await logFromMemory(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  if ('refused' in done) return redirect(`/batches/late?${refusedQuery(done.refused, data)}`);
  redirect(`/trace/${done.done.code}?${new URLSearchParams({ said: done.done.said })}`);
}

export async function stateLateBatch(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(stateLateForm, data);
  const done = parsed.ok
    ? await stateLate(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  const told = 'refused' in done ? { refused: done.refused } : { said: done.done.said };
  redirect(`/trace/${String(data.get('lot') ?? '')}?${new URLSearchParams(told)}`);
}
