/**
 * Where drying in room air ends, by definition of the isotherm: food gives water up only until its water activity is the
 * humidity of the air. Source of the isotherm: gab-isotherm. A target at or under the stop is never reached there.
 */
import type { IsothermFood } from '#lib/reference/dried-storage.ts';
import type { Celsius } from '#lib/units/quantity.ts';
import { equilibriumMoisture, wetBasis } from './gab-isotherm.ts';
import { type Banded, ISOTHERM_SPREAD } from './storage-moisture.ts';

export interface EquilibriumStop {
  /** Moisture, share of the weight, at which it stops. */
  readonly stopsAt: Banded;
  /** `no`: finish it in a dryer. `doubtful`: the target lies within what isotherms differ by. */
  readonly reaches: 'yes' | 'doubtful' | 'no';
}

/** `humidity` is a share, 0 to below 1; `target` a share of the weight. */
export function equilibriumStop(room: {
  humidity: number;
  t: Celsius;
  food: IsothermFood;
  target: number;
}): EquilibriumStop {
  const typ = wetBasis(equilibriumMoisture({ activity: room.humidity, t: room.t, food: room.food }));
  const stopsAt = { typ, low: Math.max(0, typ - ISOTHERM_SPREAD), high: typ + ISOTHERM_SPREAD };
  const reaches = room.target <= typ ? 'no' : room.target > stopsAt.high ? 'yes' : 'doubtful';
  return { stopsAt, reaches };
}
