'use server';
import { bringBackForm, takeForm } from '#lib/forms/take.ts';
import { jarsBack } from '#lib/usecases/jars-back.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { runAct, saying } from '../../run-act.ts';

/** "Take one" on the shelf screen: one tap. */
export const take = async (data: FormData): Promise<void> => takeFrom(data, '/pantry');
export const takeFromLine = async (data: FormData): Promise<void> =>
  takeFrom(data, `/pantry/${encodeURIComponent(String(data.get('slug') ?? ''))}`);
export const bringBack = async (data: FormData): Promise<void> =>
  runAct(data, { form: bringBackForm, run: jarsBack, back: '/pantry' });

const takeFrom = (data: FormData, back: string): Promise<never> =>
  runAct(data, {
    form: takeForm,
    run: (ctx, value) => takeJars(ctx, { ...value, person: null, at: null }),
    back,
    next: (done) => saying(done.left === 0 ? '/pantry' : back, done),
  });
