/**
 * What a plan uses of everything, added up from the data and the plan alone; the solver's matrix is not looked at.
 * Arrays have one figure per day of the horizon.
 */
import type { PlanInstance, PlanRecipe, RecipeMode } from './instance.ts';
import { batchCount, type CookedBatches, loadCount, type Plan } from './plan.ts';

export interface PlanTally {
  handHours: number[];
  burnerHours: number[];
  cannerLoads: number[];
  vesselHours: Map<string, number[]>;
  trayM2: number[];
  frozenKg: number[];
  /** Used, left at the end of the day, and lacking, by material. */
  used: Map<string, number[]>;
  stock: Map<string, number[]>;
  lack: Map<string, number[]>;
  /** Powder still on the trays when the plan ends, by material. */
  latePowder: Map<string, number>;
  filledLitres: Map<string, number[]>;
  /** Litres in the pantry and batches, by product. */
  litres: Map<string, number>;
  batches: Map<string, number>;
  /** kg below the least batches. */
  underfillKg: number;
}

export function planTally(p: PlanInstance, plan: Plan): PlanTally {
  const days = () => p.days.map(() => 0);
  const perId = (list: readonly { id: string }[]) => new Map(list.map((x) => [x.id, days()]));
  const tally: PlanTally = {
    handHours: days(),
    burnerHours: days(),
    cannerLoads: days(),
    vesselHours: perId(p.vessels),
    trayM2: days(),
    frozenKg: days(),
    used: perId(p.materials),
    stock: perId(p.materials),
    lack: perId(p.materials),
    latePowder: new Map(),
    filledLitres: new Map(p.storage.map((s) => [s.place, days()])),
    litres: new Map(),
    batches: new Map(),
    underfillKg: 0,
  };
  for (const c of plan.cooked) tallyBatches(p, c, tally);
  tallySetUps(p, plan, tally);
  tallySupplies(p, plan, tally);
  tallyPantry(p, plan, tally);
  return tally;
}

const bump = (list: number[] | undefined, day: number, amount: number) => {
  if (list && day >= 0 && day < list.length) list[day] = (list[day] as number) + amount;
};
const bumpId = (map: Map<string, number>, id: string, amount: number) => map.set(id, (map.get(id) ?? 0) + amount);

export const recipeOf = (p: PlanInstance, id: string): PlanRecipe | undefined => p.recipes.find((r) => r.id === id);
export const modeOf = (r: PlanRecipe | undefined, id: string): RecipeMode | undefined =>
  r?.modes.find((m) => m.id === id);

function tallyBatches(p: PlanInstance, c: CookedBatches, t: PlanTally): void {
  const recipe = recipeOf(p, c.recipe);
  const mode = modeOf(recipe, c.mode);
  if (!recipe || !mode) return;
  const n = batchCount(c);
  const q = recipe.canner ? loadCount(c) : 0;
  bump(t.handHours, c.day, n * mode.activeH + c.kg * (mode.activePerKg ?? 0) + q * (recipe.canner?.activeH ?? 0));
  bump(t.burnerHours, c.day, n * mode.burnerH + c.kg * (mode.burnerPerKg ?? 0) + q * (recipe.canner?.burnerH ?? 0));
  bump(t.cannerLoads, c.day, q);
  bump(t.vesselHours.get(mode.vessel), c.day, n * mode.vesselH);
  bump(t.frozenKg, c.day, c.kg * (recipe.freezeKgPerKg ?? 0));
  for (let d = 0; recipe.dryer && d < Math.max(1, recipe.dryer.days); d++)
    bump(t.trayM2, c.day + d, c.kg * recipe.dryer.m2PerKg);
  bump(t.used.get(p.sugarMaterial ?? ''), c.day, c.kg * (recipe.sugar ?? 0));
  for (const need of recipe.needs ?? []) bump(t.used.get(need.material), c.day, c.kg * need.perKg);
  bumpId(t.batches, recipe.product, n);
  t.underfillKg += Math.max(0, n * mode.minKg - c.kg);
}

function tallySetUps(p: PlanInstance, plan: Plan, t: PlanTally): void {
  const days = new Set(plan.cooked.filter((c) => batchCount(c) > 0).map((c) => `${c.day} ${c.recipe}`));
  for (const r of p.recipes)
    p.days.forEach((_, day) => {
      if (days.has(`${day} ${r.id}`)) bump(t.handHours, day, r.setupH ?? 0);
    });
}

function tallySupplies(p: PlanInstance, plan: Plan, t: PlanTally): void {
  for (const x of [...plan.pectin, ...plan.acid]) bump(t.used.get(x.material), x.day, x.amount);
  for (const j of plan.jars)
    for (const u of p.jars.find((z) => z.id === j.jar)?.uses ?? [])
      bump(t.used.get(u.material), j.day, u.each * j.count);
  const coming = new Map(p.materials.map((m) => [m.id, p.days.map(() => 0)]));
  for (const d of plan.dried) {
    const b = p.leftovers.find((x) => x.id === d.leftover);
    if (!b) continue;
    for (let i = 0; i < Math.max(1, b.dryDays); i++) bump(t.trayM2, d.day + i, d.kg * b.m2PerKg);
    if (d.day + b.dryDays < p.horizon) bump(coming.get(b.becomes), d.day + b.dryDays, d.kg * b.dryYield);
    else bumpId(t.latePowder, b.becomes, d.kg * b.dryYield);
  }
  for (const b of plan.bought) bump(coming.get(b.material), b.day, b.amount);
  for (const m of p.materials) {
    for (const a of m.arrivals ?? []) bump(coming.get(m.id), a.day, a.amount);
    let stock = m.stock;
    p.days.forEach((_, day) => {
      const after = stock + (coming.get(m.id)?.[day] ?? 0) - (t.used.get(m.id)?.[day] ?? 0);
      bump(t.lack.get(m.id), day, Math.max(0, -after));
      stock = Math.max(0, after);
      bump(t.stock.get(m.id), day, stock);
    });
  }
}

function tallyPantry(p: PlanInstance, plan: Plan, t: PlanTally): void {
  const put = (recipe: PlanRecipe, day: number, litres: number, room: number) => {
    bumpId(t.litres, recipe.product, litres);
    const filled = t.filledLitres.get(p.products.find((x) => x.id === recipe.product)?.place ?? '');
    for (let d = day; filled && d < p.horizon; d++) bump(filled, d, room);
  };
  for (const c of plan.cooked) {
    const recipe = recipeOf(p, c.recipe);
    if (recipe && !recipe.jars?.length) put(recipe, c.day, c.kg * recipe.yieldPerKg, c.kg * recipe.yieldPerKg);
  }
  for (const j of plan.jars) {
    const recipe = recipeOf(p, j.recipe);
    const size = p.jars.find((z) => z.id === j.jar);
    if (recipe && size) put(recipe, j.day, j.count * size.litres, j.count * (size.storeLitres ?? size.litres));
  }
}
