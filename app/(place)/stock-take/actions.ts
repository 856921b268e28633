'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm } from '#lib/forms/parse-form.ts';
import { COUNT_LISTS, countForm, SETTLE_LISTS, settleForm } from '#lib/forms/stock-take.ts';
import { recordCount, settle } from '#lib/usecases/stock-take.ts';
import { placeContext } from '../../place-context.ts';

export async function countShelf(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(countForm, data, COUNT_LISTS);
  const shelf = String(data.get('place') ?? '');
  if (!parsed.ok)
    return redirect(
      `/stock-take?${new URLSearchParams({ shelf, refused: Object.values(parsed.state.fields).flat().join('; ') })}`,
    );
  const done = await recordCount(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(
    `/stock-take?${new URLSearchParams('refused' in done ? { shelf, refused: done.refused } : { count: done.done.countId })}`,
  );
}

export async function settleShelf(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(settleForm, data, SETTLE_LISTS);
  const count = String(data.get('countId') ?? '');
  if (!parsed.ok)
    return redirect(
      `/stock-take?${new URLSearchParams({ count, refused: Object.values(parsed.state.fields).flat().join('; ') })}`,
    );
  const done = await settle(context, parsed.value);
  revalidatePath('/', 'layout');
  redirect(
    `/stock-take?${new URLSearchParams('refused' in done ? { count, refused: done.refused } : { count, said: done.done.said })}`,
  );
}
