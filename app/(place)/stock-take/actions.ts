'use server';
import { COUNT_LISTS, countForm, SETTLE_LISTS, settleForm } from '#lib/forms/stock-take.ts';
import { recordCount, settle } from '#lib/usecases/stock-take.ts';
import { runAct } from '../../run-act.ts';

export const countShelf = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: countForm,
    lists: COUNT_LISTS,
    run: recordCount,
    back: pageOf('shelf', data.get('place')),
    next: ({ countId }) => pageOf('count', countId),
  });

export const settleShelf = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: settleForm,
    lists: SETTLE_LISTS,
    run: settle,
    back: pageOf('count', data.get('countId')),
  });

const pageOf = (name: string, value: FormDataEntryValue | null): string =>
  `/stock-take?${new URLSearchParams({ [name]: String(value ?? '') })}`;
