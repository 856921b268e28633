import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { OwnRecipeForm } from '#components/own-recipe-form.tsx';
import { readOwnRecipe } from '#lib/usecases/read-own-recipe.ts';
import { placeContext } from '../../../place-context.ts';
import { keep } from './actions.ts';

export const metadata: Metadata = { title: 'My own recipe' };

export default async function OwnRecipePage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const typed = await searchParams;
  const view = await readOwnRecipe(await placeContext(), typed);
  if (!view) notFound();
  return (
    <>
      <AnswerHeading
        answer={view.answer}
        sub="Figures by the kilogram. The program writes the steps, and says what may go on the shelf."
      />
      <OwnRecipeForm {...view.props} keep={keep} id={randomUUID()} refused={typed.refused ?? view.props.refused} />
    </>
  );
}
