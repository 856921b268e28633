/** Faults in the data that no plan could repair; caught before the solver, which could only say "infeasible". */
import type { PlanInstance } from './instance.ts';

const repeated = (ids: readonly string[]): string[] => ids.filter((id, i) => ids.indexOf(id) !== i);

/** Sentences naming each fault; empty when the instance can be planned. */
export function instanceFaults(p: PlanInstance): string[] {
  return [...idFaults(p), ...fruitFaults(p), ...recipeFaults(p), ...dayFaults(p)];
}

function idFaults(p: PlanInstance): string[] {
  const lists = {
    crop: p.crops,
    lot: p.lots,
    recipe: p.recipes,
    product: p.products,
    jar: p.jars,
    material: p.materials,
    leftover: p.leftovers,
    outlet: p.outlets,
    vessel: p.vessels,
  };
  const has = (list: readonly { id: string }[], id: string) => list.some((x) => x.id === id);
  const materials = [
    ...p.jars.flatMap((j) => j.uses.map((u) => u.material)),
    ...p.leftovers.map((l) => l.becomes),
    ...[...p.pectinSources, ...p.acidSources].map((s) => s.material),
    ...p.recipes.flatMap((r) => (r.needs ?? []).map((n) => n.material)),
    ...(p.sugarMaterial === undefined ? [] : [p.sugarMaterial]),
  ];
  const crops = [
    ...p.lots.map((l) => l.crop),
    ...p.recipes.flatMap((r) => r.fruit.map((f) => f.crop)),
    ...p.outlets.map((o) => o.crop),
  ];
  const missing = (kind: string, list: readonly { id: string }[], ids: readonly string[]) =>
    [...new Set(ids)].filter((id) => !has(list, id)).map((id) => `${kind} "${id}" is used but not listed`);
  return [
    ...Object.entries(lists).flatMap(([kind, list]) =>
      repeated(list.map((x) => x.id)).map((id) => `${kind} "${id}" is listed twice`),
    ),
    ...missing('crop', p.crops, crops),
    ...missing('material', p.materials, materials),
    ...missing(
      'product',
      p.products,
      p.recipes.map((r) => r.product),
    ),
    ...missing(
      'jar',
      p.jars,
      p.recipes.flatMap((r) => r.jars ?? []),
    ),
    ...missing(
      'vessel',
      p.vessels,
      p.recipes.flatMap((r) => r.modes.map((m) => m.vessel)),
    ),
    ...missing(
      'leftover',
      p.leftovers,
      p.recipes.flatMap((r) => (r.leftovers ?? []).map((l) => l.leftover)),
    ),
    ...missing(
      'recipe',
      p.recipes,
      (p.pins ?? []).map((x) => x.recipe),
    ),
  ];
}

function fruitFaults(p: PlanInstance): string[] {
  return p.lots.flatMap((l) => [
    ...(l.kg >= 0 ? [] : [`lot "${l.id}" weighs ${l.kg} kg`]),
    ...(l.avail >= 0 && l.useBy >= l.avail ? [] : [`lot "${l.id}" may be used from day ${l.avail} to day ${l.useBy}`]),
    ...((l.lossPerDay ?? 0) >= 0 && (l.lossPerDay ?? 0) < 1
      ? []
      : [`lot "${l.id}" loses a share of ${l.lossPerDay} a day`]),
  ]);
}

function recipeFaults(p: PlanInstance): string[] {
  const recipes = p.recipes.flatMap((r) => [
    ...r.fruit
      .filter((f) => (f.minShare ?? 0) > (f.maxShare ?? 1))
      .map((f) => `recipe "${r.id}": least share of ${f.crop} above its greatest`),
    ...(r.fruit.reduce((n, f) => n + (f.minShare ?? 0), 0) > 1 + 1e-9
      ? [`recipe "${r.id}": least shares add up to more than 1`]
      : []),
    ...r.modes
      .filter((m) => m.minKg > m.maxKg)
      .map((m) => `recipe "${r.id}": least batch ${m.minKg} kg above greatest ${m.maxKg} kg`),
    ...(r.yieldPerKg > 0 ? [] : [`recipe "${r.id}" yields ${r.yieldPerKg} L per kg`]),
    ...(r.canner && !r.jars?.length ? [`recipe "${r.id}" needs the canner but names no jars`] : []),
    ...((r.sugar ?? 0) > 0 && p.sugarMaterial === undefined
      ? [`recipe "${r.id}" takes sugar but the instance names no sugar`]
      : []),
  ]);
  const products = p.products.flatMap((x) =>
    x.segments
      .filter((s, i) => s.value < 0 || s.value > (x.segments[i - 1]?.value ?? Infinity))
      .map(() => `product "${x.id}": its values must fall and stay at 0 or above`),
  );
  return [...recipes, ...products];
}

function dayFaults(p: PlanInstance): string[] {
  const people = p.days.flatMap((d, t) => {
    const sum = d.people?.reduce((n, x) => n + x.hours, 0);
    return sum === undefined || Math.abs(sum - d.active) < 1e-6
      ? []
      : [`day ${t}: people's hours add up to ${sum}, the day says ${d.active}`];
  });
  return [
    ...(p.days.length === p.horizon ? [] : [`${p.days.length} days given for a horizon of ${p.horizon}`]),
    ...people,
    ...p.storage
      .filter((s) => s.free.length !== p.horizon)
      .map((s) => `${s.place}: ${s.free.length} days of free room for a horizon of ${p.horizon}`),
    ...p.storage.flatMap((s) =>
      s.free.flatMap((f, t) => (f >= 0 ? [] : [`${s.place}, day ${t}: free room is ${f} L`])),
    ),
    ...p.products
      .filter((x) => !p.storage.some((s) => s.place === x.place))
      .map((x) => `product "${x.id}" has no room on the ${x.place}`),
  ];
}
