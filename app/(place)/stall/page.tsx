import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { OpenQuestions } from '#components/open-questions.tsx';
import { StallDesk } from '#components/stall-desk.tsx';
import { counted } from '#lib/units/format.ts';
import { openQuestions } from '#lib/usecases/questions.ts';
import { stallCards } from '#lib/usecases/read-card.ts';
import { placeContext } from '../../place-context.ts';

export const metadata: Metadata = { title: 'Stall' };

export default async function StallPage() {
  const context = await placeContext();
  const cards = await stallCards(context);
  return (
    <>
      <AnswerHeading
        answer="What is in it?"
        sub={`The cards of ${counted(cards.length, 'lot')} are kept on this device once this page was open with a signal.`}
      />
      <OpenQuestions count={(await openQuestions(context)).length} />
      <StallDesk
        placeId={context.place.id}
        cards={cards}
        where="the stall"
        demoDay={context.place.demo ? context.today : null}
      />
    </>
  );
}
