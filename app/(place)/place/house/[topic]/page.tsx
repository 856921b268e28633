import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { FittingForm } from '#components/fitting-form.tsx';
import { fieldsShown } from '#lib/forms/fittings.ts';
import { houseTopic } from '#lib/usecases/keep-habits.ts';
import { placeContext } from '../../../../place-context.ts';
import { keep } from './actions.ts';

export const metadata: Metadata = { title: 'Place' };

export default async function HousePage({
  params,
  searchParams,
}: {
  params: Promise<{ topic: string }>;
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [{ topic: name }, typed] = await Promise.all([params, searchParams]);
  const topic = houseTopic(name);
  if (!topic) notFound();
  return (
    <>
      <AnswerHeading answer={topic.title} sub={topic.sub} />
      <FittingForm
        fields={fieldsShown(topic.fields, topic.stored(await placeContext()), typed)}
        hidden={{ topic: name }}
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
