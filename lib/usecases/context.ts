/** What every use case starts from: the database, the place, its day, and the instant. The clock is handed in, never read. */
import type { Db } from '#lib/store/database/open-database.ts';
import type { Place } from '#lib/store/place.ts';
import { loadPlace } from '#lib/store/place-store.ts';
import { dayInZone, instantInZone, type PlainDate } from '#lib/units/plain-date.ts';

export interface Context {
  db: Db;
  place: Place;
  /** The place's own today: the demo's day, or the real day in its time zone. */
  today: PlainDate;
  /** The place's own instant; in the demo, on its day. */
  now: Date;
  /** The real instant, for audit. */
  enteredAt: Date;
}

/** The demo's clock begins here, or at the time asked for, when its day is moved, and runs on from there. */
export const DEMO_MORNING = '07:30';

/** The context of a place at an instant, or null when there is no such place. */
export async function openContext(db: Db, placeId: string, instant: Date): Promise<Context | null> {
  const place = await loadPlace(db, placeId);
  if (!place) return null;
  if (!place.day) return { db, place, today: dayInZone(instant, place.timeZone), now: instant, enteredAt: instant };
  return { db, place, today: place.day, now: demoNow(place, place.day, instant), enteredAt: instant };
}

/** On the demo's day: the time it was set to and what has gone by since, never past the end of that day. */
function demoNow(place: Place, day: PlainDate, instant: Date): Date {
  const { time, setAt } = place.settings.clock ?? { time: DEMO_MORNING, setAt: instant.toISOString() };
  const started = instantInZone(day, time, place.timeZone).getTime();
  const lastMinute = instantInZone(day, '23:59', place.timeZone).getTime();
  return new Date(Math.min(lastMinute, started + Math.max(0, instant.getTime() - Date.parse(setAt))));
}
