/**
 * Silica gel for a jar of dried food: the water the food must give up to come to a water activity, over what dry gel holds
 * there. Source: the weighings of SILICA_GEL, straight lines between them; regenerated gel still holds 0.02 (estimate).
 * Gel holds, it does not finish drying. Water activity above 0 and up to 0.65.
 */
import { type IsothermFood, SILICA_GEL } from '#lib/reference/dried-storage.ts';
import { celsius } from '#lib/units/quantity.ts';
import { dryBasis, equilibriumMoisture } from './gab-isotherm.ts';

const STILL_HELD = 0.02;
const ROOM = celsius(25);

/** Grams of water in the food above the target and of dry gel that takes it; 0 g when it is there already. */
export function silicaGel(jar: { foodG: number; wet: number; target: number; food: IsothermFood }): {
  waterG: number;
  gelG: number;
} {
  const room = held(jar.target) - STILL_HELD;
  if (!(room > 0)) throw new RangeError(`gel as it comes from the oven takes no water at ${jar.target}`);
  const dryG = jar.foodG * (1 - jar.wet);
  const above = dryBasis(jar.wet) - equilibriumMoisture({ activity: jar.target, t: ROOM, food: jar.food });
  const waterG = Math.max(0, dryG * above);
  return { waterG, gelG: waterG / room };
}

/** Grams of water a gram of gel holds at a water activity. */
function held(activity: number): number {
  const points = [{ humidity: 0, waterPerG: 0 }, ...SILICA_GEL];
  const i = points.findIndex((p) => p.humidity >= activity);
  const [a, b] = [points[i - 1], points[i]];
  if (!(activity > 0) || !a || !b) throw new RangeError(`gel was weighed up to 0.65, got ${activity}`);
  return a.waterPerG + ((activity - a.humidity) * (b.waterPerG - a.waterPerG)) / (b.humidity - a.humidity);
}
