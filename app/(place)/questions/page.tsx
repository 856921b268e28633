import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { QuestionList } from '#components/question-list.tsx';
import { counted } from '#lib/units/format.ts';
import { openQuestions } from '#lib/usecases/questions.ts';
import { linesOnHand } from '#lib/usecases/take-jars.ts';
import { placeContext } from '../../place-context.ts';
import { answer } from './actions.ts';

export const metadata: Metadata = { title: 'Questions' };

export default async function QuestionsPage({
  searchParams,
}: {
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const [questions, lines, { said, refused }] = await Promise.all([
    openQuestions(context),
    linesOnHand(context),
    searchParams,
  ]);
  return (
    <>
      <AnswerHeading
        answer={questions.length === 0 ? 'Nothing to ask' : `${counted(questions.length, 'question')} to answer`}
        sub="Nothing of it moved anything yet."
      />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <QuestionList questions={questions.map((q) => ({ ...q, formId: randomUUID() }))} lines={lines} action={answer} />
    </>
  );
}
