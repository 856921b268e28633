import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { BatchList } from '#components/batch-list.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { counted } from '#lib/units/format.ts';
import { readBatches } from '#lib/usecases/read-batches.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Batches' };

export default async function BatchesPage() {
  const view = await readBatches(await placeContext());
  const answer =
    view.going.length > 0 ? `${counted(view.going.length, 'batch', 'batches')} on the go` : 'No batch is on the go';
  return (
    <>
      <AnswerHeading answer={answer} sub="From the stove to the canner to the morning’s seal check." />
      <BatchList going={view.going} done={view.done} />
      <p>
        <LinkButton kind="quiet" href="/batches/late">
          A batch that was not logged
        </LinkButton>
      </p>
    </>
  );
}
