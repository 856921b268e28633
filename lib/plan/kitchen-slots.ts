/** Where a batch could be: recipe, vessel and day, with the ceilings that hours, vessels, loads and fruit set. */
import type { PlanInstance, PlanRecipe, RecipeMode } from './instance.ts';
import type { Tightenings } from './tightenings.ts';
import { gradeOn, isThere, usableShare } from './usable-fruit.ts';

export interface KitchenSlot {
  recipe: PlanRecipe;
  mode: RecipeMode;
  day: number;
  /** Most batches of this mode on this day. */
  most: number;
  /** Greatest batch, kg. */
  greatestKg: number;
  /** What a batch holds by the canner loads it takes; `loads` 0 when it needs no canner. */
  choices: readonly { loads: number; kg: number }[];
}

const floor = (x: number) => Math.floor(x + 1e-9);
const ceil = (x: number) => Math.ceil(x - 1e-9);

/** Usable kg of a recipe's fruit that could be in the kitchen on a day, held back by least shares. */
export function fruitThere(p: PlanInstance, recipe: PlanRecipe, day: number): number {
  const byUse = recipe.fruit.map((f) =>
    p.lots
      .filter((l) => l.crop === f.crop && isThere(l, day) && f.grades.includes(gradeOn(l, day)))
      .reduce((n, l) => n + l.kg * usableShare(l, day), 0),
  );
  const held = recipe.fruit.map((f, i) =>
    (f.minShare ?? 0) > 0 ? (byUse[i] as number) / (f.minShare as number) : Infinity,
  );
  return Math.min(
    byUse.reduce((a, b) => a + b, 0),
    ...held,
  );
}

export interface SlotLimits {
  tightenings: Tightenings;
  /** Recipe-days a person has pinned keep their columns and their number. */
  pinned(recipe: string, day: number): number;
}

export function kitchenSlots(p: PlanInstance, limits: SlotLimits): KitchenSlot[] {
  const slots: KitchenSlot[] = [];
  for (const recipe of p.recipes)
    for (let day = 0; day < p.horizon; day++) {
      const fruit = fruitThere(p, recipe, day);
      for (const mode of recipe.modes) {
        const slot = slotOf(p, limits, { recipe, mode, day, fruit });
        if (slot) slots.push(slot);
      }
    }
  return slots;
}

function slotOf(
  p: PlanInstance,
  limits: SlotLimits,
  at: { recipe: PlanRecipe; mode: RecipeMode; day: number; fruit: number },
): KitchenSlot | null {
  const { recipe, mode, day, fruit } = at;
  const t = limits.tightenings;
  const pinned = limits.pinned(recipe.id, day);
  const ceiling = dayCeiling(p, at);
  const hopeless = ceiling < 1 || fruit < mode.minKg - 1e-9 || fruit <= 1e-9;
  if (hopeless && t.prune && pinned === 0) return null;
  const most = t.tight
    ? Math.min(recipe.maxBatchesPerDay, ceiling, mode.minKg > 0 ? floor(fruit / mode.minKg) : Infinity)
    : recipe.maxBatchesPerDay;
  const dominated = t.domBatches ? Math.max(1, ceil(fruit / mode.maxKg)) : Infinity;
  const greatestKg = t.tight && pinned === 0 ? Math.min(mode.maxKg, fruit) : mode.maxKg;
  const choices = loadChoices(p, { recipe, mode, day, greatestKg, pinned: pinned > 0 });
  if (choices.length === 0) return null;
  return { recipe, mode, day, most: Math.max(pinned, Math.min(most, dominated)), greatestKg, choices };
}

/** Most batches the day's hands, burners, vessels and loads allow. */
function dayCeiling(p: PlanInstance, at: { recipe: PlanRecipe; mode: RecipeMode; day: number }): number {
  const { recipe, mode } = at;
  const day = p.days[at.day];
  if (!day) return 0;
  const vessel = p.vessels.find((v) => v.id === mode.vessel);
  const hands = day.active + day.overtime - (recipe.setupH ?? 0);
  return Math.min(
    hands < -1e-9 ? 0 : mode.activeH > 0 ? floor(hands / mode.activeH) : Infinity,
    mode.burnerH > 0 ? floor(day.burner / mode.burnerH) : Infinity,
    mode.vesselH > 0 ? floor(((vessel?.count ?? 0) * (day.vesselH?.[mode.vessel] ?? 24)) / mode.vesselH) : Infinity,
    recipe.canner ? floor(day.cannerLoads) : Infinity,
  );
}

function loadChoices(
  p: PlanInstance,
  at: { recipe: PlanRecipe; mode: RecipeMode; day: number; greatestKg: number; pinned: boolean },
): { loads: number; kg: number }[] {
  const { recipe, mode, greatestKg } = at;
  if (!recipe.canner) return [{ loads: 0, kg: greatestKg }];
  const litres = p.jars.filter((j) => recipe.jars?.includes(j.id)).map((j) => j.perLoad * j.litres);
  const useful = Math.max(1, ceil((greatestKg * recipe.yieldPerKg) / Math.min(...litres)));
  const loads = Math.min(useful, at.pinned ? useful : floor(p.days[at.day]?.cannerLoads ?? 0));
  const kg = (q: number) => Math.min(greatestKg, (q * Math.max(...litres)) / recipe.yieldPerKg);
  return Array.from({ length: loads }, (_, i) => ({ loads: i + 1, kg: kg(i + 1) })).filter(
    (c) => at.pinned || c.kg >= mode.minKg - 1e-9,
  );
}
