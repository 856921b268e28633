import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { fruitColour } from '#components/fruit-colour.ts';
import { OwnRecipeWays } from '#components/own-recipe-ways.tsx';
import { RecipePage } from '#components/recipe-page.tsx';
import { ThinkAhead } from '#components/think-ahead.tsx';
import { readAhead } from '#lib/usecases/read-ahead.ts';
import { readRecipePage } from '#lib/usecases/recipe-page.ts';
import { recipeHere } from '#lib/usecases/recipes-here.ts';
import { placeContext } from '../../../place-context.ts';
import { drop } from '../own/actions.ts';

export const metadata: Metadata = { title: 'A recipe' };

export default async function OneRecipePage({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [{ id }, typed] = await Promise.all([params, searchParams]);
  const context = await placeContext();
  const view = readRecipePage(context, id);
  const recipe = recipeHere(context.place, id);
  if (!view || !recipe) notFound();
  const ahead = await readAhead(context, recipe, typed);
  return (
    <>
      <AnswerHeading answer={`${view.title}: ${view.goes}`} sub={view.note ?? undefined} />
      {typed.said ? <p role="status">{typed.said}</p> : null}
      <OwnRecipeWays {...view.own} recipeId={id} drop={drop} id={randomUUID()} />
      <RecipePage {...view} />
      {ahead ? <ThinkAhead {...ahead} typed={typed} colour={fruitColour(recipe.fruits[0]?.foodIds[0] ?? '')} /> : null}
    </>
  );
}
