/**
 * How full a freezer is by weight, and for how long it stays cold once it has stopped. Room is 35 lb to the cubic foot (source:
 * North Carolina State University, freezer load); hours are those of lib/reference/outage-times.ts. Nothing is drawn between the
 * printed figures: fuller than half and not full counts as half.
 */
import { OUTAGE_TIMES, type OutageRow } from '#lib/reference/outage-times.ts';
import { GRAMS_PER_POUND, LITRES_PER_CUBIC_FOOT } from '#lib/units/convert.ts';

const POUNDS_PER_CUBIC_FOOT = 35;
/** Rounded the careful way: a freezer is full when its list reaches its room. */
const FULL = 1;
const HALF = 0.5;

/** Grams a freezer of so many litres has room for; RangeError unless the litres are above 0. */
export function freezerRoomG(litres: number): number {
  if (!(litres > 0)) throw new RangeError(`a freezer of ${litres} litres has no room`);
  return (litres / LITRES_PER_CUBIC_FOOT) * POUNDS_PER_CUBIC_FOOT * GRAMS_PER_POUND;
}

export interface ColdTime {
  /** Of its room, 0 and up; null where the size of the freezer is not known, and for a fridge. */
  share: number | null;
  row: OutageRow;
}

/** The row that holds for a freezer with so many grams in it; one of unknown size counts as half full. */
export function freezerColdTime(loadG: number, litres: number | null): ColdTime {
  const share = litres === null ? null : loadG / freezerRoomG(litres);
  const fullness =
    share === null || share <= HALF ? 'half full or less' : share < FULL ? 'more than half full' : 'full';
  return { share, row: rowOf((r) => r.box === 'freezer' && r.fullness === fullness) };
}

export const fridgeColdTime = (): ColdTime => ({ share: null, row: rowOf((r) => r.box === 'fridge') });

function rowOf(fits: (r: OutageRow) => boolean): OutageRow {
  const row = (OUTAGE_TIMES as readonly OutageRow[]).find(fits);
  if (!row) throw new RangeError('no printed time for this');
  return row;
}
