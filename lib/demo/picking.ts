/**
 * The demo's daily pickings. A crop's total is spread over its window of d days with weights min(i + 1, d - i), a tent,
 * and split into whole grams by largest remainder, so that the season adds up to plants x kg each. Common practice for a
 * stand-in season; the forecast uses its own picking curve.
 */
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import { splitWhole } from '#lib/units/split.ts';
import type { DemoCrop } from './wrenlatch.ts';

export interface DayPick {
  day: PlainDate;
  grams: number;
}

export function dailyPicks(crop: DemoCrop, year: number): DayPick[] {
  const first = `${year}-${crop.window[0]}` as PlainDate;
  const days = daysBetween(first, `${year}-${crop.window[1]}` as PlainDate) + 1;
  const tent = Array.from({ length: days }, (_, i) => Math.min(i + 1, days - i));
  return splitWhole(crop.count * crop.gPerUnit, tent).map((grams, i) => ({ day: addDays(first, i), grams }));
}

export interface PickSplit {
  sold: number;
  eaten: number;
  cull: number;
  perfect: number;
  blemished: number;
  soft: number;
}

/** One day's picking by where it goes; what is left to preserve is graded 45 : 45 : 10 (demo values). */
export function splitPick(crop: DemoCrop, grams: number): PickSplit {
  const kept = 100 - crop.soldPercent - crop.eatenPercent - crop.cullPercent;
  const [sold, eaten, cull, perfect, blemished, soft] = splitWhole(grams, [
    crop.soldPercent,
    crop.eatenPercent,
    crop.cullPercent,
    kept * 0.45,
    kept * 0.45,
    kept * 0.1,
  ]) as [number, number, number, number, number, number];
  return { sold, eaten, cull, perfect, blemished, soft };
}
