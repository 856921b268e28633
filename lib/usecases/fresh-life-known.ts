import { FRESH_LIFE } from '#lib/reference/fresh-life.ts';

const KNOWN = new Set<string>(FRESH_LIFE.flatMap((row) => [...row.foodIds]));
/** Whether a fresh life is published for a food; where none is, the program says so and guesses nothing. */
export const freshLifeKnown = (foodId: string): boolean => KNOWN.has(foodId);
