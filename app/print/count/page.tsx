import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { CountSheet } from '#components/count-sheet.tsx';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { longDate } from '#lib/units/plain-date.ts';
import { countPlaces } from '#lib/usecases/stock-take.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Count sheet' };

export default async function CountSheetPage() {
  const context = await placeContext();
  const places = await countPlaces(context);
  return (
    <main id="content">
      <PrintBar back="/stock-take" backText="Back to the stock-take" />
      <PaperPage>
        <AnswerHeading
          answer={`Count sheet, ${longDate(context.today)}`}
          sub="Write the number beside each line. Type them in later under Stock-take, shelf by shelf, in this order."
        />
        <CountSheet places={places} />
      </PaperPage>
    </main>
  );
}
