'use server';
import { fruitReceivedForm } from '#lib/forms/fruit-received.ts';
import { receiveFruit } from '#lib/usecases/receive-fruit.ts';
import { runAct } from '../../../run-act.ts';

export const bringIn = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: fruitReceivedForm,
    run: receiveFruit,
    back: '/harvest/elsewhere',
    next: ({ said, lotId, code }) => `/harvest/elsewhere?${new URLSearchParams({ said, lotId, code })}`,
  });
