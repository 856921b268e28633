/** The wall sheet: what turns this week, what is planned and due today, what is left by line, three to eat first. */
import { planInForce } from '#lib/store/plan-store.ts';
import { bothMasses, counted } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { readPantry } from './read-pantry.ts';
import { readToday } from './read-today.ts';
import { recipeHere } from './recipes-here.ts';
import { batchesAhead } from './season-plan.ts';

export interface WallView {
  turning: string[];
  tonight: string[];
  due: string[];
  left: { line: string; count: number }[];
  /** Jars and packs on the sheet in all. */
  total: number;
  eatFirst: { line: string; jar: string; where: string }[];
}

const TURNING_SHOWN = 10;
const WEEK_H = 7 * 24;
const EAT_FIRST = 3;

export async function readWall(ctx: Context): Promise<WallView> {
  const [today, pantry, plan] = await Promise.all([
    readToday(ctx),
    readPantry(ctx),
    planInForce(ctx.db, ctx.place.id, ctx.today),
  ]);
  const soon = today.turning.filter((t) => t.hours <= WEEK_H);
  const tonight = batchesAhead(plan, ctx.today).filter((b) => b.day === ctx.today);
  const shelved = pantry.lines.flatMap((l) =>
    l.lots.filter((x) => x.address !== null && !x.hold && x.seal !== 'waiting').map((x) => ({ line: l.line, ...x })),
  );
  return {
    turning: [
      ...soon.slice(0, TURNING_SHOWN).map((t) => `${t.name}, ${t.grade}: ${bothMasses(t.grams)}, ${t.deadline}`),
      ...(soon.length > TURNING_SHOWN ? [`and ${counted(soon.length - TURNING_SHOWN, 'lot')} more`] : []),
    ],
    tonight: tonight.map(
      (b) => `${recipeHere(ctx.place, b.recipeId)?.title ?? b.recipeId}: ${counted(b.batches, 'batch', 'batches')}`,
    ),
    due: today.due.map((d) => d.text),
    left: pantry.lines.map((l) => ({ line: l.line, count: l.onHand })),
    total: pantry.lines.reduce((n, l) => n + l.onHand, 0),
    eatFirst: oldestLines(shelved)
      .slice(0, EAT_FIRST)
      .map((x) => ({ line: x.line, jar: x.code, where: x.address ?? '' })),
  };
}

/** The oldest lot of each line, the oldest first. */
function oldestLines<T extends { line: string; madeOn: string; code: string }>(lots: T[]): T[] {
  const seen = new Set<string>();
  return [...lots]
    .sort((a, b) => a.madeOn.localeCompare(b.madeOn) || a.code.localeCompare(b.code))
    .filter((l) => !seen.has(l.line) && seen.add(l.line));
}
