/** What a planned batch becomes, in words: minutes and canner, packs and their weight, and what frozen fruit is worth in January. */
import type { DaySchedule } from '#lib/plan/day-schedule.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { Kitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { counted, mass } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { verdictHere } from './plan-recipe-choice.ts';
import { DRIED_DENSITY, PACK_DENSITY, placeOf } from './plan-recipes.ts';
import { recipeHere } from './recipes-here.ts';

/** Packs of one weight are written with it; down to a twentieth less they are all filled alike, else the last one is small. */
const ALIKE = 0.95;

/** "8 packs of 475 g"; "7 packs of 500 g and one of 80 g". */
export function packsText(grams: number, packG: number): string {
  const packs = Math.ceil(grams / packG - 1e-9);
  const each = Math.round(grams / packs);
  if (each >= ALIKE * packG) return `${counted(packs, 'pack')} of ${each} g`;
  const rest = Math.round(grams - (packs - 1) * packG);
  return packs > 1 ? `${counted(packs - 1, 'pack')} of ${packG} g and one of ${rest} g` : `one pack of ${rest} g`;
}

export function madeText(recipe: Recipe, litres: number): string {
  const place = placeOf(recipe.kind);
  if (place === 'dry') return `about ${mass(litres * DRIED_DENSITY * 1000)} dried`;
  if (recipe.finish.by !== 'pack') return `about ${litres.toFixed(1)} L`;
  const grams = litres * PACK_DENSITY * 1000;
  return `about ${mass(grams)} prepared, ${packsText(grams, recipe.finish.packG)}, the weight written on each`;
}

/** "10 min in the small canner"; empty where nothing goes through one. */
export function processText(
  ctx: Context,
  q: { kitchen: Kitchen; recipe: Recipe; foodId: string; jar: string | undefined; steps: DaySchedule['steps'] },
): string {
  const size = ctx.place.jarKinds.find((k) => k.code === q.jar)?.size;
  if (placeOf(q.recipe.kind) !== 'shelf' || !size) return '';
  const minutes = verdictHere(q.recipe, q.foodId, feet(q.kitchen.altitudeM), size as JarSize).process?.minutes;
  const taken = q.steps.flatMap((s) => s.bookings.map((b) => b.resource));
  const canners = q.kitchen.canners.filter((_, i) => taken.includes(`canner ${i + 1}`)).map((c) => c.label);
  return minutes === undefined || canners.length === 0 ? '' : `Processed ${minutes} min: ${canners.join(' and ')}.`;
}

/** "Enough for about 19 half-pints of raspberry jam in winter."; empty for anything that is not plain frozen fruit. */
export function winterText(ctx: Context, p: PlanInstance, q: { recipe: string; kg: number }): string {
  if (recipeHere(ctx.place, q.recipe)?.kind !== 'frozen') return '';
  const crops = p.recipes.find((r) => r.id === q.recipe)?.fruit.map((f) => f.crop) ?? [];
  const jam = p.recipes.find(
    (r) => recipeHere(ctx.place, r.id)?.kind === 'jam' && crops.every((c) => r.fruit.some((f) => f.crop === c)),
  );
  const jar = p.jars.find((j) => j.id === jam?.jars?.[0]);
  const jars = jam && jar ? Math.round((q.kg * jam.yieldPerKg) / jar.litres) : 0;
  return jars > 0
    ? `Enough for about ${counted(jars, jar?.name ?? 'jar')} of ${(jam?.name ?? '').toLowerCase()} in winter.`
    : '';
}
