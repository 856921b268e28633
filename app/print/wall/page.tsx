import type { Metadata } from 'next';
import { PaperPage } from '#components/paper-page.tsx';
import { PrintBar } from '#components/print-bar.tsx';
import { WallSheet } from '#components/wall-sheet.tsx';
import { longDate, weekdayName } from '#lib/units/plain-date.ts';
import { readWall } from '#lib/usecases/read-wall.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Wall sheet' };

export default async function WallPage() {
  const context = await placeContext();
  const view = await readWall(context);
  return (
    <main id="content">
      <PrintBar back="/pantry" backText="Back to the pantry" />
      <PaperPage large>
        <WallSheet view={view} when={`${weekdayName(context.today)} ${longDate(context.today)}`} />
      </PaperPage>
    </main>
  );
}
