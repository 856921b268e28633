import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { batchAnswer } from '#components/batch-answer.ts';
import { BatchCardView } from '#components/batch-card.tsx';
import { ButtonRow } from '#components/button-row.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { Problem } from '#components/problem.tsx';
import { readBatch } from '#lib/usecases/read-batches.ts';
import { placeContext } from '../../../place-context.ts';
import { again, deviate, fill, out, process, read, readPh, seal, set, syrup } from '../actions.ts';

export const metadata: Metadata = { title: 'Batch' };

export default async function BatchPage({
  params,
  searchParams,
}: {
  params: Promise<{ code: string }>;
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const [{ code }, { said, refused }] = await Promise.all([params, searchParams]);
  const view = await readBatch(context, decodeURIComponent(code));
  if (!view) notFound();
  return (
    <>
      <AnswerHeading {...batchAnswer(view)} />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <BatchCardView
        view={view}
        actions={{ read, fill, process, seal, readPh, set, out, deviate, syrup, again }}
        ids={Array.from({ length: 8 }, () => randomUUID())}
        renderedAt={Date.now()}
      />
      <ButtonRow>
        {view.sheet && (view.state === 'cooking' || view.state === 'filled') ? (
          <LinkButton kind="quiet" href={`/batches/${encodeURIComponent(view.code)}/stove`}>
            At the stove, in large
          </LinkButton>
        ) : null}
        <LinkButton kind="quiet" href={`/print/batch?code=${encodeURIComponent(view.code)}`}>
          Batch record on paper
        </LinkButton>
        <LinkButton kind="quiet" href={`/trace/${view.jars[0]?.code ?? `${view.code}/pan`}#entries`}>
          Put an entry right
        </LinkButton>
        {view.jars[0] ? (
          <LinkButton kind="quiet" href={`/labels?lot=${encodeURIComponent(view.jars[0].code)}`}>
            Labels
          </LinkButton>
        ) : null}
      </ButtonRow>
    </>
  );
}
