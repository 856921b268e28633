/**
 * Plays the demo's year day by day onto a book. What a person did in the demo stands: where they recorded the day's
 * picking or made the batch, the script leaves theirs, and where they used the fruit first, the script makes fewer jars.
 */
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import { seasonActId } from './demo-ids.ts';
import { clearPast, playPick, playSetAside, playUse } from './play-day.ts';
import { playMake, shelveMade } from './play-make.ts';
import { playReceipt } from './play-opening.ts';
import { playPowderJam, playPowderJamSet } from './play-powder-jam.ts';
import { type SeasonEvent, seasonEvents } from './season-events.ts';
import type { SeasonState } from './season-state.ts';

/** A batch whose fruit is not there yet waits so many days before it is made smaller, and so many before it is dropped. */
const WAIT_DAYS = 6;
export const LONGEST_WAIT = 40;
/** A jar nobody could take is taken later; after so many days the wish has passed. */
const USE_WAIT = 120;

/** Plays every event with `from` <= day < `to`, and those of the days before that still wait. */
export function playSeason(s: SeasonState, from: PlainDate, to: PlainDate): void {
  const events = seasonEvents();
  let waiting = events.filter((e) => e.day < from && daysBetween(e.day, from) < USE_WAIT && isOpen(s, e));
  let next = events.findIndex((e) => e.day >= from);
  if (next < 0) next = events.length;
  for (let day = from; day < to; day = addDays(day, 1)) {
    shelveMade(s, day);
    while (next < events.length && (events[next] as SeasonEvent).day === day)
      waiting.push(events[next++] as SeasonEvent);
    waiting = waiting.filter((e) => !playEvent(s, e, day));
    clearPast(s, day);
  }
  shelveMade(s, to);
}

const isOpen = (s: SeasonState, e: SeasonEvent): boolean =>
  (e.what === 'make' && !s.book.acts.has(seasonActId(s.placeId, `${e.key}-start`))) ||
  (e.what === 'use' && !s.book.acts.has(seasonActId(s.placeId, e.key)));

/** True when the event is done with (played, or given up for good). */
function playEvent(s: SeasonState, e: SeasonEvent, day: PlainDate): boolean {
  const late = daysBetween(e.day, day);
  switch (e.what) {
    case 'receive':
      playReceipt(s, e.key, e.supply, day);
      return true;
    case 'pick':
      playPick(s, e.key, e.crop, e.row, e.pick);
      return true;
    case 'make':
      return playMake(s, e, day, late >= WAIT_DAYS) || late >= LONGEST_WAIT;
    case 'use':
      return playUse(s, e.key, e.line, e.use, day) || late >= USE_WAIT;
    case 'powder-jam':
      playPowderJam(s, e.key, day);
      return true;
    case 'powder-jam-set':
      playPowderJamSet(s, e.key, day);
      return true;
    default:
      return playSetAside(s, e, day);
  }
}
