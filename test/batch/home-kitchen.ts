/** The demo home kitchen of the acceptance stories: 410 m, 10 L pan, two canners, jars of 236.6 ml. */
import type { BatchQuestion } from '#lib/batch/batch-question.ts';
import type { Canner } from '#lib/batch/canner-clock.ts';
import type { JarKind } from '#lib/batch/jar-fill.ts';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';

export const BIG_CANNER: Canner = {
  id: 'canner-22qt',
  method: 'boiling-water',
  jarsPerLoad: { 'half-pint': 12, pint: 9, quart: 7 },
  heatUpMin: 35,
  reheatMin: 12,
};
export const SMALL_CANNER: Canner = {
  id: 'canner-15qt',
  method: 'boiling-water',
  jarsPerLoad: { 'half-pint': 8, pint: 7, quart: 4 },
  heatUpMin: 25,
  reheatMin: 10,
};
export const HALF_PINT: JarKind = { size: 'half-pint', fillMl: 236.6, madeForCanning: true };
export const PINT: JarKind = { size: 'pint', fillMl: 473.2, madeForCanning: true };
export const QUART: JarKind = { size: 'quart', fillMl: 946.4, madeForCanning: true };
export const TEN_LITRE_PAN = { litres: 10, maxFill: 0.5, evapGPerMin: 45 } as const;

export const homeBatch = (
  recipeId: string,
  fruit: BatchQuestion['fruit'],
  changes: Partial<BatchQuestion> = {},
): BatchQuestion => ({
  recipe: recipeOf(recipeId),
  fruit,
  jar: HALF_PINT,
  kitchen: { altitudeFt: 1345, waterBoilsAtC: 98.6 },
  method: 'boiling-water',
  pan: TEN_LITRE_PAN,
  canners: [BIG_CANNER],
  settings: { lossG: 0, inversionGain: 0 },
  ...changes,
});
