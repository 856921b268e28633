import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { SetAsideCard } from '#components/set-aside-card.tsx';
import { SetAsideStrength } from '#components/set-aside-strength.tsx';
import { mass } from '#lib/units/format.ts';
import { readSetAside } from '#lib/usecases/read-set-asides.ts';
import { placeContext } from '../../../place-context.ts';
import { clot, cup, dry, move, pack, ready, shake, strain, sweeten, vinegar, way, weigh } from '../actions.ts';

export const metadata: Metadata = { title: 'Set-aside' };

export default async function SetAsidePage({
  params,
  searchParams,
}: {
  params: Promise<{ code: string }>;
  searchParams: Promise<{ said?: string; refused?: string; roomC?: string; humidity?: string }>;
}) {
  const [{ code }, { said, refused, ...room }] = await Promise.all([params, searchParams]);
  const view = await readSetAside(await placeContext(), decodeURIComponent(code), room);
  if (!view) notFound();
  // A powder is weighed out by the gram.
  const grams = view.known ? `${view.amount} g` : mass(view.amount);
  const amount = view.unit === 'g' ? grams : `${view.amount} packs`;
  return (
    <>
      <AnswerHeading
        answer={`${view.label}: ${view.amount > 0 ? `${amount}, ${view.state}` : 'none left'}`}
        sub={view.next || `${view.code}, in the ${view.where.toLowerCase()}`}
      />
      {refused ? <Problem title="Not noted">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <SetAsideCard
        view={view}
        actions={{ dry, move, weigh, shake, ready, way, sweeten, vinegar, strain, pack }}
        ids={Array.from({ length: 8 }, () => randomUUID())}
      />
      {view.known ? (
        <SetAsideStrength
          code={view.code}
          known={view.known}
          actions={{ clot, cup }}
          ids={[randomUUID(), randomUUID()]}
        />
      ) : null}
      <p>
        <a href="/set-asides">All set-asides</a>
      </p>
    </>
  );
}
