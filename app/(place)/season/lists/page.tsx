import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SeasonLists } from '#components/season-lists.tsx';
import { isPlainDate } from '#lib/units/plain-date.ts';
import { listsAnswer, readSeasonLists } from '#lib/usecases/season-lists.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'What to make and open' };

export default async function ListsPage({ searchParams }: { searchParams: Promise<{ on?: string }> }) {
  const context = await placeContext();
  const { on } = await searchParams;
  const view = await readSeasonLists(context, on && isPlainDate(on) ? on : null);
  const { answer, sub } = listsAnswer(view);
  return (
    <>
      <AnswerHeading answer={answer} sub={sub} />
      <SeasonLists view={view} />
    </>
  );
}
