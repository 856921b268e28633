/** The pan: mix, shares, soft fruit, pectin, acid, batch sizes, jars, leftovers, recipe by recipe and day by day. */
import type { PlanInstance, PlanRecipe, PlanSource } from '../instance.ts';
import { batchCount, type CookedBatches, loadCount, type Plan } from '../plan.ts';
import { modeOf, recipeOf } from '../plan-tally.ts';
import { SOFT_PECTIN_FACTOR } from '../usable-fruit.ts';
import { above, type Breach, below, forbidden, totals, unequal } from './breach.ts';

interface PanDay {
  p: PlanInstance;
  recipe: PlanRecipe;
  day: number;
  kg: number;
  fruit: Plan['fruit'];
  cooked: readonly CookedBatches[];
  pectin: Plan['pectin'];
  acid: Plan['acid'];
  jars: Plan['jars'];
  tail: number;
}

export function panBreaches(p: PlanInstance, plan: Plan): Breach[] {
  const named = [...plan.fruit, ...plan.cooked, ...plan.pectin, ...plan.acid, ...plan.jars, ...plan.tails];
  const keys = new Map(named.map((x) => [`${x.day}|${x.recipe}`, { day: x.day, id: x.recipe }]));
  const pans = [...keys.values()].flatMap(({ day, id }) => {
    const recipe = recipeOf(p, id);
    if (!recipe || !p.days[day]) return forbidden({ rule: 'recipe', ids: [id], day }, 1);
    const here = <T extends { recipe: string; day: number }>(list: readonly T[]) =>
      list.filter((x) => x.recipe === id && x.day === day);
    const cooked = here(plan.cooked);
    const pan: PanDay = {
      p,
      recipe,
      day,
      cooked,
      kg: cooked.reduce((n, c) => n + c.kg, 0),
      fruit: here(plan.fruit),
      pectin: here(plan.pectin),
      acid: here(plan.acid),
      jars: here(plan.jars),
      tail: here(plan.tails).reduce((n, x) => n + x.litres, 0),
    };
    return [...mixBreaches(pan), ...gelBreaches(pan), ...batchBreaches(pan), ...jarBreaches(pan)];
  });
  return [...pans, ...leftoverBreaches(p, plan)];
}

const kgOf = (list: Plan['fruit']) => list.reduce((n, f) => n + f.kg, 0);

function mixBreaches(x: PanDay): Breach[] {
  const at = (rule: string, ...more: string[]) => ({ rule, ids: [x.recipe.id, ...more], day: x.day });
  return [
    ...unequal(at('mix'), kgOf(x.fruit), x.kg),
    ...x.recipe.fruit.flatMap((u) => {
      const part = kgOf(x.fruit.filter((f) => f.crop === u.crop));
      return [
        ...below(at('least share', u.crop), part, (u.minShare ?? 0) * x.kg),
        ...above(at('greatest share', u.crop), part, (u.maxShare ?? 1) * x.kg),
      ];
    }),
    ...x.fruit
      .filter((f) => !x.recipe.fruit.some((u) => u.crop === f.crop && u.grades.includes(f.grade)))
      .flatMap((f) => forbidden(at('mix', f.crop, f.grade), f.kg)),
    ...above(at('soft'), kgOf(x.fruit.filter((f) => f.grade === 'soft')), (x.recipe.softMax ?? 1) * x.kg),
  ];
}

function gelBreaches(x: PanDay): Breach[] {
  const at = (rule: string, ...more: string[]) => ({ rule, ids: [x.recipe.id, ...more], day: x.day });
  const crop = (id: string) => x.p.crops.find((c) => c.id === id);
  const bySource = (list: Plan['pectin'], sources: readonly PlanSource[], rule: string) =>
    list.flatMap((s) => {
      const source = sources.find((y) => y.material === s.material);
      return source
        ? above(at(`${rule} limit`, s.material), s.amount, (source.maxPerKg ?? Infinity) * x.kg)
        : forbidden(at(rule, s.material), s.amount);
    });
  const active = (list: Plan['pectin'], sources: readonly PlanSource[]) =>
    list.reduce((n, s) => n + s.amount * (sources.find((y) => y.material === s.material)?.strength ?? 0), 0);
  const pectin =
    x.fruit.reduce(
      (n, f) => n + f.kg * (crop(f.crop)?.pectin ?? 0) * (f.grade === 'soft' ? SOFT_PECTIN_FACTOR : 1),
      0,
    ) + active(x.pectin, x.p.pectinSources);
  const acid = x.fruit.reduce((n, f) => n + f.kg * (crop(f.crop)?.acid ?? 0), 0) + active(x.acid, x.p.acidSources);
  return [
    ...below(at('pectin'), pectin, (x.recipe.pectin ?? 0) * x.kg),
    ...below(at('acid'), acid, (x.recipe.acid ?? 0) * x.kg),
    ...bySource(x.pectin, x.p.pectinSources, 'pectin'),
    ...bySource(x.acid, x.p.acidSources, 'acid'),
    ...x.pectin
      .filter((s) => x.recipe.pectinSources && !x.recipe.pectinSources.includes(s.material))
      .flatMap((s) => forbidden(at('pectin', s.material), s.amount)),
  ];
}

