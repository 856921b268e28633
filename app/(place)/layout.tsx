import type { ReactNode } from 'react';
import { AppFrame } from '#components/app-frame.tsx';
import { DayMover } from '#components/day-mover.tsx';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY } from '#lib/usecases/open-demo.ts';
import { moveDay } from '../day-actions.ts';
import { DEMO_DAYS } from '../demo-days.ts';
import { placeContext } from '../place-context.ts';

export default async function PlaceLayout({ children }: { children: ReactNode }) {
  const { place, today } = await placeContext();
  const mover = place.demo ? (
    <DayMover
      today={today}
      quickDays={DEMO_DAYS}
      action={moveDay}
      firstDay={DEMO_FIRST_DAY}
      lastDay={DEMO_LAST_DAY}
      note="Forward, the season’s records run on beside yours. Back, the demonstration begins again at that day and what you entered in it goes."
    />
  ) : null;
  return (
    <AppFrame placeName={place.name.split(' ')[0] ?? place.name} today={today} dayMover={mover}>
      {children}
    </AppFrame>
  );
}
