import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { FittingForm } from '#components/fitting-form.tsx';
import { shownText } from '#lib/forms/fittings.ts';
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
        fields={view.fields.map((f) => ({
          name: f.name,
          label: f.label,
          hint: f.hint ?? null,
          as: f.as,
          unit: f.as === 'number' && f.unit ? f.unit : null,
          required: f.as === 'word' || (f.as === 'number' && !f.optional),
          options: f.as === 'choice' ? f.options : [],
          text: typed.refused ? (typed[f.name] ?? '') : shownText(f, view.stored[f.name]),
        }))}
        hidden={{
          kind: view.kind,
          code: view.code,
          ...(view.kitchen ? { kitchen: view.kitchen } : {}),
          ...(view.storeKind ? { as: view.storeKind } : {}),
        }}
        isNew={view.code === 'new'}
        keep={keep}
        drop={drop}
        ids={{ keep: randomUUID(), drop: randomUUID() }}
        refused={typed.refused ?? null}
      />
      <p>
        <a href="/place">Back to the place</a>
      </p>
    </>
  );
}
