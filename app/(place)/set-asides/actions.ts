'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import {
  cutForm,
  dryForm,
  moveForm,
  pressForm,
  readyForm,
  shakeForm,
  wayForm,
  weighForm,
} from '#lib/forms/set-aside.ts';
import type { Context } from '#lib/usecases/context.ts';
import {
  endConditioning,
  moveDrying,
  shakeJar,
  startDrying,
  takeWayOut,
  weighDrying,
} from '#lib/usecases/set-aside-acts.ts';
import { cutForDrying, pressFruit } from '#lib/usecases/set-aside-makes.ts';
import { placeContext } from '../../place-context.ts';

const pathOf = (data: FormData): string => `/set-asides/${encodeURIComponent(String(data.get('code') ?? ''))}`;

export const dry = async (data: FormData): Promise<void> => act(dryForm, data, startDrying, pathOf(data));
export const move = async (data: FormData): Promise<void> => act(moveForm, data, moveDrying, pathOf(data));
export const weigh = async (data: FormData): Promise<void> => act(weighForm, data, weighDrying, pathOf(data));
export const shake = async (data: FormData): Promise<void> => act(shakeForm, data, shakeJar, pathOf(data));
export const ready = async (data: FormData): Promise<void> => act(readyForm, data, endConditioning, pathOf(data));
export const way = async (data: FormData): Promise<void> => act(wayForm, data, takeWayOut, pathOf(data));
export const press = async (data: FormData): Promise<void> =>
  act(pressForm, data, pressFruit, '/set-asides/press', '/set-asides');
export const cut = async (data: FormData): Promise<void> =>
  act(cutForm, data, cutForDrying, '/set-asides/dry', '/set-asides');

async function act<T>(
  schema: z.ZodType<T>,
  data: FormData,
  run: (ctx: Context, input: T) => Promise<{ done: { said: string }; replayed: boolean } | { refused: string }>,
  back: string,
  then = back,
): Promise<void> {
  const ctx = await placeContext();
  const parsed = parseForm(schema, data);
  const told = parsed.ok
    ? await run(ctx, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  if ('refused' in told) redirect(`${back}?${refusedQuery(told.refused, data)}`);
  redirect(`${then}?${new URLSearchParams({ said: told.done.said })}`);
}
