'use server';
import { lateBatchForm, stateLateForm } from '#lib/forms/late-batch.ts';
import { logFromMemory, stateLate } from '#lib/usecases/late-batch.ts';
import { runAct, saying } from '../../../run-act.ts';

export const logLate = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: lateBatchForm,
    run: logFromMemory,
    back: '/batches/late',
    next: (done) => saying(`/trace/${done.code}`, done),
  });

export const stateLateBatch = async (data: FormData): Promise<void> =>
  runAct(data, { form: stateLateForm, run: stateLate, back: `/trace/${String(data.get('lot') ?? '')}` });
