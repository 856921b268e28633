/** The whole store at one week to come: lines stood on the boards one after another, solid what is there half the time or more. */
import { type ShelfJars, type ShelfSize, shelfLayout } from './shelf-layout.ts';

export type LineAhead = {
  readonly slug: string;
  readonly label: string;
  readonly foodColour: string;
  readonly jarKind: { readonly pitchMm: number; readonly heightMm: number };
  /** By week: half of the seasons have this many or more, one in ten that many. */
  readonly half: readonly number[];
  readonly tenth: readonly number[];
};
export type Board = ShelfSize & { readonly address: string };
export type BoardAhead = Board & { readonly jars: readonly ShelfJars[] };

/** Boards filled in their order; a line that does not end on one goes on on the next. What is over stands on the floor. */
export function boardsAtWeek(
  boards: readonly Board[],
  lines: readonly LineAhead[],
  week: number,
): { boards: BoardAhead[]; floor: { label: string; count: number; planned: boolean }[] } {
  let waiting = lines.flatMap((l): ShelfJars[] => {
    const half = l.half[week] ?? 0;
    const more = Math.max(0, (l.tenth[week] ?? 0) - half);
    const jars = {
      line: l.slug,
      label: l.label,
      foodColour: l.foodColour,
      jarKind: l.jarKind,
      href: `/pantry/${l.slug}`,
    };
    return [
      ...(half > 0 ? [{ ...jars, count: half }] : []),
      ...(more > 0 ? [{ ...jars, count: more, planned: true }] : []),
    ];
  });
  const filled = boards.map((board): BoardAhead => {
    const here: ShelfJars[] = [];
    while (waiting[0]) {
      const next = waiting[0];
      const left = shelfLayout(board, [...here, next]).left.find((l) => l.jars === next)?.count ?? 0;
      const placed = next.count - left;
      if (placed > 0) here.push({ ...next, count: placed });
      if (left === 0) waiting = waiting.slice(1);
      else {
        waiting = [{ ...next, count: left }, ...waiting.slice(1)];
        break;
      }
    }
    return { ...board, jars: here };
  });
  return {
    boards: filled,
    floor: waiting.map((j) => ({ label: j.label, count: j.count, planned: j.planned ?? false })),
  };
}
