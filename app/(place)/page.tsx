import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { OpenQuestions } from '#components/open-questions.tsx';
import { todayAnswer } from '#components/today-answer.ts';
import { TodayTrays } from '#components/today-trays.tsx';
import { openQuestions } from '#lib/usecases/questions.ts';
import { readToday } from '#lib/usecases/read-today.ts';
import { placeContext } from '../place-context.ts';

export const metadata: Metadata = { title: 'Today' };

export default async function TodayPage() {
  const context = await placeContext();
  const view = await readToday(context);
  return (
    <>
      <AnswerHeading {...todayAnswer(view)} />
      <OpenQuestions count={(await openQuestions(context)).length} />
      <TodayTrays view={view} />
    </>
  );
}
