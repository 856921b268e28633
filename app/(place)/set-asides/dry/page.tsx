import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { CutFruit } from '#components/cut-fruit.tsx';
import { readPress } from '#lib/usecases/press-view.ts';
import { placeContext } from '../../../place-context.ts';
import { cut } from '../actions.ts';

export const metadata: Metadata = { title: 'For the dryer' };

export default async function DryPage({ searchParams }: { searchParams: Promise<Record<string, string | undefined>> }) {
  const typed = await searchParams;
  const { apples } = await readPress(await placeContext(), {});
  return (
    <>
      <AnswerHeading
        answer="Rings for the dryer"
        sub="Weighed before and after they are cut: the dryer’s target follows from it."
      />
      <CutFruit fruit={apples} typed={typed} cut={cut} id={randomUUID()} refused={typed.refused ?? null} />
    </>
  );
}
