'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { takeBackForm, weighAgainForm } from '#lib/forms/put-right.ts';
import type { Context } from '#lib/usecases/context.ts';
import { takeBack, weighAgain } from '#lib/usecases/put-right.ts';
import { readPutRight } from '#lib/usecases/read-put-right.ts';
import { placeContext } from '../../place-context.ts';

export const takeBackEntry = async (data: FormData): Promise<void> => putRight(takeBackForm, data, takeBack);
export const weighEntryAgain = async (data: FormData): Promise<void> => putRight(weighAgainForm, data, weighAgain);

type Done = { done: { said: string } } | { refused: string };

/** Back to the lot it was about, with what changed; refused, back to the entry with what was typed. */
async function putRight<T>(
  schema: z.ZodType<T>,
  data: FormData,
  run: (ctx: Context, value: T) => Promise<Done>,
): Promise<void> {
  const context = await placeContext();
  const act = String(data.get('act') ?? '');
  const parsed = parseForm(schema, data);
  const done: Done = parsed.ok
    ? await run(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  if ('refused' in done) return redirect(`/put-right/${encodeURIComponent(act)}?${refusedQuery(done.refused, data)}`);
  const lot = (await readPutRight(context, act, null))?.lot;
  redirect(`${lot ? `/trace/${lot}` : '/'}?${new URLSearchParams({ said: done.done.said })}`);
}
