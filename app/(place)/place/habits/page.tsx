import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { FittingForm } from '#components/fitting-form.tsx';
import { fieldsShown, HABIT_FIELDS } from '#lib/forms/fittings.ts';
import { habitsOf } from '#lib/usecases/keep-habits.ts';
import { placeContext } from '../../../place-context.ts';
import { keep } from './actions.ts';

export const metadata: Metadata = { title: 'Place' };

export default async function HabitsPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const typed = await searchParams;
  const stored = habitsOf(await placeContext());
  return (
    <>
      <AnswerHeading
        answer="How this house works"
        sub="What the sums start from until your own records teach better. None of it touches a process or a pH."
      />
      <FittingForm
        fields={fieldsShown(HABIT_FIELDS, stored, typed)}
        hidden={{}}
        keep={keep}
        drop={null}
        ids={{ keep: randomUUID(), drop: '' }}
        button="Keep the change"
        refused={typed.refused ?? null}
      />
      <p>
        <a href="/place">Back to the place</a>
      </p>
    </>
  );
}
