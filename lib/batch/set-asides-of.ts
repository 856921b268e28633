/**
 * What is left over and worth keeping: fresh trim as a share of the fruit, and what it weighs dried. Trim of cull or
 * ground-fall fruit is never kept. A set-aside is never better than the worst fruit it came from.
 * Moistures: USDA SR26 and estimates of this project, dried to 8 % for milling (memory, sure).
 */

import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { type Figure, figure, input } from './figure.ts';
import { fitForFood } from './fit-for-food.ts';
import type { FruitLot } from './prepared-fruit.ts';

export interface SetAside {
  readonly material: string;
  readonly use: 'pectin' | 'zest' | 'compost' | 'second run';
  readonly freshG: Figure;
  /** Null for what is not dried. */
  readonly driedG: Figure | null;
  readonly ask: readonly string[];
}

const DRYING: Readonly<Record<string, readonly [from: number, to: number]>> = {
  'apple-peel-core': [0.82, 0.08],
  'apple-pomace': [0.74, 0.08],
  'citrus-rind': [0.725, 0.08],
};

export function setAsidesOf(recipe: Recipe, lots: readonly FruitLot[]): SetAside[] {
  const fit = fitForFood(lots);
  const fruitG = lots.filter((l) => !l.prepared).reduce((sum, l) => sum + l.grams, 0);
  return recipe.byProducts.map(({ material, share, use, seedsOutFirst }) => {
    const freshG = fruitG * share;
    const moisture = use === 'compost' ? undefined : DRYING[material];
    return {
      material,
      use: fit.ok ? use : 'compost',
      freshG: figure({
        value: freshG,
        unit: 'g',
        formula: 'share of the fruit as weighed; weigh your own',
        inputs: [input('fruit', fruitG, 'g'), input('share', 100 * share, '%')],
        source: 'USDA',
        status: 'estimate',
      }),
      driedG: moisture && fit.ok ? driedFigure(freshG, moisture) : null,
      ask: fit.ok ? questions(use, seedsOutFirst) : [fit.reason],
    };
  });
}

const driedFigure = (freshG: number, [from, to]: readonly [number, number]): Figure =>
  figure({
    value: driedMass({ freshG, w0: from, wt: to }),
    unit: 'g',
    formula: 'dry matter stays: weight × (1 - moisture now) / (1 - moisture wanted)',
    inputs: [input('fresh', freshG, 'g'), input('moisture now', 100 * from, '%'), input('wanted', 100 * to, '%')],
    source: 'USDA',
    status: 'estimate',
  });

function questions(use: SetAside['use'], seedsOut: boolean): string[] {
  if (use === 'compost') return [];
  const asked = ['Any ground-fall fruit or brown core in it? Then compost it all.'];
  if (seedsOut) asked.unshift('Seeds out before it is dried or ground?');
  if (use === 'zest') asked.push('Was the rind waxed or treated?');
  return asked;
}
