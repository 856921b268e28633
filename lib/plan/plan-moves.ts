import type { PlanInstance } from './instance.ts';

/** Which batches are free in a move: four neighbouring days, or a fifth of the products. */
export function planMoves(
  p: PlanInstance,
  order: <T>(list: readonly T[]) => T[],
): ((recipe: string, day: number) => boolean)[] {
  const windows = Array.from({ length: Math.max(1, Math.ceil((p.horizon - 1) / 2)) }, (_, i) => i * 2).map(
    (from) => (_: string, day: number) => day >= from && day < from + 4,
  );
  const recipes = order(p.recipes.map((r) => r.id));
  const fifth = Math.max(1, Math.ceil(recipes.length / 5));
  const groups = Array.from(
    { length: Math.ceil(recipes.length / fifth) },
    (_, i) => new Set(recipes.slice(i * fifth, (i + 1) * fifth)),
  ).map((set) => (recipe: string) => set.has(recipe));
  return order([...windows, ...groups]);
}
