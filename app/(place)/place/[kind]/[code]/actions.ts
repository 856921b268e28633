'use server';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { actId } from '#lib/forms/fields.ts';
import { fittingForm } from '#lib/forms/fittings.ts';
import { formValues } from '#lib/forms/parse-form.ts';
import { dropFitting, type FittingView, fittingAddress, keepFitting, readFitting } from '#lib/usecases/fit-place.ts';
import { placeContext } from '../../../../place-context.ts';
import { runAct, saying } from '../../../../run-act.ts';

const withId = z.object({ id: actId });

export async function keep(data: FormData): Promise<void> {
  const at = await viewOf(data);
  await runAct(data, {
    form: withId.and(fittingForm(at.fields)),
    run: (ctx, { id, ...values }) => keepFitting(ctx, { id, at, values }),
    back: pathOf(at),
    next: (done) => saying('/place', done),
  });
}

export async function drop(data: FormData): Promise<void> {
  const at = await viewOf(data);
  await runAct(data, {
    form: withId,
    run: (ctx, { id }) => dropFitting(ctx, { id, at }),
    back: pathOf(at),
    next: (done) => saying('/place', done),
  });
}

async function viewOf(data: FormData): Promise<FittingView> {
  const ctx = await placeContext();
  const sent = formValues(data) as Record<string, string>;
  const address = fittingAddress(sent.kind ?? '', sent.code ?? '', sent);
  const view = address && readFitting(ctx, address);
  if (!view) redirect(`/place?${new URLSearchParams({ refused: 'the form has lost its place; open it again' })}`);
  return view;
}

const pathOf = (a: FittingView): string => `/place/${a.kind}/${encodeURIComponent(a.code)}`;
