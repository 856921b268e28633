import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { BatchRecordSheet } from '#components/batch-record-sheet.tsx';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { longDate } from '#lib/units/plain-date.ts';
import { readBatchRecord } from '#lib/usecases/read-batch-record.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Batch record' };

export default async function BatchRecordPage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const [context, { code }] = await Promise.all([placeContext(), searchParams]);
  const view = code ? await readBatchRecord(context, code) : null;
  if (!view) notFound();
  return (
    <main id="content">
      <PrintBar back={`/batches/${encodeURIComponent(view.code)}`} backText="Back to the batch" />
      <PaperPage>
        <BatchRecordSheet view={view} place={context.place.name} printed={longDate(context.today)} />
      </PaperPage>
    </main>
  );
}
