/** What the household wants of each line in a year, said by itself: the plan goes by it, and the season ahead starts from it. */
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { saveStatedUse, statedUse } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { usedInAYear, WEEKS_A_YEAR } from './plan-wants.ts';
import { recipesHere } from './recipes-here.ts';

export interface WantsView {
  /** Recipes of the fruit grown here. */
  choices: { id: string; title: string }[];
  /** Lines stated or on record, most wanted first. */
  lines: { id: string; title: string; stated: number | null; recorded: number | null }[];
}

export async function readWants(ctx: Context): Promise<WantsView> {
  const [used, stated] = await Promise.all([usedInAYear(ctx), statedUse(ctx.db, ctx.place.id)]);
  const grown = new Set(ctx.place.crops.map((c) => c.foodId));
  const all = recipesHere(ctx.place);
  const lines = all.flatMap((r) => {
    const said = stated.find((s) => s.line === r.title);
    const recorded = used.get(r.id);
    return said || recorded
      ? [
          {
            id: r.id,
            title: r.title,
            stated: said ? Math.round(said.perWeek * WEEKS_A_YEAR) : null,
            recorded: recorded ? Math.round(recorded) : null,
          },
        ]
      : [];
  });
  return {
    choices: all
      .filter((r) => r.fruits.some((f) => f.foodIds.some((id) => grown.has(id))))
      .map((r) => ({ id: r.id, title: r.title }))
      .sort((a, b) => (a.title < b.title ? -1 : 1)),
    lines: lines.sort((a, b) => (b.stated ?? b.recorded ?? 0) - (a.stated ?? a.recorded ?? 0)),
  };
}

/** `pieces` a year, jars or packs; null goes by the record again. */
export async function stateWant(
  ctx: Context,
  q: { id: string; recipe: string; pieces: number | null },
): Promise<Written<{ said: string }>> {
  const recipe = recipesHere(ctx.place).find((r) => r.id === q.recipe);
  if (!recipe) return { refused: 'That recipe is not in the book.' };
  const act = actOf(ctx, q.id, 'place', { want: { recipe: q.recipe, pieces: q.pieces } });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const perWeek = q.pieces === null ? null : q.pieces / WEEKS_A_YEAR;
    await saveStatedUse(tx, ctx.place.id, { line: recipe.title, perWeek, source: 'the household' });
    const said =
      q.pieces === null
        ? `${recipe.title}: by what leaves the shelf.`
        : `${recipe.title}: ${q.pieces} wanted in a year.`;
    return { entry: { act, lots: [], movements: [], changes: [] }, tell: { said } };
  });
}
