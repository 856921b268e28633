'use server';
import { sightForm } from '#lib/forms/sight.ts';
import { recordSight } from '#lib/usecases/record-sight.ts';
import { runAct } from '../../run-act.ts';

/** What somebody sees hanging, from under a crop's curve. */
export const see = async (data: FormData): Promise<void> =>
  runAct(data, { form: sightForm, run: recordSight, back: '/season' });
