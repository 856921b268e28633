import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { ButtonRow } from '#components/button-row.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { Problem } from '#components/problem.tsx';
import { CountForm, CountPlaces, CountResult } from '#components/stock-take.tsx';
import { counted } from '#lib/units/format.ts';
import { countPlaces, readCount } from '#lib/usecases/stock-take.ts';
import { placeContext } from '../../place-context.ts';
import { countShelf, settleShelf } from './actions.ts';

export const metadata: Metadata = { title: 'Stock-take' };

export default async function StockTakePage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [context, query] = await Promise.all([placeContext(), searchParams]);
  const torch = query.torch === 'on';
  const places = await countPlaces(context);
  const shelf = places.find((p) => p.place === query.shelf);
  const view = query.count ? await readCount(context, query.count) : null;
  const answer = view
    ? answerOf(view)
    : shelf
      ? `${shelf.place}: count what stands there`
      : `${counted(places.length, 'place')} to count`;
  return (
    <div {...(torch ? { 'data-mode': 'torch' } : {})}>
      <AnswerHeading answer={answer} sub="The expected numbers are shown once the shelf is counted." />
      {query.refused ? <Problem title="Not taken">{query.refused}</Problem> : null}
      {query.said ? <p role="status">{query.said}</p> : null}
      {view ? (
        <CountResult view={view} action={settleShelf} id={randomUUID()} />
      ) : shelf ? (
        <CountForm
          place={shelf.place}
          lines={shelf.lines}
          jars={context.place.jarKinds.filter((k) => k.canning)}
          action={countShelf}
          id={randomUUID()}
        />
      ) : (
        <CountPlaces places={places} torch={torch} />
      )}
      <ButtonRow>
        {view || shelf ? (
          <LinkButton kind="quiet" href="/stock-take">
            Another shelf
          </LinkButton>
        ) : (
          <LinkButton kind="quiet" href="/print/count">
            Count sheet on paper
          </LinkButton>
        )}
        <LinkButton
          kind="quiet"
          href={`/stock-take?${new URLSearchParams({ ...(query.shelf ? { shelf: query.shelf } : {}), ...(query.count ? { count: query.count } : {}), torch: torch ? 'off' : 'on' })}`}
        >
          {torch ? 'Light screen' : 'Dark screen, for the torch'}
        </LinkButton>
      </ButtonRow>
    </div>
  );
}

function answerOf(view: { place: string; rows: { difference: number }[]; settled: boolean }): string {
  const different = view.rows.filter((r) => r.difference !== 0).length;
  if (view.settled) return `${view.place} is settled`;
  return different === 0 ? `${view.place}: the book agrees` : `${view.place}: ${counted(different, 'difference')}`;
}
