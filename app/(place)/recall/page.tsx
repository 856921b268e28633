import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { RecallStart, RecallView } from '#components/recall-view.tsx';
import { counted } from '#lib/units/format.ts';
import { drillsOf, readRecall } from '#lib/usecases/read-recall.ts';
import { placeContext } from '../../place-context.ts';
import { drill, hold } from './actions.ts';

export const metadata: Metadata = { title: 'Recall' };

export default async function RecallPage({
  searchParams,
}: {
  searchParams: Promise<{ code?: string; said?: string; refused?: string }>;
}) {
  const [context, { code, said, refused }] = await Promise.all([placeContext(), searchParams]);
  const view = code ? await readRecall(context, code) : null;
  if (!view)
    return (
      <>
        <AnswerHeading
          answer={code ? `Nothing bears the code ${code}` : 'Something is wrong with a lot'}
          sub="From the lot to every jar it went into, and where each one is."
        />
        <RecallStart typed={code ?? ''} drills={await drillsOf(context)} />
      </>
    );
  return (
    <>
      <AnswerHeading
        answer={`${view.code} is in ${counted(view.total, 'jar')} of ${counted(view.batches.length, 'batch', 'batches')}: ${view.placedPercent} % placed`}
        sub={`${view.label}. Placed means: known on which shelf, with whom, or on which market day it went.`}
      />
      {refused ? <Problem title="Not held">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <RecallView view={view} hold={hold} drill={drill} ids={[randomUUID(), randomUUID()]} />
    </>
  );
}
