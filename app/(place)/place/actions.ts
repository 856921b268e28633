'use server';
import { boughtForm, cropForm, waterForm } from '#lib/forms/place.ts';
import { plantCrop, readWater, receive } from '#lib/usecases/change-place.ts';
import { runAct } from '../../run-act.ts';

const back = '/place';

export const bringIn = async (data: FormData): Promise<void> => runAct(data, { form: boughtForm, run: receive, back });
export const noteWater = async (data: FormData): Promise<void> =>
  runAct(data, { form: waterForm, run: readWater, back });
export const addCrop = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: cropForm,
    back,
    run: async (ctx, c) => {
      await plantCrop(ctx, c);
      return { done: { said: `${c.label} stands in row ${c.row}.` } };
    },
  });
