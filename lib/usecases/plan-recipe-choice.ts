/** Which recipes of the book a plan may choose from: their fruit is there, and the gate lets them out by some way here. */
import { type StorageClass, storageClass } from '#lib/batch/gate.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { Kitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import type { Context } from './context.ts';
import { placeOf, planRecipe, type RecipePlan } from './plan-recipes.ts';
import { recipesHere } from './recipes-here.ts';

export interface Making {
  crops: readonly { id: string; foodId: string }[];
  kitchen: Kitchen;
  used: ReadonlyMap<string, number>;
  /** Recipes a person has asked for by name; they stay in whatever else is left out. */
  pinned: readonly string[];
  without: readonly string[];
}

/** Recipes whose fruit is there and which the gate lets out by some way, at this kitchen's altitude: the household's own lines first. */
export function recipesFor(ctx: Context, m: Making): RecipePlan[] {
  const uses = (r: Recipe) => m.used.get(r.id) ?? 0;
  const open = recipesHere(ctx.place)
    .filter((r) => !m.without.includes(r.id))
    .map((recipe) => ({ recipe, crops: cropsFor(recipe, m.crops, feet(m.kitchen.altitudeM)) }))
    .filter((x) => x.crops.length > 0);
  const alike = (a: Recipe, b: Recipe) => a.kind === b.kind && a.fruits[0]?.foodIds[0] === b.fruits[0]?.foodIds[0];
  return open
    .filter(
      (x) =>
        m.used.has(x.recipe.id) ||
        m.pinned.includes(x.recipe.id) ||
        !open.some((o) => m.used.has(o.recipe.id) && alike(o.recipe, x.recipe)),
    )
    .sort(
      (a, b) =>
        Number(m.pinned.includes(b.recipe.id)) - Number(m.pinned.includes(a.recipe.id)) ||
        uses(b.recipe) - uses(a.recipe),
    )
    .slice(0, MOST_RECIPES)
    .map((x) => planRecipe(x.recipe, x.crops, m.kitchen, ctx.place.jarKinds))
    .filter((r): r is RecipePlan => r !== null && r.recipe.fruit.length > 0);
}
/** So many recipes at most, the household's own lines first: a larger model is slower and says no more. */
const MOST_RECIPES = 36;

/** The crops a recipe may take here: its one needed fruit, each food asked of the gate by itself. None where it needs two. */
function cropsFor<C extends { foodId: string }>(recipe: Recipe, crops: readonly C[], altitudeFt: number): C[] {
  const needed = recipe.fruits.filter((p) => p.share.low > 0);
  if (needed.length !== 1) return [];
  return crops.filter((c) => needed[0]?.foodIds.includes(c.foodId) && mayBeMade(recipe, c.foodId, altitudeFt));
}

function mayBeMade(recipe: Recipe, foodId: string, altitudeFt: number): boolean {
  if (placeOf(recipe.kind) !== 'shelf') return true;
  if (!recipe.process || recipe.jarSizes.length === 0) return false;
  const verdict = verdictHere(recipe, foodId, altitudeFt, recipe.jarSizes[0] as JarSize);
  return verdict.process !== null && (verdict.shelf || verdict.needs.length > 0);
}

/** What the gate says of a recipe kept to as written, in a jar made for canning, at this altitude. */
export const verdictHere = (recipe: Recipe, foodId: string, altitudeFt: number, size: JarSize): StorageClass =>
  storageClass({
    recipe,
    fruit: [{ foodId, grams: 1000, grade: 'perfect', groundFall: false }],
    jar: { size, madeForCanning: true },
    altitudeFt,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
  });
