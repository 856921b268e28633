/**
 * How damp dried food may be put away: water activity by the isotherm, against the published 0.60 of dried food. Isotherms of
 * different studies lie ±3 points of moisture apart (source: those named at the isotherm), so the band is those 3 points.
 */
import type { IsothermFood } from '#lib/reference/dried-storage.ts';
import { WATER_ACTIVITY_LIMITS } from '#lib/reference/water-activity-limits.ts';
import type { Celsius } from '#lib/units/quantity.ts';
import { driedActivity, dryBasis, equilibriumMoisture, wetBasis } from './gab-isotherm.ts';

/** Points of moisture, as a share, by which isotherms differ. */
export const ISOTHERM_SPREAD = 0.03;
const DRY_LIMIT = Math.min(...WATER_ACTIVITY_LIMITS.map((row) => row.waterActivity));

export interface Banded {
  readonly typ: number;
  readonly low: number;
  readonly high: number;
}

/** Water activity of food at `wet`, a share of its weight between 0 and 0.4. RangeError outside. */
export function storedActivity(food: { wet: number; t: Celsius; food: IsothermFood }): Banded {
  if (!(food.wet > 0 && food.wet <= 0.4)) throw new RangeError(`a moisture is above 0 and up to 0.4, got ${food.wet}`);
  const at = (wet: number): number =>
    wet <= 0 ? 0 : driedActivity({ moisture: dryBasis(wet), t: food.t, food: food.food });
  return { typ: at(food.wet), low: at(food.wet - ISOTHERM_SPREAD), high: at(food.wet + ISOTHERM_SPREAD) };
}

/** Moisture, share of the weight, at which the food reaches 0.60 in this room; `low` is the one to dry to. */
export function storageMoisture(room: { t: Celsius; food: IsothermFood }): Banded {
  const typ = wetBasis(equilibriumMoisture({ activity: DRY_LIMIT, ...room }));
  return { typ, low: typ - ISOTHERM_SPREAD, high: typ + ISOTHERM_SPREAD };
}
