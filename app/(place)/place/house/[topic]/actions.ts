'use server';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { actId } from '#lib/forms/fields.ts';
import { fittingForm } from '#lib/forms/fittings.ts';
import { houseTopic } from '#lib/usecases/keep-habits.ts';
import { runAct, saying } from '../../../../run-act.ts';

export async function keep(data: FormData): Promise<void> {
  const name = String(data.get('topic') ?? '');
  const topic = houseTopic(name);
  if (!topic) redirect('/place');
  await runAct(data, {
    form: z.object({ id: actId }).and(fittingForm(topic.fields)),
    run: (ctx, { id, ...values }) => topic.keep(ctx, { id, values }),
    back: `/place/house/${name}`,
    next: (done) => saying('/place', done),
  });
}
