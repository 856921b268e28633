/** Puts one batch together: fruit, powders, sugar and jars for so many kg, or null when something is missing. */
import type { FruitUse, PlanJar, PlanRecipe, PlanSource } from '../instance.ts';
import { SOFT_PECTIN_FACTOR } from '../usable-fruit.ts';
import type { FruitOnHand, GreedyState } from './greedy-state.ts';

export interface FilledPan {
  kg: number;
  fruit: { from: FruitOnHand; use: FruitUse; kg: number }[];
  pectin: { material: string; amount: number }[];
  acid: { material: string; amount: number }[];
  jars: { jar: string; count: number }[];
  /** Every supply taken, jars and lids too. */
  supplies: Map<string, number>;
}

export interface Fill {
  recipe: PlanRecipe;
  day: number;
  kg: number;
  loads: number;
}

export function fillPan(s: GreedyState, at: Fill): FilledPan | null {
  const fruit = mixFruit(s, at);
  if (!fruit) return null;
  const supplies = new Map<string, number>();
  const take = (id: string, amount: number) => {
    const all = (supplies.get(id) ?? 0) + amount;
    if (all > s.available(id, at.day) + 1e-9) return false;
    supplies.set(id, all);
    return true;
  };
  if ((at.recipe.sugar ?? 0) > 0 && !take(s.p.sugarMaterial ?? '', at.kg * (at.recipe.sugar ?? 0))) return null;
  for (const n of at.recipe.needs ?? []) if (!take(n.material, n.perKg * at.kg)) return null;
  const own = (of: (id: string) => number, soft: number) =>
    fruit.reduce((n, f) => n + f.kg * of(f.use.crop) * (f.from.grade === 'soft' ? soft : 1), 0);
  const gel = topUp(s, at, {
    lacking: (at.recipe.pectin ?? 0) * at.kg - own((c) => s.crop(c)?.pectin ?? 0, SOFT_PECTIN_FACTOR),
    sources: pectinSources(s, at.recipe),
    taken: supplies,
  });
  if (!gel?.every((g) => take(g.material, g.amount))) return null;
  const sour = topUp(s, at, {
    lacking: (at.recipe.acid ?? 0) * at.kg - own((c) => s.crop(c)?.acid ?? 0, 1),
    sources: s.p.acidSources,
    taken: supplies,
  });
  if (!sour?.every((g) => take(g.material, g.amount))) return null;
  const jars = fillJars(s, at, supplies);
  return jars && { kg: at.kg, fruit, pectin: gel, acid: sour, jars, supplies };
}

/** Least shares first, then what perishes soonest, soft fruit and greatest shares within their limits. */
function mixFruit(s: GreedyState, at: Fill): FilledPan['fruit'] | null {
  const parts: FilledPan['fruit'] = [];
  const pools = at.recipe.fruit.map((use) => ({
    use,
    taken: 0,
    pool: s.onHand(use.crop, at.day).filter((f) => use.grades.includes(f.grade)),
  }));
  let soft = (at.recipe.softMax ?? 1) * at.kg;
  const takeFrom = (x: (typeof pools)[number], from: FruitOnHand, most: number): number => {
    const kg = Math.min(
      most,
      from.kg,
      (x.use.maxShare ?? 1) * at.kg - x.taken,
      from.grade === 'soft' ? soft : Infinity,
    );
    if (kg <= 1e-12) return 0;
    from.kg -= kg;
    x.taken += kg;
    if (from.grade === 'soft') soft -= kg;
    parts.push({ from, use: x.use, kg });
    return kg;
  };
  for (const x of pools) {
    let need = (x.use.minShare ?? 0) * at.kg;
    for (const from of x.pool) need -= takeFrom(x, from, need);
    if (need > 1e-9) return null;
  }
  let rest = at.kg - parts.reduce((n, x) => n + x.kg, 0);
  const all = pools
    .flatMap((x) => x.pool.map((from) => ({ x, from })))
    .sort((a, b) => a.from.lot.useBy - b.from.lot.useBy);
  for (const { x, from } of all) rest -= takeFrom(x, from, rest);
  return rest > 1e-9 * Math.max(1, at.kg) ? null : parts;
}

/** Home powders before bought ones: sources that cannot be bought come first, then the cheapest per g. */
function pectinSources(s: GreedyState, r: PlanRecipe): PlanSource[] {
  const price = (x: PlanSource) => (s.p.materials.find((m) => m.id === x.material)?.price ?? -1) / x.strength;
  return s.p.pectinSources
    .filter((x) => r.pectinSources?.includes(x.material) ?? true)
    .sort((a, b) => price(a) - price(b));
}

function topUp(
  s: GreedyState,
  at: Fill,
  want: { lacking: number; sources: readonly PlanSource[]; taken: Map<string, number> },
): { material: string; amount: number }[] | null {
  let lacking = want.lacking;
  const parts: { material: string; amount: number }[] = [];
  for (const x of want.sources) {
    const amount = Math.min(
      lacking / x.strength,
      (x.maxPerKg ?? Infinity) * at.kg,
      s.available(x.material, at.day) - (want.taken.get(x.material) ?? 0),
    );
    if (amount <= 1e-12) continue;
    lacking -= amount * x.strength;
    parts.push({ material: x.material, amount });
  }
  return lacking > 1e-9 ? null : parts;
}

/** Cheapest jars per litre first, as far as jars, lids and the batch's loads go. */
function fillJars(s: GreedyState, at: Fill, taken: Map<string, number>): FilledPan['jars'] | null {
  if (!at.recipe.jars?.length) return [];
  let litres = at.kg * at.recipe.yieldPerKg;
  let loads = at.recipe.canner ? at.loads : Infinity;
  const price = (j: PlanJar) =>
    j.uses.reduce((n, u) => n + u.each * (s.p.materials.find((m) => m.id === u.material)?.price ?? 0), 0) / j.litres;
  const sizes = s.p.jars.filter((j) => at.recipe.jars?.includes(j.id));
  const tight =
    at.recipe.canner !== undefined && litres > at.loads * Math.min(...sizes.map((j) => j.perLoad * j.litres)) + 1e-9;
  const order = [...sizes].sort((a, b) => (tight ? b.perLoad * b.litres - a.perLoad * a.litres : price(a) - price(b)));
  const jars: FilledPan['jars'] = [];
  for (const j of order) {
    const stock = Math.min(
      ...j.uses.map((u) => (s.available(u.material, at.day) - (taken.get(u.material) ?? 0)) / u.each),
    );
    const count = Math.min(litres / j.litres, loads * j.perLoad, stock);
    if (count <= 1e-12) continue;
    litres -= count * j.litres;
    loads -= count / j.perLoad;
    for (const u of j.uses) taken.set(u.material, (taken.get(u.material) ?? 0) + count * u.each);
    jars.push({ jar: j.id, count });
  }
  return litres > 1e-9 ? null : jars;
}
