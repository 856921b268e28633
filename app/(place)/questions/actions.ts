'use server';
import { answerForm } from '#lib/forms/answer.ts';
import { answerQuestion } from '#lib/usecases/questions.ts';
import { runAct } from '../../run-act.ts';

export const answer = async (data: FormData): Promise<void> =>
  runAct(data, { form: answerForm, run: answerQuestion, back: '/questions' });
