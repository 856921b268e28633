import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { ButtonRow } from '#components/button-row.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { TraceSearch } from '#components/trace-search.tsx';
import { counted } from '#lib/units/format.ts';
import { searchCodes } from '#lib/usecases/read-trace.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Trace' };

export default async function TracePage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const context = await placeContext();
  const { code } = await searchParams;
  const found = code ? await searchCodes(context, code) : [];
  return (
    <>
      <AnswerHeading
        answer={code ? `${counted(found.length, 'lot')} found for “${code}”` : 'Which jar, lot or receipt?'}
        sub="The code on the label, or a word of its name. Each leads to its trees, its receipts and its sisters."
      />
      <TraceSearch typed={code ?? ''} found={found} />
      <ButtonRow>
        <LinkButton kind="quiet" href="/recall">
          Something is wrong with a lot
        </LinkButton>
        <LinkButton kind="quiet" href="/trace/season">
          Mass of the season
        </LinkButton>
      </ButtonRow>
    </>
  );
}
