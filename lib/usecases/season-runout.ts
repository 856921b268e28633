/** What runs out and when, line by line: the order of worry, and the words beside each strip. */
import { counted } from '#lib/units/format.ts';
import { addDays, monthName, type PlainDate } from '#lib/units/plain-date.ts';
import type { LineOutlook } from './forecast-summary.ts';
import { aboutWeek, seasons } from './season-words.ts';

export interface LineRow {
  id: string;
  label: string;
  href: string;
  foodId: string;
  gone: number[];
  bestBy: number[];
  words: string;
}
export interface EndPicture {
  id: string;
  sentence: string;
  foodId: string;
  days: (PlainDate | null)[];
  to: PlainDate;
}
/** Lines that run out oftenest first; of those alike, the one that is gone soonest; those with none left now at the end. */
export function byUrgency(lines: readonly LineOutlook[]): LineOutlook[] {
  const rank = (l: LineOutlook) => (l.onHand === 0 && l.fromWeek === 0 ? 1 : 0);
  const soon = (l: LineOutlook) => l.dots.find((d) => d !== null) ?? Number.POSITIVE_INFINITY;
  return [...lines].sort(
    (a, b) =>
      rank(a) - rank(b) ||
      Math.round(b.none * 10) - Math.round(a.none * 10) ||
      soon(a) - soon(b) ||
      (a.id < b.id ? -1 : 1),
  );
}

export function lineRow(l: LineOutlook, today: PlainDate): LineRow {
  return {
    id: l.id,
    label: l.line,
    href: `/pantry/${l.slug}`,
    foodId: l.foodId,
    gone: l.gone,
    bestBy: l.bestBy,
    words: lineWords(l, today),
  };
}

function lineWords(l: LineOutlook, today: PlainDate): string {
  if (l.onHand === 0 && l.fromWeek === 0) return 'none on hand now';
  if (l.none === 0) return 'lasts in all seasons';
  const gone = `gone ${shortSeasons(l.none)}`;
  return l.goneHalf === null ? gone : `${gone}, half by ${monthName(addDays(today, 7 * l.goneHalf + 3)).slice(0, 3)}`;
}

/** The same chance in the few words a strip has room for. */
function shortSeasons(p: number): string {
  if (p === 1) return 'in all seasons';
  if (p > 0.99) return '99 seasons in 100';
  if (p < 0.01) return 'under 1 season in 100';
  return seasons(p).replace(/^in about /, '');
}

/** More than is used: even in a lean season (1 in 10) half a year's use is left at the next harvest. */
const isTooMuch = (l: LineOutlook): boolean => {
  const left = l.weeks[Math.min(l.weeks.length, l.toWeek) - 1]?.p10 ?? 0;
  return l.onHand > 0 && left >= 6 && left > 26 * l.usePerWeek;
};

export function linesSay(lines: readonly LineOutlook[]): string {
  const now = lines.filter((l) => l.onHand === 0 && l.fromWeek === 0);
  const there = lines.filter((l) => !now.includes(l));
  const short = there.filter((l) => l.none >= 0.5).length;
  const much = there.filter((l) => l.none < 0.5 && isTooMuch(l));
  const names = much.length > 0 && much.length <= 4 ? ` (${much.map((l) => l.line).join(', ')})` : '';
  const say = [
    `${counted(short, 'line runs', 'lines run')} out before the next harvest in 5 seasons in 10 or more`,
    `${there.length - short - much.length} on course`,
    ...(much.length > 0 ? [`${much.length} more than is used${names}`] : []),
    ...(now.length > 0 ? [`${now.length} with none on hand now`] : []),
  ];
  return `${say.join(', ')}.`;
}

export function endPicture(l: LineOutlook, today: PlainDate): EndPicture {
  const half = l.goneHalf === null ? '' : ` Half the time it is gone by ${aboutWeek(today, l.goneHalf)}.`;
  return {
    id: l.id,
    sentence: `${l.line}, ${l.onHand} on hand: gone before its next harvest ${seasons(l.none)}.${half}`,
    foodId: l.foodId,
    days: l.dots.map((w) => (w === null ? null : addDays(today, 7 * w + 6))),
    to: addDays(today, 7 * l.toWeek),
  };
}
