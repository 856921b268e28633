import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { BatchChooser } from '#components/batch-chooser.tsx';
import { BatchDraft } from '#components/batch-draft.tsx';
import { fruitColour } from '#components/fruit-colour.ts';
import { Problem } from '#components/problem.tsx';
import { readChooser } from '#lib/usecases/choose-recipe.ts';
import { readSheet } from '#lib/usecases/read-sheet.ts';
import { placeContext } from '../../../place-context.ts';
import { start } from '../actions.ts';

export const metadata: Metadata = { title: 'New batch' };

export default async function NewBatchPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const context = await placeContext();
  const typed = await searchParams;
  const lots = [typed.lot ?? []].flat();
  if (!typed.recipe) {
    return (
      <>
        <AnswerHeading
          answer="What shall be made?"
          sub="Tick the fruit; the book shows what it may become in this kitchen, and where it would go."
        />
        <BatchChooser {...(await readChooser(context, lots))} />
      </>
    );
  }
  const sheet = await readSheet(context, typed);
  if ('refused' in sheet) {
    return (
      <>
        <AnswerHeading answer="This batch cannot be worked out yet" />
        <Problem title="Not worked out">{sheet.refused}</Problem>
        <BatchChooser {...(await readChooser(context, lots))} />
      </>
    );
  }
  const refused = typeof typed.refused === 'string' ? typed.refused : sheet.problem;
  return (
    <>
      <AnswerHeading answer={sheet.answer} sub={sheet.sub} />
      <BatchDraft
        {...sheet.props}
        colour={fruitColour(sheet.props.foodId)}
        start={start}
        id={randomUUID()}
        refused={refused}
      />
    </>
  );
}
