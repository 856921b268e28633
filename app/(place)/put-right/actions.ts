'use server';
import { takeBackForm, weighAgainForm } from '#lib/forms/put-right.ts';
import type { Context } from '#lib/usecases/context.ts';
import { takeBack, weighAgain } from '#lib/usecases/put-right.ts';
import { readPutRight } from '#lib/usecases/read-put-right.ts';
import { runAct, saying } from '../../run-act.ts';

export const takeBackEntry = async (data: FormData): Promise<void> =>
  runAct(data, { form: takeBackForm, run: takeBack, back: entryOf(data), next: toItsLot });
export const weighEntryAgain = async (data: FormData): Promise<void> =>
  runAct(data, { form: weighAgainForm, run: weighAgain, back: entryOf(data), next: toItsLot });

const entryOf = (data: FormData): string => `/put-right/${encodeURIComponent(String(data.get('act') ?? ''))}`;

async function toItsLot(done: { said: string }, { act }: { act: string }, ctx: Context): Promise<string> {
  const lot = (await readPutRight(ctx, act, null))?.lot;
  return saying(lot ? `/trace/${lot}` : '/', done);
}
