/**
 * Setting point of a full-sugar spread: 8 °F (4.44 K) above today's boiling water. Source: USDA HGB-56 and extension jelly tables;
 * one USDA bulletin prints 9 °F for jams, conserves and marmalades. A guide after the pan weight and the refractometer.
 */
import { kelvinFromFahrenheitDifference } from '#lib/units/convert.ts';
import { type Celsius, celsius, type Kelvin } from '#lib/units/quantity.ts';

/** The rule as a difference. */
export const SETTING_ELEVATION: Kelvin = kelvinFromFahrenheitDifference(8);

export const settingTemperature = (water: Celsius): Celsius => celsius(water + SETTING_ELEVATION);
