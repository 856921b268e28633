import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { LinePieces } from '#components/line-pieces.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { Problem } from '#components/problem.tsx';
import { counted } from '#lib/units/format.ts';
import { givenTo } from '#lib/usecases/given-to.ts';
import { lineSlug, readLine } from '#lib/usecases/read-pantry.ts';
import { nearLines } from '#lib/usecases/take-jars.ts';
import { placeContext } from '../../../place-context.ts';
import { takeFromLine } from '../actions.ts';

export const metadata: Metadata = { title: 'A line of the pantry' };

export default async function LinePage({
  params,
  searchParams,
}: {
  params: Promise<{ line: string }>;
  searchParams: Promise<{ said?: string; refused?: string; count?: string; who?: string }>;
}) {
  const context = await placeContext();
  const { line } = await params;
  const [view, { said, refused, count, who }] = await Promise.all([readLine(context, line), searchParams]);
  if (!view) return <NoSuchLine slug={line} near={await nearLines(context, line)} />;
  return (
    <>
      <AnswerHeading
        answer={`${view.line}: ${view.kinds.map((k) => counted(k.count, k.label)).join(', ')}`}
        sub="Numbered jars, the oldest first to go."
      />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <LinePieces
        slug={view.slug}
        pieces={view.pieces}
        action={takeFromLine}
        id={randomUUID()}
        typed={{ count: count ?? '1', who: who ?? '' }}
        people={await givenTo(context)}
      />
    </>
  );
}

/** A line that is not on hand: the near ones are offered. */
function NoSuchLine({ slug, near }: { slug: string; near: readonly string[] }) {
  return (
    <>
      <AnswerHeading
        answer={`There is no “${slug.replaceAll('-', ' ')}” on hand`}
        sub={near.length > 0 ? 'These come near.' : 'Nothing on hand comes near it.'}
      />
      <ul>
        {near.map((line) => (
          <li key={line}>
            <a href={`/pantry/${lineSlug(line)}`}>{line}</a>
          </li>
        ))}
      </ul>
      <LinkButton kind="quiet" href="/pantry">
        All lines
      </LinkButton>
    </>
  );
}
