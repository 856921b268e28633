/** Who was given jars lately, the most often first: one tap gives to them again. */
import { loadActs } from '#lib/store/act-store.ts';
import { addDays } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

const SHOWN = 4;

export async function givenTo(ctx: Context): Promise<string[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['take'], from: addDays(ctx.today, -365) });
  const times = new Map<string, number>();
  for (const a of acts)
    if (a.note !== null && a.payload.to === 'given') times.set(a.note, (times.get(a.note) ?? 0) + 1);
  return [...times.entries()]
    .sort(([a, n], [b, m]) => m - n || a.localeCompare(b))
    .slice(0, SHOWN)
    .map(([who]) => who);
}
