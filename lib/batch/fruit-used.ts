/** Fruit that goes into a batch, as the gate sees it. */
import type { FruitGrade } from '#lib/reference/fruit-grades.ts';

export interface FruitUsed {
  readonly foodId: string;
  /** Prepared weight, grams. */
  readonly grams: number;
  readonly grade: FruitGrade;
  readonly groundFall?: boolean;
}

/** Share of the prepared weight for each food, in the order of first use. */
export function foodShares(fruit: readonly FruitUsed[]): ReadonlyMap<string, number> {
  const total = fruit.reduce((sum, f) => sum + f.grams, 0);
  const shares = new Map<string, number>();
  for (const f of fruit) shares.set(f.foodId, (shares.get(f.foodId) ?? 0) + (total > 0 ? f.grams / total : 0));
  return shares;
}
