import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LabelFit } from '#components/label-fit.tsx';
import { LabelSheet } from '#components/label-sheet.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { Problem } from '#components/problem.tsx';
import { labelQuery } from '#lib/forms/labels.ts';
import { moved, sheetFor } from '#lib/labels/sheets.ts';
import { counted } from '#lib/units/format.ts';
import { readLabel } from '#lib/usecases/read-label.ts';
import { jarAddress, ownAddress } from '../../own-address.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Label sheet' };

export default async function LabelSheetPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [context, query] = await Promise.all([placeContext(), searchParams]);
  const asked = labelQuery.parse(query);
  const [view, house] = await Promise.all([readLabel(context, asked.lot, asked.purpose), ownAddress()]);
  if (!view) notFound();
  const jars = view.pieces.slice(0, asked.count || view.pieces.length);
  const back = `/labels?lot=${encodeURIComponent(view.lot)}&purpose=${asked.purpose}&paper=${asked.paper}`;
  return (
    <main id="content">
      <PrintBar back={back} backText="Back to the label">
        <AnswerHeading
          answer={view.label ? `${counted(jars.length, 'label')} for ${view.lot}` : `No label for ${view.lot}`}
          sub="Print at 100 %, without the browser’s own margins; lay it over one label sheet against the light first."
        />
        {view.label ? null : <Problem title="Not printed">{[...view.against, ...view.blanks].join('; ')}</Problem>}
      </PrintBar>
      {view.label ? (
        <LabelFit>
          <LabelSheet
            sheet={moved(sheetFor(asked.purpose, asked.paper), asked.right, asked.down)}
            label={view.label}
            jars={jars}
            used={asked.used}
            addressOf={(jar) => jarAddress(house, jar)}
          />
        </LabelFit>
      ) : null}
    </main>
  );
}
