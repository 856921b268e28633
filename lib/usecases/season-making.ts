/** What one more batch of a line takes and gives: from the place's own batches, else from the recipe book, else unknown. */

import type { Recipe, RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { litresPerKg } from './plan-recipes.ts';
import type { MadeBatch, SeasonLine } from './season-lines.ts';
import type { FruitPool } from './season-pools.ts';

export interface LineMaking {
  /** Position of its pool of fruit; -1 where nothing is known of what it is made from. */
  pool: number;
  kgPerJar: number;
  sugarKgPerJar: number;
  jarsPerBatch: number;
  hoursPerBatch: number;
  /** Worth of a jar that is used, in the same unit as an hour at 0.5. The household's taste; starting figures. */
  value: number;
  basis: string;
}

/** Worth of a jar by kind of preserve, and of a jar nobody wanted, and of an hour. Estimate; tried on a toy holding. */
const VALUE: Partial<Record<RecipeKind, number>> = {
  paste: 5,
  syrup: 4.5,
  conserve: 4.5,
  'whole-fruit': 4.5,
  'pie-filling': 4.5,
  jam: 4,
  jelly: 4,
  butter: 4,
  marmalade: 4,
  preserve: 4,
  sauce: 3,
  puree: 3,
  leather: 3,
  dried: 3,
  juice: 2.5,
  frozen: 2.5,
  'freezer-jam': 2.5,
  'fridge-jam': 2.5,
};
const OTHER_VALUE = 3;
export const WASTE_VALUE = 1;
export const HOUR_VALUE = 0.5;

/** Where no recipe gives hours. Estimate. */
const HOURS = { jars: 2, 'cold-jars': 2, frozen: 1, dried: 1 } as const;
const SETUP_H = 0.3;
/** Where no batch of the line is on record. Estimate: the ordinary small batch. */
const BOOK_BATCH_JARS = 7;

const NOTHING = { pool: -1, kgPerJar: 0, sugarKgPerJar: 0, jarsPerBatch: 1, hoursPerBatch: 0 };

export function lineMaking(
  line: SeasonLine,
  recipe: Recipe | null,
  pools: readonly FruitPool[],
  fillMl: number,
): LineMaking {
  const value = recipe ? (VALUE[recipe.kind] ?? OTHER_VALUE) : OTHER_VALUE;
  const own = fromBatches(line, pools, recipe);
  if (own) return { ...own, value };
  const book = recipe ? fromBook(line, recipe, pools, fillMl) : null;
  return book ? { ...book, value } : { ...NOTHING, value, basis: 'no batch of it is on record, so none is expected' };
}

const hoursOf = (line: SeasonLine, recipe: Recipe | null, kg: number): number =>
  recipe ? SETUP_H + recipe.work.activeFixedH + recipe.work.activeHPerKg * kg : HOURS[line.kind];

function fromBatches(
  line: SeasonLine,
  pools: readonly FruitPool[],
  recipe: Recipe | null,
): Omit<LineMaking, 'value'> | null {
  const jars = line.batches.reduce((n, b) => n + b.jars, 0);
  if (jars === 0) return null;
  const by = new Map<string, number>();
  for (const b of line.batches) for (const [food, g] of b.fruitBy) by.set(food, (by.get(food) ?? 0) + g);
  const main = [...by.entries()].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))[0]?.[0];
  const pool = pools.findIndex((p) => p.id === main);
  const sum = (of: (b: MadeBatch) => number) => line.batches.reduce((n, b) => n + of(b), 0);
  const kgPerJar = sum((b) => b.fruitG) / jars / 1000;
  const sizes = line.batches.map((b) => b.jars).sort((a, b) => a - b);
  const jarsPerBatch = sizes[Math.floor((sizes.length - 1) / 2)] as number;
  return {
    pool,
    kgPerJar,
    sugarKgPerJar: sum((b) => b.sugarG) / jars / 1000,
    jarsPerBatch,
    hoursPerBatch: hoursOf(line, recipe, kgPerJar * jarsPerBatch),
    basis: `${line.batches.length} batches of the last year, ${jars} made`,
  };
}

function fromBook(
  line: SeasonLine,
  recipe: Recipe,
  pools: readonly FruitPool[],
  fillMl: number,
): Omit<LineMaking, 'value'> | null {
  const foods = recipe.fruits[0]?.foodIds ?? [];
  const own = pools.findIndex((p) => p.foodId === line.foodId && foods.includes(p.foodId));
  const pool = own >= 0 ? own : pools.findIndex((p) => foods.includes(p.foodId));
  const perKg = litresPerKg(recipe);
  if (pool < 0 || !perKg) return null;
  const kgPerJar = fillMl / 1000 / perKg;
  return {
    pool,
    kgPerJar,
    sugarKgPerJar: ((recipe.sugar?.gPerKg ?? 0) / 1000) * kgPerJar,
    jarsPerBatch: BOOK_BATCH_JARS,
    hoursPerBatch: hoursOf(line, recipe, kgPerJar * BOOK_BATCH_JARS),
    basis: 'the recipe book: no batch of it is on record yet',
  };
}
