import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { HarvestDesk } from '#components/harvest-desk.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { OpenQuestions } from '#components/open-questions.tsx';
import { PickedToday } from '#components/picked-today.tsx';
import { bothMasses } from '#lib/units/format.ts';
import { openQuestions } from '#lib/usecases/questions.ts';
import { readHarvest } from '#lib/usecases/read-harvest.ts';
import { placeContext } from '../../place-context.ts';
import { recordPlainHarvest } from './actions.ts';

export const metadata: Metadata = { title: 'Harvest' };

export default async function HarvestPage({
  searchParams,
}: {
  searchParams: Promise<{ said?: string; refused?: string; row?: string }>;
}) {
  const context = await placeContext();
  const [view, questions, { said, refused, row }] = await Promise.all([
    readHarvest(context),
    openQuestions(context),
    searchParams,
  ]);
  const answer = view.pickings.length > 0 ? `${bothMasses(view.pickedG)} picked today` : 'Nothing picked yet today';
  return (
    <>
      <AnswerHeading answer={answer} />
      <OpenQuestions count={questions.length} />
      <HarvestDesk
        rows={view.rows}
        containers={view.containers}
        day={view.day}
        placeId={context.place.id}
        action={recordPlainHarvest}
        plainId={randomUUID()}
        said={said ?? null}
        refused={refused ?? null}
        {...(row ? { firstRowId: row } : {})}
      />
      <PickedToday pickings={view.pickings} />
      <p>
        <LinkButton kind="quiet" href="/harvest/elsewhere">
          Fruit from elsewhere
        </LinkButton>
      </p>
    </>
  );
}
