import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { MassFlow } from '#components/mass-flow.tsx';
import { TraceTrays } from '#components/trace-trays.tsx';
import { Tray } from '#components/tray.tsx';
import { readBatchFlow } from '#lib/usecases/read-mass-flow.ts';
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
  const flow = await readBatchFlow(context, trace.lot.batchId);
  return (
    <>
      <AnswerHeading answer={cards.answer} sub={cards.sub} />
      <TraceTrays view={cards} />
      {flow ? (
        <Tray title="Mass of the batch">
          <MassFlow title="Mass of the batch, in and out" flow={flow} />
        </Tray>
      ) : null}
    </>
  );
}
