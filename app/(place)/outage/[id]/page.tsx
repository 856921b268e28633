import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { outageAnswer } from '#components/outage-answer.ts';
import { OutageView } from '#components/outage-view.tsx';
import { Problem } from '#components/problem.tsx';
import { givenTo } from '#lib/usecases/given-to.ts';
import { readOutage } from '#lib/usecases/read-outage.ts';
import { placeContext } from '../../../place-context.ts';
import { rescue } from '../actions.ts';

export const metadata: Metadata = { title: 'A freezer has stopped' };

export default async function OutagePage({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const context = await placeContext();
  const [{ id }, typed] = await Promise.all([params, searchParams]);
  const view = await readOutage(context, decodeURIComponent(id));
  if (!view) notFound();
  return (
    <>
      <AnswerHeading {...outageAnswer(view)} />
      {typed.refused ? <Problem title="Not written down">{typed.refused}</Problem> : null}
      {typed.said ? <p role="status">{typed.said}</p> : null}
      <OutageView
        view={view}
        people={await givenTo(context)}
        typed={typed}
        rescue={rescue}
        ids={Array.from({ length: view.items.length + 2 }, () => randomUUID())}
        backIds={view.away.map(() => randomUUID())}
        renderedAt={Date.now()}
      />
    </>
  );
}
