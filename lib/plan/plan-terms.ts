/** Sums that several rules and the objective share, so that each quantity is defined once. */
import type { PlanRecipe } from './instance.ts';
import type { KitchenSlot } from './kitchen-slots.ts';
import type { Term } from './model-builder.ts';
import type { PlanFrame } from './plan-frame.ts';

export const times = (terms: readonly Term[], factor: number): Term[] => terms.map(([c, f]) => [c, f * factor]);

/** Whole batches of a slot, each counted `weight(loads)` times. */
export const batches = (
  f: PlanFrame,
  s: KitchenSlot,
  weight: (choice: { loads: number; kg: number }) => number = () => 1,
): Term[] =>
  f.setup.tightenings.loadModes || !s.recipe.canner
    ? s.choices.flatMap((c) =>
        f.term({ kind: 'batches', ids: [s.recipe.id, s.mode.id], day: s.day, loads: c.loads }, weight(c)),
      )
    : f.term({ kind: 'batches', ids: [s.recipe.id, s.mode.id], day: s.day }, weight({ loads: 1, kg: s.greatestKg }));

/** Canner loads of a slot. */
export const loads = (f: PlanFrame, s: KitchenSlot): Term[] => {
  if (!s.recipe.canner) return [];
  return f.setup.tightenings.loadModes
    ? batches(f, s, (c) => c.loads)
    : f.term({ kind: 'loads', ids: [s.recipe.id, s.mode.id], day: s.day }, 1);
};

/** kg cooked of a recipe on a day, all modes. */
export const cooked = (f: PlanFrame, recipe: string, day: number): Term[] =>
  f.slotsOn(recipe, day).flatMap((s) => f.term({ kind: 'cook', ids: [recipe, s.mode.id], day }, 1));

/** All batches of a recipe on a day. */
export const dayBatches = (f: PlanFrame, recipe: string, day: number): Term[] =>
  f.slotsOn(recipe, day).flatMap((s) => batches(f, s));

/** The set-up of a recipe-day: its own column, or its single batch. */
export function setUp(f: PlanFrame, recipe: PlanRecipe, day: number): Term[] {
  if ((recipe.setupH ?? 0) <= 0) return [];
  const own = f.term({ kind: 'setUp', ids: [recipe.id], day }, 1);
  return own.length ? own : dayBatches(f, recipe.id, day);
}

/** Hours of hands on a day, by recipe. */
export const handHours = (f: PlanFrame, day: number): Term[] =>
  f.data.recipes.flatMap((r) => [
    ...times(setUp(f, r, day), r.setupH ?? 0),
    ...f
      .slotsOn(r.id, day)
      .flatMap((s) => [
        ...batches(f, s, () => s.mode.activeH),
        ...f.term({ kind: 'cook', ids: [r.id, s.mode.id], day }, s.mode.activePerKg ?? 0),
        ...times(loads(f, s), r.canner?.activeH ?? 0),
      ]),
  ]);

/** Burner hours on a day. */
export const burnerHours = (f: PlanFrame, day: number): Term[] =>
  f.data.recipes.flatMap((r) =>
    f
      .slotsOn(r.id, day)
      .flatMap((s) => [
        ...batches(f, s, () => s.mode.burnerH),
        ...f.term({ kind: 'cook', ids: [r.id, s.mode.id], day }, s.mode.burnerPerKg ?? 0),
        ...times(loads(f, s), r.canner?.burnerH ?? 0),
      ]),
  );

/** Litres made of a recipe on a day, as they count in the pantry (jarred litres when it is jarred). */
export const litresMade = (f: PlanFrame, recipe: PlanRecipe, day: number): Term[] =>
  recipe.jars?.length
    ? f.data.jars
        .filter((j) => recipe.jars?.includes(j.id))
        .flatMap((j) => f.term({ kind: 'jars', ids: [recipe.id, j.id], day }, j.litres))
    : times(cooked(f, recipe.id, day), recipe.yieldPerKg);

/** Litres of room a recipe's day takes in store. */
export const litresStored = (f: PlanFrame, recipe: PlanRecipe, day: number): Term[] =>
  recipe.jars?.length
    ? f.data.jars
        .filter((j) => recipe.jars?.includes(j.id))
        .flatMap((j) => f.term({ kind: 'jars', ids: [recipe.id, j.id], day }, j.storeLitres ?? j.litres))
    : times(cooked(f, recipe.id, day), recipe.yieldPerKg);

/** The shortage column of a day's limit, when shortages are priced rather than forbidden. */
export const shortage = (f: PlanFrame, limit: string, day: number): Term[] =>
  f.term({ kind: 'shortage', ids: [limit], day }, -1);
