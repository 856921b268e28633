/**
 * Pectin a batch needs, in grams of grade 150: all sugar (the fruit's own included) / grade / gel factors. The grade is the
 * sugar a gram carries in a 65 % jelly at its best acidity (definition of Olsen, in Lowe; IFT 1959). One published dose came out 67 g
 * against 60 g; take it as ±40 %.
 */
import { acidityFactor, cookFactor, highestGellingPh, type PectinKind, solidsFactor } from './gel-factors.ts';

export const STANDARD_GRADE = 150;
const REL_SD = 0.4;

export type PectinNeed =
  | { readonly sets: true; readonly eq150G: number; readonly relSd: number }
  | { readonly sets: false; readonly reason: string };

/**
 * `solidsPct` at the finish, `boiledMin` after the sugar, `beforeSugarMin` before it. Answers "does not set" with the reason
 * where no amount of high-sugar pectin would do, and for LM pectin, whose dose is its maker's.
 */
export function pectinNeed(batch: {
  sugarTotalG: number;
  solidsPct: number;
  pH: number;
  boiledMin: number;
  beforeSugarMin?: number;
  kind: PectinKind;
}): PectinNeed {
  const { sugarTotalG, solidsPct, pH, boiledMin, beforeSugarMin = 0, kind } = batch;
  if (!(sugarTotalG >= 0)) throw new RangeError(`a mass is 0 g or more, got ${sugarTotalG}`);
  if (kind === 'LM')
    return { sets: false, reason: 'low-sugar pectin sets with calcium: follow the dose of its packet' };
  const bySolids = solidsFactor(solidsPct, kind);
  if (bySolids === 0)
    return { sets: false, reason: `at ${solidsPct} % solids fruit pectin does not set; it needs more than 50 %` };
  const byAcidity = acidityFactor({ pH, solidsPct });
  if (byAcidity === 0) {
    const most = highestGellingPh(solidsPct).toFixed(2);
    return { sets: false, reason: `pH ${pH} is too mild to set at ${solidsPct} % solids; it must be below ${most}` };
  }
  const factors = bySolids * byAcidity * cookFactor({ beforeSugarMin, afterSugarMin: boiledMin });
  return { sets: true, eq150G: sugarTotalG / STANDARD_GRADE / factors, relSd: REL_SD };
}
