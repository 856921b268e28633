/** What the freezer can become while there is time: lines that run short, from frozen packs that will not be missed. */

import type { RecipeKind } from '#lib/reference/recipes/recipe.ts';
import type { Place } from '#lib/store/place.ts';
import { recipeHere } from './recipes-here.ts';
import type { SeasonLine } from './season-lines.ts';
import type { ListedLine } from './season-listed.ts';
import type { ForecastInput } from './season-scenario.ts';

export interface FreezerBatch {
  id: string;
  from: string;
  /** Frozen packs on hand, used until the next harvest at this pace, and what that leaves. */
  packs: number;
  needed: number;
  spare: number;
  into: string;
  recipeId: string;
  batches: number;
  jars: number;
  takesPacks: number;
  sugarG: number;
  itemLabel: string;
}

/** Boiled or milled anyway: fruit that was frozen does for these. Not for whole fruit, not for drying. Common practice. */
const FROM_FROZEN: readonly RecipeKind[] = [
  'jam',
  'jelly',
  'conserve',
  'preserve',
  'butter',
  'sauce',
  'paste',
  'syrup',
];

/** Each frozen line to the short lines of its fruit, the one that lacks most first; whole batches, no more than are missing. */
export function fromFreezer(
  input: ForecastInput,
  place: Place,
  of: readonly SeasonLine[],
  listed: readonly ListedLine[],
): FreezerBatch[] {
  const products = input.scenario.products;
  return of.flatMap((line, i) => {
    const pack = listed[i] as ListedLine;
    const product = products[i] as (typeof products)[number];
    if (recipeOf(place, line)?.kind !== 'frozen' || !(product.kgPerJar > 0) || product.crop < 0) return [];
    const needed = Math.min(pack.onHand, Math.ceil(pack.used));
    let spare = pack.onHand - needed;
    return of
      .flatMap((short, j) => {
        const recipe = recipeOf(place, short);
        const s = listed[j] as ListedLine;
        const p = products[j] as (typeof products)[number];
        const missing = Math.ceil(s.used) - s.onHand;
        return recipe &&
          FROM_FROZEN.includes(recipe.kind) &&
          p.crop === product.crop &&
          s.standing === 'short' &&
          missing > 0
          ? [{ short, s, p, recipe, missing }]
          : [];
      })
      .sort((a, b) => b.missing - a.missing || (a.short.id < b.short.id ? -1 : 1))
      .flatMap(({ short, s, p, recipe, missing }): FreezerBatch[] => {
        const packsOf = (batches: number) =>
          Math.ceil((batches * s.jarsPerBatch * p.kgPerJar) / product.kgPerJar - 1e-9);
        let batches = Math.ceil(missing / s.jarsPerBatch);
        while (batches > 0 && packsOf(batches) > spare) batches--;
        if (batches === 0) return [];
        const takesPacks = packsOf(batches);
        const before = spare;
        spare -= takesPacks;
        return [
          {
            id: `${line.id} ${short.id}`,
            from: line.line,
            packs: pack.onHand,
            needed,
            spare: before,
            into: short.line,
            recipeId: recipe.id,
            batches,
            jars: batches * s.jarsPerBatch,
            takesPacks,
            sugarG: Math.round(batches * s.jarsPerBatch * p.sugarKgPerJar * 1000),
            itemLabel: s.itemLabel,
          },
        ];
      });
  });
}

const recipeOf = (place: Place, line: SeasonLine) => recipeHere(place, line.recipeId ?? '') ?? null;
