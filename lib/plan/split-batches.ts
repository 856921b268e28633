/** The single batches of a cooked line: each has its least kg, the rest goes by what each can still hold. */
import type { PlanInstance } from './instance.ts';
import type { CookedBatches } from './plan.ts';
import { modeOf, recipeOf } from './plan-tally.ts';

export interface SingleBatch {
  recipe: string;
  mode: string;
  day: number;
  /** 1 for the first of its line. */
  number: number;
  kg: number;
  loads: number;
}

export function splitBatches(p: PlanInstance, line: CookedBatches): SingleBatch[] {
  const recipe = recipeOf(p, line.recipe);
  const mode = modeOf(recipe, line.mode);
  const loads = line.batches.flatMap((b) => Array.from({ length: b.count }, () => b.loads));
  if (!recipe || !mode || loads.length === 0) return [];
  const roomiest = Math.max(0, ...p.jars.filter((j) => recipe.jars?.includes(j.id)).map((j) => j.perLoad * j.litres));
  const room = loads.map((q) =>
    recipe.canner ? Math.min(mode.maxKg, (q * roomiest) / recipe.yieldPerKg) : mode.maxKg,
  );
  const least = Math.min(mode.minKg, line.kg / loads.length);
  const spare = room.map((r) => Math.max(0, r - least));
  const all = spare.reduce((a, b) => a + b, 0);
  const rest = line.kg - least * loads.length;
  return loads.map((q, i) => ({
    recipe: line.recipe,
    mode: line.mode,
    day: line.day,
    number: i + 1,
    loads: q,
    kg: least + (all > 0 ? (rest * (spare[i] as number)) / all : 0),
  }));
}
