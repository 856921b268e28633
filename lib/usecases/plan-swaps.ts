/** What a planned batch may be swapped for: other recipes of its fruit that could be made that day. */
import type { PlanInstance } from '#lib/plan/instance.ts';
import { type KitchenSlot, kitchenSlots } from '#lib/plan/kitchen-slots.ts';
import { ALL_TIGHTENINGS } from '#lib/plan/tightenings.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { type PlanAsked, planHref } from './plan-asked.ts';

export interface Swap {
  title: string;
  href: string;
}

/** More than this nobody reads at the stove. */
const MOST_SWAPS = 5;

export const slotsOf = (p: PlanInstance): KitchenSlot[] =>
  kitchenSlots(p, { tightenings: ALL_TIGHTENINGS, pinned: () => 0 });

/** The best wanted first; the batch itself is then not made that day. */
export function swapsFor(
  p: PlanInstance,
  slots: readonly KitchenSlot[],
  q: { asked: PlanAsked; recipe: string; day: number; date: PlainDate; crop: string; kg: number },
): Swap[] {
  const others = p.recipes.flatMap((r) => {
    if (r.id === q.recipe || !r.fruit.some((f) => f.crop === q.crop)) return [];
    const slot = slots
      .filter((s) => s.recipe.id === r.id && s.day === q.day && s.mode.minKg <= q.kg + 1e-9)
      .sort((a, b) => b.greatestKg - a.greatestKg)[0];
    const value = p.products.find((x) => x.id === r.product)?.segments[0]?.value ?? 0;
    return slot
      ? [{ r, value, batches: Math.max(1, Math.min(slot.most, Math.ceil(q.kg / slot.mode.maxKg - 1e-9))) }]
      : [];
  });
  const here = (k: PlanAsked['keep'][number]) => k.day === q.date && k.recipe === q.recipe;
  return others
    .sort((a, b) => b.value - a.value)
    .slice(0, MOST_SWAPS)
    .map(({ r, batches }) => ({
      title: r.name ?? r.id,
      href: planHref({
        ...q.asked,
        keep: [
          ...q.asked.keep.filter((k) => !here(k) && !(k.day === q.date && k.recipe === r.id)),
          { recipe: r.id, day: q.date, batches },
          { recipe: q.recipe, day: q.date, batches: 0 },
        ],
      }),
    }));
}
