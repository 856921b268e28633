import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Problem } from '#components/problem.tsx';
import { SeasonLinks } from '#components/season-links.tsx';
import { SeasonRun } from '#components/season-run.tsx';
import { SeasonTrays } from '#components/season-trays.tsx';
import { readSeason } from '#lib/usecases/season-view.ts';
import { placeContext } from '../../place-context.ts';
import { see } from './actions.ts';

export const metadata: Metadata = { title: 'Season' };

export default async function SeasonPage({
  searchParams,
}: {
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const [view, { said, refused }] = await Promise.all([readSeason(context), searchParams]);
  const ids = Object.fromEntries(view.picking.map((p) => [p.id, randomUUID()]));
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {refused ? <Problem title="Not counted in">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      {view.state === 'empty' ? null : <SeasonLinks />}
      {view.whole ? null : <SeasonRun action="/api/season" early={view.state === 'ready'} />}
      <SeasonTrays view={view} see={{ action: see, ids }} />
    </>
  );
}
