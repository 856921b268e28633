'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import {
  BATCH_LISTS,
  batchAskForm,
  deviationForm,
  fillForm,
  OUT_LISTS,
  processForm,
  readingForm,
  remakeForm,
  sealForm,
  setForm,
  setTestForm,
  startForm,
  stoveMarkForm,
  takeOutForm,
} from '#lib/forms/batch.ts';
import { parseForm } from '#lib/forms/parse-form.ts';
import { phForm } from '#lib/forms/ph.ts';
import { batchAskOf } from '#lib/usecases/batch-ask-of-form.ts';
import { fillBatch, logReading, processLoad, type Told } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { logPh } from '#lib/usecases/ph-log.ts';
import { reportDeviation } from '#lib/usecases/report-deviation.ts';
import { reportSet } from '#lib/usecases/report-set.ts';
import { checkSeals } from '#lib/usecases/seal-check.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { logSetTest, startBoil, stopBoil } from '#lib/usecases/stove.ts';
import { takeOut } from '#lib/usecases/take-out.ts';
import { callSyrup, remake } from '#lib/usecases/unset.ts';
import { placeContext } from '../../place-context.ts';
import { runAct } from '../../run-act.ts';

export async function start(data: FormData): Promise<void> {
  const context = await placeContext();
  const back = new URLSearchParams(
    [...data.entries()].filter(([k]) => !k.startsWith('$') && k !== 'id').map(([k, v]) => [k, String(v)]),
  );
  const id = parseForm(startForm, data);
  const ask = parseForm(batchAskForm, data, BATCH_LISTS);
  const wrong = [id, ask].flatMap((p) => (p.ok ? [] : Object.values(p.state.fields).flat()));
  if (!id.ok || !ask.ok) return redirect(`/batches/new?${back}&${new URLSearchParams({ refused: wrong.join('; ') })}`);
  const done = await startBatches(context, id.value.id, batchAskOf(ask.value));
  revalidatePath('/', 'layout');
  if ('refused' in done) return redirect(`/batches/new?${back}&${new URLSearchParams({ refused: done.refused })}`);
  redirect(`/batches/${done.done.codes[0]}?${new URLSearchParams({ said: done.done.said })}`);
}

export const read = async (data: FormData): Promise<void> => act(readingForm, data, logReading);
export const boils = async (data: FormData): Promise<void> => act(stoveMarkForm, data, startBoil);
export const stop = async (data: FormData): Promise<void> => act(stoveMarkForm, data, stopBoil);
export const setTest = async (data: FormData): Promise<void> => act(setTestForm, data, logSetTest);
export const fill = async (data: FormData): Promise<void> => act(fillForm, data, fillBatch);
export const process = async (data: FormData): Promise<void> => act(processForm, data, processLoad, ['codes']);
export const seal = async (data: FormData): Promise<void> => act(sealForm, data, checkSeals);
export const set = async (data: FormData): Promise<void> => act(setForm, data, reportSet);
export const deviate = async (data: FormData): Promise<void> => act(deviationForm, data, reportDeviation);
export const syrup = async (data: FormData): Promise<void> => act(stoveMarkForm, data, callSyrup);
export const again = async (data: FormData): Promise<void> => act(remakeForm, data, remake, OUT_LISTS);
export const out = async (data: FormData): Promise<void> => act(takeOutForm, data, takeOut, OUT_LISTS);

/** A void reading is written down and shown as not taken: what to do stands in it. */
export const readPh = async (data: FormData): Promise<void> =>
  act(phForm, data, async (ctx, input) => {
    const answer = await logPh(ctx, input);
    return 'done' in answer && answer.done.void ? { refused: answer.done.void } : answer;
  });

type Done = { done: Told } | { refused: string };

function act<T>(
  form: z.ZodType<T>,
  data: FormData,
  run: (ctx: Context, value: T) => Promise<Done>,
  lists: readonly string[] = [],
): Promise<never> {
  const code = String(data.get('back') ?? data.get('code') ?? '');
  const stove = data.get('page') === 'stove' ? '/stove' : '';
  return runAct(data, { form, lists, run, back: `/batches/${encodeURIComponent(code)}${stove}` });
}
