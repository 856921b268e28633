import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { EmptyState } from '#components/empty-state.tsx';
import { Sankey } from '#components/sankey.tsx';
import { Tray } from '#components/tray.tsx';
import { readYearFlow } from '#lib/usecases/read-year-flow.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'The year’s fruit' };

export default async function FlowPage() {
  const view = await readYearFlow(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      <Tray title="From tree to jar">
        {view.links.length === 0 ? (
          <EmptyState title="Nothing has moved yet." first="Weigh the first picking in under Harvest." />
        ) : (
          <Sankey
            title="Mass from tree to jar, in a year"
            nodes={view.nodes.map((n) => ({ ...n, colour: 'var(--rim)' }))}
            links={view.links}
          />
        )}
      </Tray>
    </>
  );
}
