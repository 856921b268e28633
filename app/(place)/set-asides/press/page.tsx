import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { PressDay } from '#components/press-day.tsx';
import { readPress } from '#lib/usecases/press-view.ts';
import { placeContext } from '../../../place-context.ts';
import { press } from '../actions.ts';

export const metadata: Metadata = { title: 'Pressing' };

export default async function PressPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const typed = await searchParams;
  const view = await readPress(await placeContext(), typed);
  return (
    <>
      <AnswerHeading
        answer={view.expected ? `${view.expected.quarts.typ} quarts to expect` : 'What goes into the press?'}
        sub="Sound fruit only, washed. What was picked up from the ground goes to the hens or the compost."
      />
      <PressDay {...view} typed={typed} press={press} id={randomUUID()} refused={typed.refused ?? null} />
    </>
  );
}
