/** The shelves at any week of the year ahead: lines in jars with how many stand there in half of the seasons and in one of ten. */
import { counted } from '#lib/units/format.ts';
import { addDays, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { nothingToForecast, seasonForecast } from './forecast-season.ts';
import type { ForecastSummary } from './forecast-summary.ts';
import { aboutWeek, seasons } from './season-words.ts';

export interface ShelfAheadView {
  state: 'empty' | 'waiting' | 'ready';
  whole: boolean;
  answer: string;
  sub: string;
  weeks: PlainDate[];
  boards: { address: string; widthMm: number; depthMm: number; clearMm: number }[];
  lines: {
    slug: string;
    label: string;
    foodId: string;
    jarKind: { pitchMm: number; heightMm: number };
    half: number[];
    tenth: number[];
  }[];
}

export async function readShelfAhead(ctx: Context): Promise<ShelfAheadView> {
  const { input, summary, whole } = await seasonForecast(ctx);
  const boards = boardsOf(ctx);
  const nothing = { weeks: [], boards, lines: [] };
  const sub = `As of ${longDate(input.today)}. Drawn to scale, lines one after another; where each stands today is under Pantry.`;
  if (nothingToForecast(input) || boards.length === 0)
    return {
      ...nothing,
      state: 'empty',
      whole: true,
      answer: boards.length === 0 ? 'No shelf is on record' : 'No jar to look ahead to yet',
      sub: boards.length === 0 ? 'Add the store with its bays and shelves under Place.' : sub,
    };
  if (!summary) return { ...nothing, state: 'waiting', whole: false, answer: 'Working out the shelves ahead', sub };
  const kinds = new Map(ctx.place.jarKinds.map((k) => [k.code, k]));
  return {
    state: 'ready',
    whole,
    answer: fullAnswer(summary, input.today),
    sub,
    weeks: Array.from({ length: summary.weeks }, (_, w) => addDays(input.today, 7 * w)),
    boards,
    lines: summary.lines
      .flatMap((l, i) => {
        const kind = kinds.get(l.item);
        const onShelf = input.scenario.stores[input.scenario.products[i]?.store ?? -1]?.id === 'shelf';
        if (!kind || !onShelf || !l.weeks.some((w) => w.p90 > 0)) return [];
        return [
          {
            slug: l.slug,
            label: l.line,
            foodId: l.foodId,
            jarKind: { pitchMm: kind.pitchMm, heightMm: kind.heightMm },
            half: l.weeks.map((w) => w.p50),
            tenth: l.weeks.map((w) => w.p90),
          },
        ];
      })
      .sort((a, b) => a.jarKind.heightMm - b.jarKind.heightMm || (a.foodId < b.foodId ? -1 : 1)),
  };
}

/** Boards of all shelf rooms, in walking order. */
function boardsOf(ctx: Context): ShelfAheadView['boards'] {
  return ctx.place.rooms
    .filter((r) => r.kind === 'shelf' && r.widthMm && r.depthMm && r.clearMm)
    .flatMap((r) =>
      Array.from({ length: (r.bays ?? 0) * (r.shelvesPerBay ?? 0) }, (_, i) => ({
        address: `B${Math.floor(i / (r.shelvesPerBay ?? 1)) + 1}-S${(i % (r.shelvesPerBay ?? 1)) + 1}`,
        widthMm: r.widthMm as number,
        depthMm: r.depthMm as number,
        clearMm: r.clearMm as number,
      })),
    );
}

function fullAnswer(summary: ForecastSummary, today: PlainDate): string {
  const shelf = summary.stores.find((s) => s.id === 'shelf');
  if (!shelf) return `${counted(summary.lines.length, 'line')} ahead`;
  if (shelf.over.share >= 0.05) return `The shelves fill up ${seasons(shelf.over.share)}`;
  const peak = shelf.weeks.reduce((best, w, i) => (w.p50 > (shelf.weeks[best]?.p50 ?? 0) ? i : best), 0);
  const tenths = Math.round((10 * (shelf.weeks[peak]?.p50 ?? 0)) / Math.max(1, shelf.capacity));
  return `All jars fit: the shelves are fullest in ${aboutWeek(today, peak)}, about ${tenths} parts in 10`;
}
