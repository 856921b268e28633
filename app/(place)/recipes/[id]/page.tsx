import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { RecipePage } from '#components/recipe-page.tsx';
import { readRecipePage } from '#lib/usecases/recipe-page.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'A recipe' };

export default async function OneRecipePage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const view = readRecipePage(await placeContext(), id);
  if (!view) notFound();
  return (
    <>
      <AnswerHeading answer={`${view.title}: ${view.goes}`} sub={view.note ?? undefined} />
      <RecipePage {...view} />
    </>
  );
}
