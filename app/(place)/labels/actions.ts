'use server';
import { ingredientForm, ruleCardForm } from '#lib/forms/labels.ts';
import { keepRuleCard, noteIngredient } from '#lib/usecases/note-jars.ts';
import { runAct, saying } from '../../run-act.ts';

export const note = async (data: FormData): Promise<void> =>
  runAct(data, {
    form: ingredientForm,
    run: noteIngredient,
    back: '/labels',
    next: (done, { lot }) => saying(`/labels?${new URLSearchParams({ lot })}`, done),
  });

export const keepCard = async (data: FormData): Promise<void> =>
  runAct(data, { form: ruleCardForm, run: keepRuleCard, back: '/labels' });
