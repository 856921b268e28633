'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { parseForm } from '#lib/forms/parse-form.ts';
import { suspectForm } from '#lib/forms/suspect.ts';
import { reportJar } from '#lib/usecases/report-jar.ts';
import { placeContext } from '../../place-context.ts';

/** The sign that was seen, on one jar: back to that jar's page, with its sisters. */
export async function report(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(suspectForm, data);
  const done = parsed.ok
    ? await reportJar(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  const told = 'refused' in done ? { refused: done.refused } : { said: done.done.said };
  redirect(`/suspect/${String(data.get('code') ?? '')}?${new URLSearchParams(told)}`);
}
