'use server';
import { plainHarvest } from '#lib/forms/plain-harvest.ts';
import { recordPlain } from '#lib/usecases/record-plain-harvest.ts';
import { runAct } from '../../run-act.ts';

/** The shed screen without a script: one bucket, then back to the page with what was said. */
export const recordPlainHarvest = async (data: FormData): Promise<void> =>
  runAct(data, { form: plainHarvest, run: recordPlain, back: '/harvest' });
