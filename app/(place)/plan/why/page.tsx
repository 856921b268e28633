import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { PlanWhy } from '#components/plan-why.tsx';
import { planAsked } from '#lib/usecases/plan-asked.ts';
import { readWhy } from '#lib/usecases/plan-why.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'Why not this recipe?' };

export default async function WhyPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const typed = await searchParams;
  const recipe = typeof typed.recipe === 'string' ? typed.recipe : '';
  const view = await readWhy(await placeContext(), planAsked(typed).asked, recipe);
  if (!view) notFound();
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      <PlanWhy view={view} />
    </>
  );
}
