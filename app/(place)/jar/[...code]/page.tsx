import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Button } from '#components/button.tsx';
import { ButtonRow } from '#components/button-row.tsx';
import { JarCard } from '#components/jar-card.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { Tray } from '#components/tray.tsx';
import { readCard } from '#lib/usecases/read-card.ts';
import { placeContext } from '../../../place-context.ts';
import { take } from '../../pantry/actions.ts';

export const metadata: Metadata = { title: 'What is in it?' };

export default async function JarPage({ params }: { params: Promise<{ code: string[] }> }) {
  const context = await placeContext();
  const code = (await params).code.map(decodeURIComponent).join('/');
  const found = await readCard(context, code);
  if (!found) notFound();
  const { card, jar } = found;
  return (
    <>
      <AnswerHeading answer={card.name} sub={`Lot ${card.lot}, made ${card.madeOn}.`} />
      <Tray title="What is in it?">
        <JarCard card={card} jar={jar} />
      </Tray>
      <ButtonRow>
        {card.onHand ? (
          <form action={take}>
            <input type="hidden" name="id" value={randomUUID()} />
            <input type="hidden" name="slug" value={card.slug} />
            <input type="hidden" name="lot" value={card.lot} />
            <Button>Take one of this lot</Button>
          </form>
        ) : null}
        <LinkButton kind="quiet" href={`/pantry/${card.slug}`}>
          Take, give or sell
        </LinkButton>
        <LinkButton kind="quiet" href={`/trace/${jar ?? card.lot}`}>
          Trace it
        </LinkButton>
        <LinkButton kind="quiet" href={`/trace/${jar ?? card.lot}#entries`}>
          Put an entry right
        </LinkButton>
        <LinkButton kind="quiet" href={`/labels?lot=${encodeURIComponent(card.lot)}`}>
          Label
        </LinkButton>
        <LinkButton kind="quiet" href={`/suspect/${jar ?? card.lot}`}>
          It looks wrong
        </LinkButton>
      </ButtonRow>
    </>
  );
}
