/** What the cook says about a batch before it is lit: recipe, what was weighed, and what they set themselves. */
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { OwnAcid, OwnPectin } from '#lib/reference/recipes/own-recipe.ts';
import type { Measure } from '#lib/units/measure.ts';

export interface BatchAsk {
  recipeId: string;
  /** Grams as weighed from each lot. */
  draws: { lotId: string; grams: number }[];
  kitchenId: string | null;
  panCode: string | null;
  jarKind: string | null;
  method: 'boiling-water' | 'steam';
  /** Trim weighed off all of it together, grams; the table's share when null. */
  trimG: number | null;
  /** Refractometer reading of the fruit. */
  brix: number | null;
  /** Today's boiling water, °C; the day's reading or the altitude when null. */
  waterC: number | null;
  batches: number | null;
  /** Grams in each batch, where the cook sets them. */
  amounts: Partial<Record<DoseItem, number>>;
  /** Another pectin or acid than the recipe's own; how much of it stands in the measures. */
  exchange?: { pectin?: OwnPectin | 'none'; acid?: OwnAcid | 'none' };
  /** Where a soft set is to be expected: the cook goes on, or calls it a sauce. */
  softSet?: 'accept' | 'sauce';
  /** In each batch, as typed by scale, cup or spoon; weighed by the recipe's own sugar, pectin and acid. */
  measures?: { sugar?: Measure; pectin?: Measure; acid?: Measure };
}
