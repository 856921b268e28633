import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { NeighbourSheet } from '#components/neighbour-sheet.tsx';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { longDate } from '#lib/units/plain-date.ts';
import { readOutage } from '#lib/usecases/read-outage.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'For the neighbour' };

export default async function NeighbourPage({ searchParams }: { searchParams: Promise<{ id?: string }> }) {
  const [context, { id }] = await Promise.all([placeContext(), searchParams]);
  const view = id ? await readOutage(context, id) : null;
  if (!view) notFound();
  return (
    <main id="content">
      <PrintBar back={`/outage/${encodeURIComponent(view.id)}`} backText={`Back to the ${view.room.toLowerCase()}`} />
      <PaperPage>
        <AnswerHeading
          answer="Have you room in your freezer?"
          sub={`${context.place.name}, ${longDate(context.today)}. Our ${view.room.toLowerCase()} has stopped${view.until ? `; what is in it keeps until about ${view.until}` : ''}.`}
        />
        <NeighbourSheet view={view} />
      </PaperPage>
    </main>
  );
}
