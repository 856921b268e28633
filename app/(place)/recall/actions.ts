'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { parseForm } from '#lib/forms/parse-form.ts';
import { drillForm, holdForm } from '#lib/forms/recall.ts';
import type { Told } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { holdCircle, recordDrill } from '#lib/usecases/hold-circle.ts';
import { placeContext } from '../../place-context.ts';

export const hold = async (data: FormData): Promise<void> => act(holdForm, data, holdCircle);
export const drill = async (data: FormData): Promise<void> => act(drillForm, data, recordDrill);

type Done = { done: Told } | { refused: string };

async function act<T>(
  schema: z.ZodType<T>,
  data: FormData,
  run: (ctx: Context, value: T) => Promise<Done>,
): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(schema, data);
  const done: Done = parsed.ok
    ? await run(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  const told = 'refused' in done ? { refused: done.refused } : { said: done.done.said };
  redirect(`/recall?${new URLSearchParams({ code: String(data.get('code') ?? ''), ...told })}`);
}
