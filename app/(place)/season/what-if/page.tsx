import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SeasonRun } from '#components/season-run.tsx';
import { WhatIfTrays } from '#components/what-if-trays.tsx';
import { readWhatIf } from '#lib/usecases/read-what-if.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'What if' };

export default async function WhatIfPage() {
  const view = await readWhatIf(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {view.whole ? null : <SeasonRun action="/api/season" early={false} />}
      <WhatIfTrays rows={view.rows} />
    </>
  );
}
