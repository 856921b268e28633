/**
 * A plan in trade terms: what is drawn, cooked, filled, dried, bought. Everything else (stocks, hours, room, worth)
 * follows from it and the instance, see `plan-tally.ts`. Amounts of 0 are left out.
 */
import type { FruitGrade } from './instance.ts';

export interface CookedBatches {
  recipe: string;
  mode: string;
  day: number;
  /** kg of fruit, all batches of this line together. */
  kg: number;
  /** Whole batches by the number of canner loads each takes (0 when the recipe needs no canner). */
  batches: readonly { loads: number; count: number }[];
}

export interface Plan {
  draws: readonly { lot: string; day: number; kg: number }[];
  wasted: readonly { lot: string; kg: number }[];
  carried: readonly { lot: string; kg: number }[];
  outlets: readonly { outlet: string; grade: FruitGrade; day: number; kg: number }[];
  fruit: readonly { recipe: string; crop: string; grade: FruitGrade; day: number; kg: number }[];
  cooked: readonly CookedBatches[];
  pectin: readonly { recipe: string; material: string; day: number; amount: number }[];
  acid: readonly { recipe: string; material: string; day: number; amount: number }[];
  jars: readonly { recipe: string; jar: string; day: number; count: number }[];
  /** Litres below one smallest jar, for the table. */
  tails: readonly { recipe: string; day: number; litres: number }[];
  dried: readonly { leftover: string; day: number; kg: number }[];
  bought: readonly { material: string; day: number; amount: number }[];
}

/** Whole batches of one line. */
export const batchCount = (c: CookedBatches): number => c.batches.reduce((n, b) => n + b.count, 0);

/** Canner loads of one line. */
export const loadCount = (c: CookedBatches): number => c.batches.reduce((n, b) => n + b.count * b.loads, 0);
