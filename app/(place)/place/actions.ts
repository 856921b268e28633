'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import { boughtForm, cropForm, waterForm } from '#lib/forms/place.ts';
import { plantCrop, readWater, receive } from '#lib/usecases/change-place.ts';
import type { Context } from '#lib/usecases/context.ts';
import { placeContext } from '../../place-context.ts';

export const bringIn = async (data: FormData): Promise<void> =>
  change(boughtForm, data, async (ctx, b) => answerOf(await receive(ctx, b)));
export const noteWater = async (data: FormData): Promise<void> =>
  change(waterForm, data, async (ctx, w) => answerOf(await readWater(ctx, w)));
export const addCrop = async (data: FormData): Promise<void> =>
  change(cropForm, data, async (ctx, c) => {
    await plantCrop(ctx, c);
    return { said: `${c.label} stands in row ${c.row}.` };
  });

const answerOf = (done: { refused: string } | { done: { said: string } }) =>
  'refused' in done ? { refused: done.refused } : { said: done.done.said };

async function change<T>(
  schema: z.ZodType<T>,
  data: FormData,
  run: (ctx: Context, value: T) => Promise<{ said: string } | { refused: string }>,
): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(schema, data);
  const told = parsed.ok
    ? await run(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  redirect(`/place?${'refused' in told ? refusedQuery(told.refused, data) : new URLSearchParams(told)}`);
}
