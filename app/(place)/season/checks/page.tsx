import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { CheckTrays } from '#components/check-trays.tsx';
import { SeasonRun } from '#components/season-run.tsx';
import { readChecks } from '#lib/usecases/read-checks.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'How good were we' };

export default async function ChecksPage() {
  const view = await readChecks(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {view.whole ? null : <SeasonRun action="/api/season" early={false} />}
      <CheckTrays view={view} />
    </>
  );
}
