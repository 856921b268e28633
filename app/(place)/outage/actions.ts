'use server';
import { outageForm, rescueForm } from '#lib/forms/outage.ts';
import { rescue as rescueIt, startOutage } from '#lib/usecases/outage-acts.ts';
import { runAct } from '../../run-act.ts';

export const start = async (data: FormData): Promise<void> =>
  runAct(data, { form: outageForm, run: startOutage, back: '/outage', next: ({ outage }) => `/outage/${outage}` });

/** What became of some of it. */
export const rescue = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: rescueForm,
    run: rescueIt,
    back: `/outage/${encodeURIComponent(String(data.get('outage') ?? ''))}`,
  });
