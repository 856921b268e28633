import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { TrustPage } from '#components/trust-view.tsx';
import { readTrust } from '#lib/usecases/trust-page.ts';
import { placeContext } from '../../place-context.ts';
import { forget } from './actions.ts';

export const metadata: Metadata = { title: 'Trust' };

export default async function Trust({ searchParams }: { searchParams: Promise<{ said?: string; refused?: string }> }) {
  const context = await placeContext();
  const [view, { said, refused }] = await Promise.all([readTrust(context), searchParams]);
  return (
    <>
      <AnswerHeading
        answer="How far to trust the numbers"
        sub="Arithmetic and printed rows first, your own readings next, models last."
      />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <TrustPage {...view} forget={forget} id={randomUUID()} />
    </>
  );
}
