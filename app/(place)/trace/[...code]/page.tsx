import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { TraceTrays } from '#components/trace-trays.tsx';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { traceCards } from '#lib/usecases/trace-cards.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'Trace' };

export default async function TraceCodePage({ params }: { params: Promise<{ code: string[] }> }) {
  const context = await placeContext();
  const code = (await params).code.map(decodeURIComponent).join('/');
  const trace = await readTrace(context, code);
  if (!trace) notFound();
  const cards = traceCards(trace);
  return (
    <>
      <AnswerHeading answer={cards.answer} sub={cards.sub} />
      <TraceTrays view={cards} />
    </>
  );
}
