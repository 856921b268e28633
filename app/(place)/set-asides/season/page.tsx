import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SetAsideSeasonView } from '#components/set-aside-season.tsx';
import { readSetAsideSeason } from '#lib/usecases/read-set-aside-season.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'Set-asides of the season' };

export default async function SetAsideSeasonPage() {
  const view = await readSetAsideSeason(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      <SetAsideSeasonView {...view} />
      <p>
        <a href="/set-asides">All set-asides</a>
      </p>
    </>
  );
}
