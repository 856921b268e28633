import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { fruitColour } from '#components/fruit-colour.ts';
import { SeasonRun } from '#components/season-run.tsx';
import { ShelfAhead } from '#components/shelf-ahead.tsx';
import { Tray } from '#components/tray.tsx';
import { readShelfAhead } from '#lib/usecases/read-shelf-ahead.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'The shelves ahead' };

export default async function ShelfAheadPage() {
  const view = await readShelfAhead(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {view.whole ? null : <SeasonRun action="/api/season" early={view.state === 'ready'} />}
      {view.state === 'ready' ? (
        <Tray title="The shelves, week by week">
          <ShelfAhead
            weeks={view.weeks}
            boards={view.boards}
            lines={view.lines.map((l) => ({ ...l, foodColour: fruitColour(l.foodId) }))}
          />
        </Tray>
      ) : null}
    </>
  );
}
