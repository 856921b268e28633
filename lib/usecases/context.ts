/** What every use case starts from: the database, the place, its day, and the instant. The clock is handed in, never read. */
import type { Db } from '#lib/store/database/open-database.ts';
import type { Place } from '#lib/store/place.ts';
import { loadPlace } from '#lib/store/place-store.ts';
import { dayInZone, type PlainDate } from '#lib/units/plain-date.ts';

export interface Context {
  db: Db;
  place: Place;
  /** The place's own today: the demo's day, or the real day in its time zone. */
  today: PlainDate;
  /** The place's own instant: on the demo's day, at the real time of day. */
  now: Date;
  /** The real instant, for audit. */
  enteredAt: Date;
}

/** The context of a place at an instant, or null when there is no such place. */
export async function openContext(db: Db, placeId: string, instant: Date): Promise<Context | null> {
  const place = await loadPlace(db, placeId);
  if (!place) return null;
  const real = dayInZone(instant, place.timeZone);
  const today = place.day ?? real;
  const now = place.day ? new Date(`${place.day}T${instant.toISOString().slice(11)}`) : instant;
  return { db, place, today, now, enteredAt: instant };
}
