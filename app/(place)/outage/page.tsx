import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { OutageStart } from '#components/outage-start.tsx';
import { addDays } from '#lib/units/plain-date.ts';
import { localClock } from '#lib/usecases/local-clock.ts';
import { outagesNow, readColdRooms } from '#lib/usecases/read-outage.ts';
import { placeContext } from '../../place-context.ts';
import { start } from './actions.ts';

export const metadata: Metadata = { title: 'A freezer has stopped' };

export default async function OutageStartPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [context, typed] = await Promise.all([placeContext(), searchParams]);
  const now = await outagesNow(context);
  return (
    <>
      <AnswerHeading
        answer={
          now[0]
            ? `The ${now[0].room.toLowerCase()} stands still: ${now[0].left} is undecided`
            : 'Has a freezer or a fridge stopped?'
        }
        sub="Leave it shut. Each look inside costs hours."
      />
      <OutageStart
        rooms={await readColdRooms(context)}
        days={[0, -1, -2].map((d) => addDays(context.today, d))}
        now={localClock(context.now.toISOString(), context.place.timeZone).time}
        open={now.map(({ id, room, left, untilText }) => ({ id, room, left, until: untilText }))}
        typed={typed}
        action={start}
        id={randomUUID()}
      />
    </>
  );
}
