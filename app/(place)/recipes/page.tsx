import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { Problem } from '#components/problem.tsx';
import { RecipeList } from '#components/recipe-list.tsx';
import { counted } from '#lib/units/format.ts';
import { readRecipeList } from '#lib/usecases/recipe-list.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Recipes' };

export default async function RecipesPage({
  searchParams,
}: {
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const { said, refused } = await searchParams;
  const groups = readRecipeList(await placeContext());
  const count = groups.reduce((n, g) => n + g.recipes.length, 0);
  return (
    <>
      <AnswerHeading
        answer={`${counted(count, 'recipe')} in the book`}
        sub="Each with where it would go from the main kitchen; a mixture is judged by its strictest fruit."
      />
      {refused ? <Problem title="Not done">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <p>
        <LinkButton href="/recipes/own">Write a recipe of my own</LinkButton>
      </p>
      <RecipeList groups={groups} />
    </>
  );
}
