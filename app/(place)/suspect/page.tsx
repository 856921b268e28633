import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SuspectStart } from '#components/suspect-view.tsx';
import { readReports, readSuspect } from '#lib/usecases/read-suspect.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'A jar looks wrong' };

export default async function SuspectStartPage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const [context, { code }] = await Promise.all([placeContext(), searchParams]);
  const view = code ? await readSuspect(context, code) : null;
  if (view) redirect(`/suspect/${view.jar ?? view.lot}`);
  return (
    <>
      <AnswerHeading
        answer={code ? `No jar bears the code ${code}` : 'A jar looks wrong'}
        sub="Look, smell, never taste. Its label says which jar it is."
      />
      <SuspectStart typed={code ?? ''} reports={await readReports(context)} />
    </>
  );
}
