import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { EmptyState } from '#components/empty-state.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { PlanView } from '#components/plan-view.tsx';
import { readPlanPage } from '#lib/usecases/plan-page.ts';
import { placeContext } from '../../place-context.ts';
import { choose } from './actions.ts';

export const metadata: Metadata = { title: 'Plan' };

export default async function PlanPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const context = await placeContext();
  const typed = await searchParams;
  const view = await readPlanPage(context, typed);
  const text = (key: string) => (typeof typed[key] === 'string' ? typed[key] : null);
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      {view.plan ? (
        <PlanView view={view.plan} choose={choose} said={text('said')} refused={text('refused')} />
      ) : (
        <EmptyState
          title="No fruit is waiting."
          first="Weigh in a picking, or name your crops and their picking times."
          action={<LinkButton href="/harvest">Weigh in a picking</LinkButton>}
        />
      )}
    </>
  );
}
