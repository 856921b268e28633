import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { CallSheet } from '#components/call-sheet.tsx';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { counted } from '#lib/units/format.ts';
import { longDate } from '#lib/units/plain-date.ts';
import { readSuspect } from '#lib/usecases/read-suspect.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Call list' };

export default async function CallListPage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const [context, { code }] = await Promise.all([placeContext(), searchParams]);
  const view = code ? await readSuspect(context, code) : null;
  if (!view) notFound();
  const out = view.calls.reduce((n, c) => n + c.jars.length, 0);
  return (
    <main id="content">
      <PrintBar back={`/suspect/${view.lot}`} backText="Back to the batch" />
      <PaperPage>
        <AnswerHeading
          answer={`Call list, ${view.lot}: ${counted(out, 'jar')} with other people`}
          sub={`${view.line}, made ${view.madeOn}. ${context.place.name}, ${longDate(context.today)}.`}
        />
        <CallSheet view={view} />
      </PaperPage>
    </main>
  );
}
