import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { RowTrays } from '#components/row-trays.tsx';
import { readRow } from '#lib/usecases/read-row.ts';
import { placeContext } from '../../../../place-context.ts';

export const metadata: Metadata = { title: 'Row' };

export default async function RowPage({ params }: { params: Promise<{ code: string }> }) {
  const view = await readRow(await placeContext(), decodeURIComponent((await params).code));
  if (!view) notFound();
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      <RowTrays view={view} />
      <p>
        <a href="/place">Back to the place</a>
      </p>
    </>
  );
}
