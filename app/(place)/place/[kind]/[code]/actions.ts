'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { actId } from '#lib/forms/fields.ts';
import { fittingForm } from '#lib/forms/fittings.ts';
import { formValues, parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import type { Context } from '#lib/usecases/context.ts';
import {
  dropFitting,
  type FittingAddress,
  type FittingView,
  fittingAddress,
  keepFitting,
  readFitting,
} from '#lib/usecases/fit-place.ts';
import { placeContext } from '../../../../place-context.ts';

export const keep = async (data: FormData): Promise<void> =>
  change(data, async (ctx, id, view) => {
    const parsed = parseForm(fittingForm(view.fields), data);
    if (!parsed.ok) return { refused: Object.values(parsed.state.fields).flat().join('; ') };
    return keepFitting(ctx, { id, at: view, values: parsed.value });
  });

export const drop = async (data: FormData): Promise<void> =>
  change(data, (ctx, id, at) => dropFitting(ctx, { id, at }));

async function change(
  data: FormData,
  run: (
    ctx: Context,
    id: string,
    view: FittingView,
  ) => Promise<{ refused: string } | { done: { said: string }; replayed: boolean }>,
): Promise<void> {
  const ctx = await placeContext();
  const sent = formValues(data) as Record<string, string>;
  const address = fittingAddress(sent.kind ?? '', sent.code ?? '', sent);
  const view = address && readFitting(ctx, address);
  const id = actId.safeParse(sent.id);
  if (!view || !id.success)
    redirect(`/place?${new URLSearchParams({ refused: 'the form has lost its place; open it again' })}`);
  const told = await run(ctx, id.data, view);
  if ('refused' in told) redirect(`${pathOf(view)}?${refusedQuery(told.refused, data)}`);
  revalidatePath('/', 'layout');
  redirect(`/place?${new URLSearchParams({ said: told.done.said })}`);
}

const pathOf = (a: FittingAddress): string => `/place/${a.kind}/${encodeURIComponent(a.code)}`;
