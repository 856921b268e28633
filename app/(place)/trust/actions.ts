'use server';
import { forgetForm } from '#lib/forms/ph.ts';
import { forgetLearnt } from '#lib/usecases/learn-forget.ts';
import { runAct } from '../../run-act.ts';

export const forget = async (data: FormData): Promise<void> =>
  runAct(data, { form: forgetForm, run: forgetLearnt, back: '/trust' });
