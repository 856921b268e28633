'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { fruitReceivedForm } from '#lib/forms/fruit-received.ts';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { receiveFruit } from '#lib/usecases/receive-fruit.ts';
import { placeContext } from '../../../place-context.ts';

export async function bringIn(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(fruitReceivedForm, data);
  const told = parsed.ok
    ? await receiveFruit(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  if ('refused' in told) redirect(`/harvest/elsewhere?${refusedQuery(told.refused, data)}`);
  revalidatePath('/', 'layout');
  const { said, lotId, code } = told.done;
  redirect(`/harvest/elsewhere?${new URLSearchParams({ said, lotId, code })}`);
}
