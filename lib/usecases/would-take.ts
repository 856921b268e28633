/** What it would take to place some fruit tonight: the household's usual preserve of it, its jars and its work, and the freezer. */

import { type Figure, figure, input } from '#lib/batch/figure.ts';
import type { Grade } from '#lib/ledger/lot.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { counted, duration } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { litresPerKg, placeOf } from './plan-recipes.ts';
import { recipesHere } from './recipes-here.ts';
import { type LabelledFigure, shown } from './shown-figure.ts';

export interface WouldTake {
  /** "about 12 half-pints of damson jam, 1 h 30 min of work; or 5 packs in the freezer". */
  says: string;
  figures: LabelledFigure[];
}

/** In this order of use: what most households make first of a soft fruit. Common practice. */
const KINDS: readonly Recipe['kind'][] = ['jam', 'jelly', 'butter', 'sauce', 'whole-fruit', 'juice', 'dried'];

/** Null when the book has nothing for it. */
export function wouldTake(ctx: Context, foodId: string, grade: Grade, grams: number): WouldTake | null {
  const fits = recipesHere(ctx.place).filter(
    (r) =>
      r.fruits[0]?.foodIds.includes(foodId) &&
      r.fruits.filter((p) => p.share.low > 0).length === 1 &&
      r.grades.some((g) => g === grade),
  );
  const cooked = KINDS.map((kind) => fits.find((r) => r.kind === kind)).find((r) => r !== undefined);
  const frozen = fits.find((r) => placeOf(r.kind) === 'freezer' && r.finish.by === 'pack');
  const parts = [
    cooked ? ofCooking(ctx, cooked, grams) : null,
    frozen && frozen.finish.by === 'pack' ? ofFreezing(frozen.finish.packG, grams) : null,
  ].filter((t) => t !== null);
  return parts.length > 0
    ? { says: parts.map((p) => p.says).join('; or '), figures: parts.flatMap((p) => p.figures) }
    : null;
}

function ofCooking(ctx: Context, recipe: Recipe, grams: number): WouldTake | null {
  const litres = litresPerKg(recipe);
  const jar = ctx.place.jarKinds.find((k) => k.size === recipe.jarSizes[0]);
  if (litres === null || !jar) return null;
  const kg = grams / 1000;
  const jars = figure({
    value: Math.floor((litres * kg) / (jar.fillMl / 1000)),
    unit: '',
    formula: 'fruit × litres a kilogram ÷ what a jar holds, whole jars',
    inputs: [
      input('fruit as weighed', kg, 'kg'),
      input(`litres of ${recipe.title.toLowerCase()} a kilogram, by the recipe`, litres, 'L'),
      input(`one ${jar.label} holds`, jar.fillMl, 'mL'),
    ],
  });
  if (jars.value < 1) return null;
  const { activeFixedH, activeHPerKg, status } = recipe.work;
  const minutes = figure({
    value: (activeFixedH + activeHPerKg * kg) * 60,
    unit: 'min',
    formula: 'minutes for any batch + minutes a kilogram × fruit',
    inputs: [
      input('for any batch', activeFixedH * 60, 'min'),
      input('a kilogram', activeHPerKg * 60, 'min'),
      input('fruit as weighed', kg, 'kg'),
    ],
    source: 'ESTIMATE',
    status,
  });
  return {
    says: `about ${counted(jars.value, jar.label)} of ${recipe.title.toLowerCase()}, ${duration(Math.round(minutes.value / 5) * 5)} of work`,
    figures: labelled([
      [`${jar.label}s of ${recipe.title.toLowerCase()}`, jars],
      ['Work', minutes],
    ]),
  };
}

function ofFreezing(packG: number, grams: number): WouldTake | null {
  if (grams < packG) return null;
  const packs = figure({
    value: Math.floor(grams / packG),
    unit: '',
    formula: 'fruit ÷ what a pack holds, whole packs',
    inputs: [input('fruit as weighed', grams / 1000, 'kg'), input('one pack', packG, 'g')],
  });
  return { says: `${counted(packs.value, 'pack')} in the freezer`, figures: labelled([['Packs', packs]]) };
}

const labelled = (figures: readonly [string, Figure][]): LabelledFigure[] =>
  figures.map(([label, f]) => ({ label, figure: shown(f) }));
