import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LabelList, LabelsOfLot } from '#components/labels-view.tsx';
import { Problem } from '#components/problem.tsx';
import { labelQuery } from '#lib/forms/labels.ts';
import { counted } from '#lib/units/format.ts';
import { NOTED_ITEMS } from '#lib/usecases/jar-contents.ts';
import { labelledLots, readLabel, ruleCard } from '#lib/usecases/read-label.ts';
import { jarAddress, ownAddress } from '../../own-address.ts';
import { placeContext } from '../../place-context.ts';
import { keepCard, note } from './actions.ts';

export const metadata: Metadata = { title: 'Labels' };

export default async function LabelsPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [context, query] = await Promise.all([placeContext(), searchParams]);
  const asked = labelQuery.parse(query);
  const told = (
    <>
      {query.refused ? <Problem title="Not taken">{query.refused}</Problem> : null}
      {query.said ? <p role="status">{query.said}</p> : null}
    </>
  );
  if (asked.lot === '') {
    const lots = await labelledLots(context);
    return (
      <>
        <AnswerHeading
          answer={`${counted(lots.length, 'lot')} on hand to label`}
          sub="Each label is made from what went into the batch: nothing is typed twice."
        />
        {told}
        <LabelList lots={lots} card={ruleCard(context)} keepRuleCard={keepCard} id={randomUUID()} />
      </>
    );
  }
  const [view, house] = await Promise.all([readLabel(context, asked.lot, asked.purpose), ownAddress()]);
  if (!view) notFound();
  const params = new URLSearchParams(Object.entries(asked).map(([k, v]) => [k, String(v)]));
  return (
    <>
      <AnswerHeading
        answer={`Labels for ${view.lot}: ${counted(view.pieces.length, 'jar or pack', 'jars or packs')} on hand`}
        sub={`${view.line}. The code on each leads to the page of that jar.`}
      />
      {told}
      <LabelsOfLot
        view={view}
        asked={asked}
        address={jarAddress(house, view.pieces[0] ?? view.lot)}
        printHref={`/print/labels?${params}`}
        noteIngredient={note}
        noted={NOTED_ITEMS}
        id={randomUUID()}
      />
    </>
  );
}