function batchBreaches(x: PanDay): Breach[] {
  const roomiest = Math.max(
    0,
    ...x.p.jars.filter((j) => x.recipe.jars?.includes(j.id)).map((j) => j.perLoad * j.litres),
  );
  const lines = x.cooked.flatMap((c) => {
    const at = (rule: string) => ({ rule, ids: [c.recipe, c.mode], day: c.day });
    const mode = modeOf(x.recipe, c.mode);
    if (!mode) return forbidden(at('recipe'), c.kg);
    const room = c.batches.reduce(
      (n, b) =>
        n + b.count * (x.recipe.canner ? Math.min(mode.maxKg, (b.loads * roomiest) / x.recipe.yieldPerKg) : mode.maxKg),
      0,
    );
    return [
      ...above(at('greatest batch'), c.kg, room),
      ...below(at('least batch'), c.kg, batchCount(c) * mode.minKg, true),
      ...c.batches.filter((b) => !Number.isInteger(b.count)).flatMap((b) => forbidden(at('whole batches'), b.count)),
      ...c.batches
        .filter((b) => b.count > 0 && (x.recipe.canner ? !(b.loads >= 1 && Number.isInteger(b.loads)) : b.loads !== 0))
        .flatMap((b) => forbidden(at('load'), b.loads)),
    ];
  });
  const count = x.cooked.reduce((n, c) => n + batchCount(c), 0);
  const pinned = (x.p.pins ?? [])
    .filter((p) => p.recipe === x.recipe.id && p.day === x.day)
    .reduce((n, p) => n + p.batches, 0);
  return [
    ...lines,
    ...above({ rule: 'count', ids: [x.recipe.id], day: x.day }, count, Math.max(x.recipe.maxBatchesPerDay, pinned)),
  ];
}

function jarBreaches(x: PanDay): Breach[] {
  const at = (rule: string, ...more: string[]) => ({ rule, ids: [x.recipe.id, ...more], day: x.day });
  const size = (id: string) => x.p.jars.find((j) => j.id === id);
  const foreign = x.jars
    .filter((j) => !x.recipe.jars?.includes(j.jar))
    .flatMap((j) => forbidden(at('jar', j.jar), j.count));
  if (!x.recipe.jars?.length) return foreign;
  const smallest = Math.min(...x.recipe.jars.map((id) => size(id)?.litres ?? Infinity));
  const litres = x.jars.reduce((n, j) => n + j.count * (size(j.jar)?.litres ?? 0), 0);
  const loads = x.jars.reduce((n, j) => n + j.count / (size(j.jar)?.perLoad ?? 1), 0);
  return [
    ...foreign,
    ...unequal(at('jar'), litres + x.tail, x.recipe.yieldPerKg * x.kg),
    ...above(at('tail'), x.tail, smallest),
    ...(x.recipe.canner
      ? above(
          at('load'),
          loads,
          x.cooked.reduce((n, c) => n + loadCount(c), 0),
        )
      : []),
  ];
}

function leftoverBreaches(p: PlanInstance, plan: Plan): Breach[] {
  const dried = totals(
    plan.dried,
    (d) => `${d.day}|${d.leftover}`,
    (d) => d.kg,
  );
  return [...dried].flatMap(([key, kg]) => {
    const [day, id] = [Number(key.slice(0, key.indexOf('|'))), key.slice(key.indexOf('|') + 1)];
    const fresh = plan.fruit
      .filter((f) => f.day === day)
      .reduce((n, f) => {
        const each = (recipeOf(p, f.recipe)?.leftovers ?? [])
          .filter((l) => l.leftover === id && l.crop === f.crop)
          .reduce((m, l) => m + l.kgPerKg, 0);
        return n + f.kg * each;
      }, 0);
    return above({ rule: 'leftover', ids: [id], day }, kg, fresh);
  });
}
