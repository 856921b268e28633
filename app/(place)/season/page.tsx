import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SeasonLinks } from '#components/season-links.tsx';
import { SeasonRun } from '#components/season-run.tsx';
import { SeasonTrays } from '#components/season-trays.tsx';
import { readSeason } from '#lib/usecases/season-view.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Season' };

export default async function SeasonPage() {
  const context = await placeContext();
  const view = await readSeason(context);
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {view.state === 'empty' ? null : <SeasonLinks />}
      {view.whole ? null : <SeasonRun action="/api/season" early={view.state === 'ready'} />}
      <SeasonTrays view={view} />
    </>
  );
}
