/** FormData to typed values: every field's messages and the typed text come back, so nothing has to be typed twice. */
import type { z } from 'zod';

/** What a form shows after it was sent. A closed union: a page can only be in one of these. */
export type FormState =
  | { status: 'idle' }
  | { status: 'invalid'; fields: Record<string, string[]>; values: Record<string, string> }
  | { status: 'refused'; reason: string; values: Record<string, string> }
  | { status: 'done'; said: string };

export const IDLE: FormState = { status: 'idle' };

/** The text fields of a form; keys of the framework (starting with $) left out, repeated keys joined as a list by `lists`. */
export function formValues(data: FormData, lists: readonly string[] = []): Record<string, string | string[]> {
  const values: Record<string, string | string[]> = {};
  for (const key of new Set(data.keys())) {
    if (key.startsWith('$')) continue;
    const all = data.getAll(key).filter((v): v is string => typeof v === 'string');
    values[key] = lists.includes(key) ? all : (all.at(-1) ?? '');
  }
  return values;
}

export type Parsed<T> = { ok: true; value: T } | { ok: false; state: Extract<FormState, { status: 'invalid' }> };

export function parseForm<T>(schema: z.ZodType<T>, data: FormData, lists: readonly string[] = []): Parsed<T> {
  const values = formValues(data, lists);
  const result = schema.safeParse(values);
  if (result.success) return { ok: true, value: result.data };
  const fields: Record<string, string[]> = {};
  for (const issue of result.error.issues) {
    const key = issue.path.join('.') || 'form';
    fields[key] = [...(fields[key] ?? []), issue.message];
  }
  return { ok: false, state: { status: 'invalid', fields, values: echo(values) } };
}

/** What a page's address carries back after a refusal: the reason, and the typed text so that nothing has to be typed twice. */
export function refusedQuery(reason: string, data: FormData, lists: readonly string[] = []): string {
  const typed = Object.entries(echo(formValues(data, lists))).filter(([k]) => k !== 'id');
  return new URLSearchParams([...typed, ['refused', reason]]).toString();
}

/** The typed text, for showing it again. */
export const echo = (values: Record<string, string | string[]>): Record<string, string> =>
  Object.fromEntries(Object.entries(values).map(([k, v]) => [k, Array.isArray(v) ? v.join('\n') : v]));
