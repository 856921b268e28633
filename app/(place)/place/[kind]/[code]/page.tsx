import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { FittingForm } from '#components/fitting-form.tsx';
import { fieldsShown } from '#lib/forms/fittings.ts';
import { fittingAddress, readFitting } from '#lib/usecases/fit-place.ts';
import { placeContext } from '../../../../place-context.ts';
import { drop, keep } from './actions.ts';

export const metadata: Metadata = { title: 'Place' };

export default async function FittingPage({
  params,
  searchParams,
}: {
  params: Promise<{ kind: string; code: string }>;
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [{ kind, code }, typed] = await Promise.all([params, searchParams]);
  const address = fittingAddress(kind, decodeURIComponent(code), typed);
  const view = address && readFitting(await placeContext(), address);
  if (!view) notFound();
  return (
    <>
      <AnswerHeading
        answer={view.title}
        sub={
          view.kitchenLabel
            ? `In the ${view.kitchenLabel.toLowerCase()}. Batches cooked before keep their figures.`
            : 'What was recorded before keeps its figures.'
        }
      />
      <FittingForm
        fields={fieldsShown(view.fields, view.stored, typed)}
        hidden={{
          kind: view.kind,
          code: view.code,
          ...(view.kitchen ? { kitchen: view.kitchen } : {}),
          ...(view.storeKind ? { as: view.storeKind } : {}),
        }}
        keep={keep}
        drop={view.code === 'new' ? null : drop}
        ids={{ keep: randomUUID(), drop: randomUUID() }}
        button={view.code === 'new' ? 'Add it' : 'Keep the change'}
        refused={typed.refused ?? null}
      />
      {view.code !== 'new' && (view.storeKind === 'freezer' || view.storeKind === 'fridge') ? (
        <p>
          <a href={`/outage?room=${encodeURIComponent(view.code)}`}>It has stopped</a>
        </p>
      ) : null}
      <p>
        <a href="/place">Back to the place</a>
      </p>
    </>
  );
}
