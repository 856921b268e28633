import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { JarByJar } from '#components/recall-view.tsx';
import { counted } from '#lib/units/format.ts';
import { longDate } from '#lib/units/plain-date.ts';
import { readRecall } from '#lib/usecases/read-recall.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Recall list' };

export default async function RecallListPage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const [context, { code }] = await Promise.all([placeContext(), searchParams]);
  const view = code ? await readRecall(context, code) : null;
  if (!view) notFound();
  const people = view.places.filter((p) => /^(given|sold)/.test(p.where));
  return (
    <main id="content">
      <PrintBar back={`/recall?code=${encodeURIComponent(view.code)}`} backText="Back to the recall" />
      <PaperPage>
        <AnswerHeading
          answer={`Recall of ${view.code}: ${counted(view.total, 'jar')}`}
          sub={`${view.label}. ${context.place.name}, ${longDate(context.today)}. ${view.placedPercent} % placed.`}
        />
        <h2>To be told</h2>
        <ul className="boxes">
          {people.map((p) => (
            <li key={p.where}>
              {counted(p.count, 'jar')}: {p.where}
            </li>
          ))}
        </ul>
        <h2>Jar by jar</h2>
        <JarByJar view={view} />
      </PaperPage>
    </main>
  );
}
