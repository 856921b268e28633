/**
 * Water a dried apple holds against the water activity of its air: GAB isotherm. Constants as carried in public drying code
 * that credits Kaymak-Ertekin & Gedik 2004 and two others (the papers were not read). Isotherms of other studies differ by a
 * factor of two in the monolayer: carry ±3 points of moisture in any limit. 15-60 °C, water activity 0 to 0.95.
 * Herbs, citrus peel and peel or core powder have one set each, at 25 °C and from memory (weak): temperature moves only apple.
 */
import { ISOTHERMS, type IsothermFood } from '#lib/reference/dried-storage.ts';
import type { Celsius } from '#lib/units/quantity.ts';
import { GAS_CONSTANT, ZERO_CELSIUS_K } from './physical-constants.ts';
import { bisection } from './root.ts';

/** kg water per kg dry matter at equilibrium. */
export function equilibriumMoisture(air: { activity: number; t: Celsius; food?: IsothermFood }): number {
  if (!(air.activity >= 0 && air.activity < 1))
    throw new RangeError(`a water activity is 0 to below 1, got ${air.activity}`);
  const { monolayer, c, k } = ISOTHERMS.find((row) => row.id === air.food) ?? appleAt(air.t);
  const ka = k * air.activity;
  return (monolayer * c * ka) / ((1 - ka) * (1 - ka + c * ka));
}

/** Water activity of a dried food at a moisture, kg per kg dry. RangeError above what the isotherm reaches. */
export const driedActivity = ({ moisture, ...at }: { moisture: number; t: Celsius; food?: IsothermFood }): number =>
  bisection((activity) => equilibriumMoisture({ activity, ...at }) - moisture, { low: 1e-6, high: 0.99 });

function appleAt(t: Celsius): { monolayer: number; c: number; k: number } {
  const rt = GAS_CONSTANT * (t + ZERO_CELSIUS_K);
  return {
    monolayer: 3.141e-3 * Math.exp(8057 / rt),
    c: 4.923e-3 * Math.exp(17_241 / rt),
    k: 0.9904 * Math.exp(-0.8 / rt),
  };
}

/** Share of the wet weight from kg per kg dry, and back (definition). */
export const wetBasis = (dryBasis: number): number => dryBasis / (1 + dryBasis);
export const dryBasis = (wet: number): number => wet / (1 - wet);
