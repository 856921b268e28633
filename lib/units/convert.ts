/**
 * Exact conversion factors. Pound and ounce are exact by definition (international yard and pound agreement, 1959);
 * US liquid measures follow from the gallon of 231 cubic inches; imperial measures from the gallon of 4.54609 L.
 */
import { type Celsius, celsius, type Kelvin, kelvin } from './quantity.ts';

export const GRAMS_PER_POUND = 453.59237;
export const GRAMS_PER_OUNCE = 28.349523125;
export const ML_PER_US_TEASPOON = 4.92892159375;
export const ML_PER_US_TABLESPOON = 14.78676478125;
export const ML_PER_US_FLUID_OUNCE = 29.5735295625;
export const ML_PER_US_CUP = 236.5882365;
export const ML_PER_US_PINT = 473.176473;
export const ML_PER_US_QUART = 946.352946;
export const ML_PER_US_GALLON = 3785.411784;
export const LITRES_PER_CUBIC_FOOT = 28.316846592;
export const METRES_PER_FOOT = 0.3048;
export const MM_PER_INCH = 25.4;

/** °F of a temperature in °C. */
export const fahrenheit = (t: Celsius): number => (t * 9) / 5 + 32;
/** °C of a temperature in °F. */
export const fromFahrenheit = (f: number): Celsius => celsius(((f - 32) * 5) / 9);
/** K of a temperature difference in °F (no 32). */
export const kelvinFromFahrenheitDifference = (f: number): Kelvin => kelvin((f * 5) / 9);
export const pounds = (g: number): number => g / GRAMS_PER_POUND;
export const fromPounds = (lb: number): number => lb * GRAMS_PER_POUND;
export const feet = (m: number): number => m / METRES_PER_FOOT;
