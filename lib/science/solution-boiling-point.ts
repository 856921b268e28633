/**
 * Boiling point of a sugar solution: the temperature at which saturation pressure times water activity equals the air
 * pressure. Four sources agree within 0.4 K at 60-65 °Bx; from 66 °Bx up published tables differ by 2 K, and this follows
 * the lower ones. A temperature is therefore a guide to the finish; the weight of the pan decides.
 */
import { type Celsius, celsius, type Kelvin, kelvin, type Pascal } from '#lib/units/quantity.ts';
import { type Composition, syrup } from './composition.ts';
import { brent } from './root.ts';
import { saturationPressure, saturationTemperature } from './saturation.ts';
import { waterActivity } from './water-activity.ts';

const vapourPressure = (c: Composition, t: Celsius): number => saturationPressure(t) * waterActivity(c, t);

/** 0 to 85 °Bx under 60 to 101.3 kPa. RangeError when it does not boil between 60 and 160 °C. */
export const boilingPoint = (c: Composition, p: Pascal): Celsius =>
  celsius(brent((t) => vapourPressure(c, celsius(t)) / p - 1, { low: 60, high: 160 }));

/** How far above water it boils: a difference, never to be turned into °F with the 32. */
export const boilingPointElevation = (c: Composition, p: Pascal): Kelvin =>
  kelvin(boilingPoint(c, p) - saturationTemperature(p));

/** °Bx of a syrup that boils at `t` under `p` with a share of its sugar inverted. RangeError outside 0.5 to 90 °Bx. */
export const brixAtBoilingTemperature = (at: { t: Celsius; p: Pascal; inverted: number }): number =>
  brent((b) => vapourPressure(syrup(b, at.inverted), at.t) / at.p - 1, { low: 0.5, high: 90 });
