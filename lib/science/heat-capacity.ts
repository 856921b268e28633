/**
 * Heat capacity of sugar solutions, kJ/(kg K), and heat of evaporation, kJ/kg. The polynomial was read in a public source
 * file (0-80 °Bx, 20-110 °C); the mixing rule is 8 % low at 40 °Bx and 100 °C and kept for pans with pulp and for comparison.
 */
import type { Celsius } from '#lib/units/quantity.ts';

export function heatCapacity(brix: number, t: Celsius): number {
  if (!(brix >= 0 && brix <= 85)) throw new RangeError(`heat capacity is used from 0 to 85 °Bx, not ${brix}`);
  return 4.1253 - 0.02804 * brix + 6.7e-5 * brix * t + 1.8691e-3 * t - 9.271e-6 * t * t;
}

/** Dry solids in the mixing rule; a confectionery handbook (Mohos) gives 1.394 for dry sucrose at 60 °C. */
export const SOLIDS_HEAT_CAPACITY = 1.42;

/** kJ/K of a pan of water and solids, grams. */
export const mixedHeatCapacity = (waterG: number, solidsG: number): number =>
  (4.186 * waterG + SOLIDS_HEAT_CAPACITY * solidsG) / 1000;

/** 95-130 °C; from memory, sure. */
export const evaporationHeat = (t: Celsius): number => 2257 - 2.4 * (t - 100);

/** Heat capacity of dry sucrose, kJ/(kg K): 0.2712 + 0.00103 t kcal, Mohos, appendix 2. */
export const drySucroseHeatCapacity = (t: Celsius): number => 4.1868 * (0.2712 + 0.00103 * t);
