import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { PutRight } from '#components/put-right-view.tsx';
import { gradesForm } from '#lib/forms/put-right.ts';
import { readPutRight } from '#lib/usecases/read-put-right.ts';
import { placeContext } from '../../../place-context.ts';
import { takeBackEntry, weighEntryAgain } from '../actions.ts';

export const metadata: Metadata = { title: 'Put it right' };

type Typed = Partial<Record<'perfect' | 'blemished' | 'soft' | 'cull' | 'refused', string>>;

export default async function PutRightPage({
  params,
  searchParams,
}: {
  params: Promise<{ act: string }>;
  searchParams: Promise<Typed>;
}) {
  const context = await placeContext();
  const [{ act }, { refused, ...typed }] = await Promise.all([params, searchParams]);
  const asked = Object.keys(typed).length > 0 ? gradesForm.safeParse(typed) : null;
  const view = await readPutRight(context, decodeURIComponent(act), asked?.success ? asked.data : null);
  if (!view) notFound();
  const wrong = asked && !asked.success ? asked.error.issues.map((i) => i.message).join('; ') : null;
  const kg = (grade: 'perfect' | 'blemished' | 'soft' | 'cull') =>
    typed[grade] ?? ((view.grades?.[grade] ?? 0) / 1000).toFixed(3);
  return (
    <>
      <AnswerHeading answer={view.what} sub={`Entered for ${view.when}.`} />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {wrong ? <Problem title="Not this way">{wrong}</Problem> : null}
      <PutRight
        view={view}
        typed={{ perfect: kg('perfect'), blemished: kg('blemished'), soft: kg('soft'), cull: kg('cull') }}
        takeBack={takeBackEntry}
        weighAgain={weighEntryAgain}
        ids={[randomUUID(), randomUUID()]}
      />
    </>
  );
}
