/** A storage question of the demo home kitchen (410 m = 1,345 ft) with everything in order, to be spoiled by a test. */
import type { StorageQuestion } from '#lib/batch/gate.ts';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';

export const GOOD_BUFFERS = [
  { nominal: 4.01, read: 4.02 },
  { nominal: 7, read: 6.98 },
] as const;

export function gateQuestion(recipeId: string, changes: Partial<StorageQuestion> = {}): StorageQuestion {
  const recipe = recipeOf(recipeId);
  return {
    recipe,
    fruit: recipe.fruits.map((p) => ({
      foodId: p.foodIds[0] as string,
      grams: Math.round(1000 * p.share.typ),
      grade: 'blemished',
    })),
    jar: { size: recipe.jarSizes[0] ?? 'half-pint', madeForCanning: true },
    altitudeFt: 1345,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
    ...changes,
  };
}
