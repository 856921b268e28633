/** What is still to be picked, crop by crop, in words and as a picture. */
import { twoDigits } from '#lib/forecast/words.ts';
import { addDays, type PlainDate, yearOf } from '#lib/units/plain-date.ts';
import type { CropOutlook, Quantiles } from './forecast-harvest.ts';
import { aboutDay, between, parts, seasons } from './season-words.ts';

export interface PickRow {
  id: string;
  label: string;
  /** Crop code and food, for the colour. */
  code: string;
  foodId: string;
  /** Being picked, or about to be within four weeks: drawn. The others stand in a table. */
  soon: boolean;
  pickedKg: string;
  comingKg: string;
  middle: string;
  sentence: string;
  because: string;
  picked: { day: PlainDate; kg: number }[];
  coming: ({ day: PlainDate } & Quantiles)[];
}

/** Those being picked first, then by the day half of it is ripe. */
export function pickRows(crops: readonly CropOutlook[], today: PlainDate): PickRow[] {
  return [...crops]
    .sort(
      (a, b) =>
        Number(isSoon(b, today)) - Number(isSoon(a, today)) ||
        (a.mid < b.mid ? -1 : a.mid > b.mid ? 1 : a.id < b.id ? -1 : 1),
    )
    .map((c) => ({
      id: c.id,
      label: c.label,
      code: c.code,
      foodId: c.foodId,
      soon: isSoon(c, today),
      pickedKg: c.pickedKg > 0 ? `${twoDigits(c.pickedKg)} kg` : 'none yet',
      comingKg: between(c.coming.p10, c.coming.p90, 'kg'),
      middle: yearOf(c.mid) === yearOf(today) ? aboutDay(c.mid) : `${aboutDay(c.mid)} ${yearOf(c.mid)}`,
      sentence: sentenceOf(c),
      because: becauseOf(c),
      picked: c.picked,
      coming: c.curve,
    }));
}

const isSoon = (c: CropOutlook, today: PlainDate): boolean =>
  c.pickings + c.looks > 0 || c.windowFrom <= addDays(today, 28);

function sentenceOf(c: CropOutlook): string {
  const range = `8 seasons in 10 ${between(c.coming.p10, c.coming.p90, 'kg')}`;
  if (c.pickedKg <= 0)
    return `${c.label}: nothing picked yet. About ${twoDigits(c.coming.p50)} kg to come; ${range}, half of it by ${aboutDay(c.mid)}.`;
  const share = c.pickedKg / (c.pickedKg + c.comingMean);
  return `${c.label}: ${twoDigits(c.pickedKg)} kg picked, ${parts(share)}. Another ${twoDigits(c.coming.p50)} kg or so; ${range}.`;
}

/** The two weights: what this season's records say, what was believed before, and how much the records count. */
function becauseOf(c: CropOutlook): string {
  const years = c.pastSeasons.map((p) => `${p.year} brought ${twoDigits(p.kg)} kg`).join(', ');
  const before = `${c.basis}${years ? `; ${years}` : ''}`;
  const poor =
    c.failed > 0.15 && c.failed > c.failedBefore + 0.05
      ? ` It is a poor year ${seasons(c.failed)} that fit these records.`
      : '';
  if (c.recordsSay === null || c.recordsWeight < 0.005)
    return `Your own figure (${before}) says ${twoDigits(c.priorSays)} kg; no record of this season yet.`;
  return `Your records say ${twoDigits(c.recordsSay)} kg, your own figure and past seasons (${before}) say ${twoDigits(c.priorSays)} kg; the records count ${parts(c.recordsWeight)}, so about ${twoDigits(c.totalMean)} kg in all.${poor}`;
}
