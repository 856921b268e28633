/**
 * Sucrose splitting in hot acid. Source of the rate: Vukov's form, log10 k = 16.91 + log10(water g/mL) - 5670/T - pH, per minute (from
 * memory; its activation energy of 108.6 kJ/mol agrees with 109.2 read in Tombari 2007). With a whole simmer it gives the
 * top of the measured range of jellies (4.9-58.8 %, Tolman 1901): multiply k by 0.3-1.0 until a household's own are known.
 */
import { type Celsius, celsius } from '#lib/units/quantity.ts';
import { brixOf, type Composition, massOf } from './composition.ts';
import { sucroseDensity } from './density.ts';
import { MOLAR_MASS, ZERO_CELSIUS_K } from './physical-constants.ts';

/** Water taken up by a gram of sucrose as it splits, g. */
export const WATER_PER_SUCROSE_G = MOLAR_MASS.water / MOLAR_MASS.sucrose;

/** Per minute. Density held at its 100 °C value above that; °Bx of the liquid at most 85. */
export function inversionRate(pan: { composition: Composition; t: Celsius; pH: number }): number {
  const { composition, t, pH } = pan;
  const gPerMl = sucroseDensity(Math.min(85, brixOf(composition)), celsius(Math.min(100, t))) / 1000;
  const waterPerMl = (gPerMl * composition.water) / massOf(composition);
  return 10 ** (16.91 + Math.log10(waterPerMl) - 5670 / (t + ZERO_CELSIUS_K) - pH);
}

/** The pan after a share (0-1) of its sucrose has split: half glucose, half fructose, water taken up. */
export function invert(c: Composition, share: number): Composition {
  const split = c.sucrose * share;
  const half = (split * (1 + WATER_PER_SUCROSE_G)) / 2;
  return {
    ...c,
    sucrose: c.sucrose - split,
    glucose: c.glucose + half,
    fructose: c.fructose + half,
    water: c.water - split * WATER_PER_SUCROSE_G,
  };
}

/** Share by which soluble solids grow when a share of the sucrose splits: 5.26 % of the sucrose. For massBalance. */
export const inversionGain = (batch: { sucroseG: number; solidsG: number; invertedShare: number }): number =>
  (batch.sucroseG * batch.invertedShare * WATER_PER_SUCROSE_G) / batch.solidsG;

/** Minutes in which half the sucrose splits at this rate. */
export const inversionHalfLife = (ratePerMin: number): number => Math.LN2 / ratePerMin;
