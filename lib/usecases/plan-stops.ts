/** What stops a recipe before any plan is made: no fruit, the gate, nothing to cook it in, no day, nothing to fill. */
import type { PlanInstance, PlanRecipe } from '#lib/plan/instance.ts';
import { fruitThere, kitchenSlots } from '#lib/plan/kitchen-slots.ts';
import { ALL_TIGHTENINGS } from '#lib/plan/tightenings.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { Kitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import type { Context } from './context.ts';
import { verdictHere } from './plan-recipe-choice.ts';
import { placeOf, planRecipe } from './plan-recipes.ts';

/** Asked in this order; the first that stops it is the answer. Empty: nothing stops it outright. */
export function stopsBefore(ctx: Context, q: { recipe: Recipe; kitchen: Kitchen; instance: PlanInstance }): string[] {
  const { recipe, kitchen, instance } = q;
  const waiting = ctx.place.crops.filter((c) => instance.lots.some((l) => l.crop === c.id));
  const crops = waiting.filter((c) => recipe.fruits.some((f) => f.foodIds.includes(c.foodId)));
  if (crops.length === 0) {
    const foods = [...new Set(recipe.fruits.flatMap((f) => f.foodIds))].map((id) => fruitOf(id).name.toLowerCase());
    return [`No ${foods.join(' or ')} is in the store or expected in these two weeks.`];
  }
  if (recipe.fruits.filter((f) => f.share.low > 0).length > 1)
    return ['It takes several fruits together; the plan makes recipes of one. Weigh for it under Batches.'];
  const refused = crops.map((c) => gateStops(recipe, c.foodId, feet(kitchen.altitudeM)));
  if (refused.every((r) => r.length > 0)) return [...new Set(refused.flat())];
  if (!planRecipe(recipe, crops, kitchen, ctx.place.jarKinds))
    return [
      `Nothing here to make it in: it asks for a pan with room for jam and jars for canning of ${recipe.jarSizes.join(', ')}.`,
    ];
  const planned = instance.recipes.find((r) => r.id === recipe.id);
  return planned ? dayStops(instance, planned) : [];
}

function gateStops(recipe: Recipe, foodId: string, altitudeFt: number): string[] {
  if (placeOf(recipe.kind) !== 'shelf') return [];
  if (!recipe.process || recipe.jarSizes.length === 0)
    return ['No published process covers it: it does not go on the shelf.'];
  const verdict = verdictHere(recipe, foodId, altitudeFt, recipe.jarSizes[0] as JarSize);
  return verdict.process !== null && (verdict.shelf || verdict.needs.length > 0)
    ? []
    : verdict.reasons.length > 0
      ? [...verdict.reasons]
      : ['The gate does not let it out here.'];
}

function dayStops(p: PlanInstance, recipe: PlanRecipe): string[] {
  const one = { ...p, recipes: [recipe] };
  if (kitchenSlots(one, { tightenings: ALL_TIGHTENINGS, pinned: () => 0 }).length > 0) return supplyStops(p, recipe);
  const least = Math.min(...recipe.modes.map((m) => m.minKg));
  const most = Math.max(...p.days.map((_, day) => fruitThere(p, recipe, day)));
  const hours = Math.min(...recipe.modes.map((m) => (recipe.setupH ?? 0) + m.activeH + m.minKg * (m.activePerKg ?? 0)));
  return most < least
    ? [
        `The least batch takes ${least.toFixed(2)} kg; at most ${most.toFixed(2)} kg of fruit it may take is there on any day.`,
      ]
    : [
        `No day has both the fruit and the kitchen: the least batch takes ${hours.toFixed(1)} h, a free pan and, where it is canned, a canner load.`,
      ];
}

/** What the least batch takes of each supply that cannot be bought, against all there is. */
function supplyStops(p: PlanInstance, recipe: PlanRecipe): string[] {
  const kg = Math.min(...recipe.modes.map((m) => m.minKg));
  const jar = p.jars.find((j) => j.id === recipe.jars?.[0]);
  const jars = jar ? Math.floor((kg * recipe.yieldPerKg) / jar.litres + 1e-6) : 0;
  const wanted = [
    ...(p.sugarMaterial && recipe.sugar ? [{ id: p.sugarMaterial, amount: kg * recipe.sugar }] : []),
    ...(recipe.needs ?? []).map((n) => ({ id: n.material, amount: kg * n.perKg })),
    ...(jar?.uses ?? []).map((u) => ({ id: u.material, amount: jars * u.each })),
  ];
  return wanted.flatMap(({ id, amount }) => {
    const m = p.materials.find((x) => x.id === id);
    const buyable = m?.price !== undefined && (m.shopDays?.length ?? 1) > 0;
    return !m || buyable || m.stock >= amount - 1e-6
      ? []
      : [`${m.name ?? id}: ${Number(amount.toFixed(2))} for the least batch, ${Number(m.stock.toFixed(2))} there.`];
  });
}
