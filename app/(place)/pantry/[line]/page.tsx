import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LinePieces } from '#components/line-pieces.tsx';
import { Problem } from '#components/problem.tsx';
import { counted } from '#lib/units/format.ts';
import { readLine } from '#lib/usecases/read-pantry.ts';
import { placeContext } from '../../../place-context.ts';
import { takeFromLine } from '../actions.ts';

export const metadata: Metadata = { title: 'A line of the pantry' };

export default async function LinePage({
  params,
  searchParams,
}: {
  params: Promise<{ line: string }>;
  searchParams: Promise<{ said?: string; refused?: string; count?: string; who?: string }>;
}) {
  const context = await placeContext();
  const { line } = await params;
  const [view, { said, refused, count, who }] = await Promise.all([readLine(context, line), searchParams]);
  if (!view) notFound();
  return (
    <>
      <AnswerHeading
        answer={`${view.line}: ${view.kinds.map((k) => counted(k.count, k.label)).join(', ')}`}
        sub="Numbered jars, the oldest first to go."
      />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <LinePieces
        slug={view.slug}
        pieces={view.pieces}
        action={takeFromLine}
        id={randomUUID()}
        typed={{ count: count ?? '1', who: who ?? '' }}
      />
    </>
  );
}
