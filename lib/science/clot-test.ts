/**
 * The alcohol test: 1 tsp of cooled juice in 1 tbsp of rubbing alcohol, looked at and thrown away, never tasted.
 * MSU Extension sheet 01600545 and an older USDA rule (read); the answer is sugar by volume, cup for cup.
 */
import { CLOT_TEST, type ClotRow } from '#lib/reference/pectin-sources.ts';

export type Clot = ClotRow['pectin'];

/** Cups of sugar a cup of this juice carries. */
export function sugarByClot(clot: Clot): number {
  const row = CLOT_TEST.find((r) => r.pectin === clot);
  if (!row) throw new RangeError(`"${clot}" is not a result of the alcohol test`);
  return row.sugarCupsPerCup;
}
