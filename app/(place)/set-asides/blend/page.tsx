import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { BlendTea } from '#components/blend-tea.tsx';
import { counted } from '#lib/units/format.ts';
import { readBlend } from '#lib/usecases/read-set-asides.ts';
import { placeContext } from '../../../place-context.ts';
import { blend } from '../actions.ts';

export const metadata: Metadata = { title: 'Blend a tea' };

export default async function BlendPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const typed = await searchParams;
  const { lots } = await readBlend(await placeContext());
  return (
    <>
      <AnswerHeading
        answer={lots.length > 0 ? `${counted(lots.length, 'dry lot')} to blend from` : 'Nothing is dry yet'}
        sub="Parts by weight. The packs take the worst grade and the earliest date of what goes in."
      />
      <BlendTea lots={lots} typed={typed} blend={blend} id={randomUUID()} refused={typed.refused ?? null} />
    </>
  );
}
