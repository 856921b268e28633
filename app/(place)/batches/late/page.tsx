import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LateBatchForm } from '#components/late-batch-form.tsx';
import { Problem } from '#components/problem.tsx';
import { addDays } from '#lib/units/plain-date.ts';
import { recipesHere } from '#lib/usecases/recipes-here.ts';
import { placeContext } from '../../../place-context.ts';
import { logLate } from './actions.ts';

export const metadata: Metadata = { title: 'A batch from memory' };

type Typed = Partial<Record<'recipeId' | 'day' | 'jar' | 'about' | 'refused', string>>;

export default async function LateBatchPage({ searchParams }: { searchParams: Promise<Typed> }) {
  const { place, today } = await placeContext();
  const { refused, ...typed } = await searchParams;
  const recipes = recipesHere(place).map((r) => ({ value: r.id, label: r.title }));
  const jars = place.jarKinds.filter((k) => k.canning).map((k) => ({ value: k.code, label: k.label }));
  return (
    <>
      <AnswerHeading
        answer="A batch that was not logged"
        sub="What is remembered counts, and is marked as remembered."
      />
      {refused ? <Problem title="Not logged">{refused}</Problem> : null}
      <LateBatchForm
        action={logLate}
        id={randomUUID()}
        recipes={recipes}
        jars={jars}
        typed={{ ...typed, day: typed.day ?? addDays(today, -7) }}
      />
    </>
  );
}
