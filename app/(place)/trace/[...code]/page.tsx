import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { EntriesTray } from '#components/entries-tray.tsx';
import { LateBatchState } from '#components/late-batch-form.tsx';
import { MassFlow } from '#components/mass-flow.tsx';
import { Problem } from '#components/problem.tsx';
import { TraceForward } from '#components/trace-forward.tsx';
import { TraceTrays } from '#components/trace-trays.tsx';
import { Tray } from '#components/tray.tsx';
import { isFromMemory } from '#lib/usecases/late-batch.ts';
import { readBatchFlow } from '#lib/usecases/read-mass-flow.ts';
import { readEntries } from '#lib/usecases/read-put-right.ts';
import { readRecall } from '#lib/usecases/read-recall.ts';
import { readTrace } from '#lib/usecases/read-trace.ts';
import { traceCards } from '#lib/usecases/trace-cards.ts';
import { placeContext } from '../../../place-context.ts';
import { stateLateBatch } from '../../batches/late/actions.ts';

export const metadata: Metadata = { title: 'Trace' };

export default async function TraceCodePage({
  params,
  searchParams,
}: {
  params: Promise<{ code: string[] }>;
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const code = (await params).code.map(decodeURIComponent).join('/');
  const trace = await readTrace(context, code);
  if (!trace) notFound();
  const cards = traceCards(trace);
  const goesOn = trace.lot.unit !== 'jar' && trace.lot.unit !== 'pack';
  const [{ said, refused }, entries, flow, forward] = await Promise.all([
    searchParams,
    readEntries(context, trace.lot, trace.piece?.number ?? null),
    readBatchFlow(context, trace.lot.batchId),
    goesOn || trace.lot.kind === 'empties' ? readRecall(context, trace.lot.code) : null,
  ]);
  return (
    <>
      <AnswerHeading answer={cards.answer} sub={cards.sub} />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      {isFromMemory(trace.lot) ? (
        <LateBatchState action={stateLateBatch} id={randomUUID()} lot={trace.lot.code} onHand={trace.lot.onHand} />
      ) : null}
      <TraceTrays view={cards} />
      {forward ? <TraceForward view={forward} /> : null}
      <EntriesTray view={entries} />
      {flow ? (
        <Tray title="Mass of the batch">
          <MassFlow title="Mass of the batch, in and out" flow={flow} />
        </Tray>
      ) : null}
    </>
  );
}
