import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { WantsView } from '#components/wants-view.tsx';
import { readWants } from '#lib/usecases/state-wants.ts';
import { placeContext } from '../../../place-context.ts';
import { state } from './actions.ts';

export const metadata: Metadata = { title: 'Wanted in a year' };

export default async function WantsPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const typed = await searchParams;
  const view = await readWants(await placeContext());
  const said = view.lines.filter((l) => l.stated !== null).length;
  return (
    <>
      <AnswerHeading
        answer={
          said > 0
            ? `You said what you want of ${said} ${said === 1 ? 'line' : 'lines'}`
            : 'The plan goes by what leaves your shelf'
        }
        sub="The first jars of a line are worth most while they are wanted. What you say here counts before the record."
      />
      <WantsView view={view} state={state} id={randomUUID()} typed={typed} />
    </>
  );
}
