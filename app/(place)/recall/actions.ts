'use server';
import { drillForm, holdForm } from '#lib/forms/recall.ts';
import { holdCircle, recordDrill } from '#lib/usecases/hold-circle.ts';
import { runAct, saying } from '../../run-act.ts';

export const hold = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: holdForm,
    run: holdCircle,
    back: '/recall',
    next: (done, { code }) => saying(ofCode(code), done),
  });
export const drill = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: drillForm,
    run: recordDrill,
    back: '/recall',
    next: (done, { code }) => saying(ofCode(code), done),
  });

const ofCode = (code: string): string => `/recall?${new URLSearchParams({ code })}`;
