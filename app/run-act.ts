/** A form that was sent: read, run, and back to a page with what was said, or with the reason and what was typed. */
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { parseForm, refusedQuery } from '#lib/forms/parse-form.ts';
import type { Context } from '#lib/usecases/context.ts';
import { placeContext } from './place-context.ts';

export interface Sent<T, D> {
  form: z.ZodType<T>;
  /** Fields that may be there several times. */
  lists?: readonly string[];
  run: (ctx: Context, value: T) => Promise<{ done: D } | { refused: string }>;
  /** The page the form stands on: a refusal is shown there. */
  back: string;
  /** Where it goes on, with what is said there; back to the same page when not given. */
  next?: (done: D, value: T, ctx: Context) => string | Promise<string>;
}

export async function runAct<T, D extends { said?: string }>(data: FormData, sent: Sent<T, D>): Promise<never> {
  const context = await placeContext();
  const parsed = parseForm(sent.form, data, sent.lists);
  if (!parsed.ok)
    redirect(
      withQuery(sent.back, refusedQuery(Object.values(parsed.state.fields).flat().join('; '), data, sent.lists)),
    );
  const told = await sent.run(context, parsed.value);
  revalidatePath('/', 'layout');
  if ('refused' in told) redirect(withQuery(sent.back, refusedQuery(told.refused, data, sent.lists)));
  redirect((await sent.next?.(told.done, parsed.value, context)) ?? saying(sent.back, told.done));
}

/** A page with what was said. */
export const saying = (path: string, { said }: { said?: string }): string =>
  said ? withQuery(path, new URLSearchParams({ said })) : path;

const withQuery = (path: string, query: URLSearchParams | string): string =>
  `${path}${path.includes('?') ? '&' : '?'}${query}`;
