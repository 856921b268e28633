import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { suspectAnswer } from '#components/suspect-answer.ts';
import { SuspectView } from '#components/suspect-view.tsx';
import { readSuspect } from '#lib/usecases/read-suspect.ts';
import { placeContext } from '../../../place-context.ts';
import { report } from '../actions.ts';

export const metadata: Metadata = { title: 'A jar looks wrong' };

export default async function SuspectPage({
  params,
  searchParams,
}: {
  params: Promise<{ code: string[] }>;
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const [{ code }, { said, refused }] = await Promise.all([params, searchParams]);
  const view = await readSuspect(context, code.map(decodeURIComponent).join('/'));
  if (!view) notFound();
  return (
    <>
      <AnswerHeading {...suspectAnswer(view)} />
      {refused ? <Problem title="Not written down">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <SuspectView view={view} report={report} ids={view.signs.map(() => randomUUID())} />
    </>
  );
}
