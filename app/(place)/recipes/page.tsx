import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { RecipeList } from '#components/recipe-list.tsx';
import { counted } from '#lib/units/format.ts';
import { readRecipeList } from '#lib/usecases/recipe-list.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Recipes' };

export default async function RecipesPage() {
  const groups = readRecipeList(await placeContext());
  const count = groups.reduce((n, g) => n + g.recipes.length, 0);
  return (
    <>
      <AnswerHeading
        answer={`${counted(count, 'recipe')} in the book`}
        sub="Each with where it would go from the main kitchen; a recipe of several fruits is judged by the first it names."
      />
      <RecipeList groups={groups} />
    </>
  );
}
