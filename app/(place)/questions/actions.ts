'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { answerForm } from '#lib/forms/answer.ts';
import { parseForm } from '#lib/forms/parse-form.ts';
import { answerQuestion } from '#lib/usecases/questions.ts';
import { placeContext } from '../../place-context.ts';

export async function answer(data: FormData): Promise<void> {
  const context = await placeContext();
  const parsed = parseForm(answerForm, data);
  const done = parsed.ok
    ? await answerQuestion(context, parsed.value)
    : { refused: Object.values(parsed.state.fields).flat().join('; ') };
  revalidatePath('/', 'layout');
  const told = 'refused' in done ? { refused: done.refused } : { said: done.done.said };
  redirect(`/questions?${new URLSearchParams(told)}`);
}
