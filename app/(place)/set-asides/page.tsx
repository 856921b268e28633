import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SetAsideList } from '#components/set-aside-list.tsx';
import { mass } from '#lib/units/format.ts';
import { readSetAsides } from '#lib/usecases/read-set-asides.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Set-asides' };

export default async function SetAsidesPage({ searchParams }: { searchParams: Promise<{ said?: string }> }) {
  const { said } = await searchParams;
  const context = await placeContext();
  const view = await readSetAsides(context);
  const answer =
    view.powderG > 0
      ? `${mass(view.powderG)} of home powder is ready`
      : view.lots.length > 0
        ? 'No home powder is ready'
        : 'Nothing is set aside';
  return (
    <>
      <AnswerHeading
        answer={answer}
        sub="Cores, peels and rinds kept from the pan, oldest first. What a powder can carry is known only once a batch has proved it."
      />
      {said ? <p role="status">{said}</p> : null}
      <SetAsideList lots={view.lots} />
    </>
  );
}
