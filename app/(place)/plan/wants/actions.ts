'use server';
import { wantForm } from '#lib/forms/want.ts';
import { stateWant } from '#lib/usecases/state-wants.ts';
import { runAct } from '../../../run-act.ts';

export const state = async (data: FormData): Promise<void> =>
  runAct(data, { form: wantForm, run: stateWant, back: '/plan/wants' });
