/**
 * What is added, weighed out for this much fruit: per kg of the base (prepared fruit; juice in a jelly), rounded to the step
 * of the kitchen scale and only then used in the balance. A dose that keeps the food is rounded up and never lowered.
 */

import { type Allergen, type DoseItem, doseItem, HOME_PECTIN } from '#lib/reference/recipes/dose-items.ts';
import type { AcidDose, Dose, JarDose, PectinDose, Recipe } from '#lib/reference/recipes/recipe.ts';
import { type Figure, figure, input } from './figure.ts';

export interface MeasuredDose {
  readonly item: DoseItem;
  readonly name: string;
  readonly grams: Figure;
  readonly role: 'sugar' | 'water' | 'acid' | 'pectin' | 'other';
  readonly purpose: AcidDose['purpose'] | null;
  readonly afterFinish: boolean;
  readonly solublePct: number;
  readonly sweetener: boolean;
  readonly allergens: readonly Allergen[];
}

/** Amounts the cook set, grams for this one batch, by item. */
export type AskedAmounts = Readonly<Partial<Record<DoseItem, number>>>;

export function measuredDoses(recipe: Recipe, baseG: number, asked: AskedAmounts = {}): MeasuredDose[] {
  const acid = recipe.acid && isByWeight(recipe.acid) ? recipe.acid : null;
  return [
    ...one(recipe.sugar, 'sugar', baseG, asked),
    ...one(recipe.water, 'water', baseG, asked),
    ...one(acid, 'acid', baseG, asked),
    ...one(recipe.pectin, 'pectin', baseG, asked),
    ...besides(recipe, asked).flatMap((d) => one(d, 'pectin', baseG, asked)),
    ...recipe.others.flatMap((d) => one(d, 'other', baseG, asked)),
  ];
}

/** Home powder or stock the cook puts in beside the recipe's own pectin. */
const besides = ({ pectin }: Recipe, asked: AskedAmounts): Dose[] =>
  HOME_PECTIN.filter((item) => item !== pectin?.item && (asked[item] ?? 0) > 0).map((item) => ({ item, gPerKg: 0 }));

export const isByWeight = (acid: AcidDose | JarDose): acid is AcidDose => 'gPerKg' in acid;

function one(
  dose: Dose | AcidDose | PectinDose | null,
  role: MeasuredDose['role'],
  baseG: number,
  asked: AskedAmounts,
): MeasuredDose[] {
  if (!dose) return [];
  const row = doseItem(dose.item);
  const purpose = 'purpose' in dose ? dose.purpose : null;
  const exact = (dose.gPerKg * baseG) / 1000;
  const round = purpose === 'safety dose' ? Math.ceil : Math.round;
  const byRecipe = round(exact / row.stepG - (purpose === 'safety dose' ? 1e-9 : 0)) * row.stepG;
  const wanted = asked[dose.item];
  const grams = wanted === undefined ? byRecipe : purpose === 'safety dose' ? Math.max(wanted, byRecipe) : wanted;
  return [
    {
      item: dose.item,
      name: row.name,
      grams: figure({
        value: grams,
        unit: 'g',
        formula: wanted === undefined ? `amount per kg times the fruit, to the nearest ${row.stepG} g` : 'as asked',
        inputs: [input('per kg', dose.gPerKg, 'g'), input('fruit or juice', baseG, 'g')],
        source: row.source,
        status: row.status,
      }),
      role,
      purpose,
      afterFinish: dose.when === 'after the finish',
      solublePct: row.solublePct,
      sweetener: row.sweetener === true,
      allergens: row.allergens,
    },
  ];
}
