/**
 * Boiling curve of pure water. Source: IAPWS-IF97, region 4, equations 30 and 31, 0 to 373.9 °C. Coefficients read in several public
 * implementations; reproduces tables 35 and 36 of the standard.
 */
import { type Celsius, celsius, type Pascal, pascal } from '#lib/units/quantity.ts';
import { ZERO_CELSIUS_K } from './physical-constants.ts';

const N1 = 1167.0521452767;
const N2 = -724213.16703206;
const N3 = -17.073846940092;
const N4 = 12020.82470247;
const N5 = -3232555.0322333;
const N6 = 14.91510861353;
const N7 = -4823.2657361591;
const N8 = 405113.40542057;
const N9 = -0.23855557567849;
const N10 = 650.17534844798;

/** Saturation pressure of water over the liquid. RangeError outside 0 to 373.946 °C. */
export function saturationPressure(t: Celsius): Pascal {
  if (!(t >= 0 && t <= 373.946))
    throw new RangeError(`the boiling curve of water runs from 0 to 373.946 °C, not ${t} °C`);
  const kelvins = t + ZERO_CELSIUS_K;
  const theta = kelvins + N9 / (kelvins - N10);
  const a = theta ** 2 + N1 * theta + N2;
  const b = N3 * theta ** 2 + N4 * theta + N5;
  const c = N6 * theta ** 2 + N7 * theta + N8;
  return pascal(1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4);
}

/** Temperature at which water boils under a pressure. RangeError outside 611.213 Pa to 22.064 MPa. */
export function saturationTemperature(p: Pascal): Celsius {
  if (!(p >= 611.212 && p <= 22.064e6)) {
    throw new RangeError(`the boiling curve of water runs from 611.213 Pa to 22.064 MPa, not ${p} Pa`);
  }
  const beta = (p / 1e6) ** 0.25;
  const e = beta ** 2 + N3 * beta + N6;
  const f = N1 * beta ** 2 + N4 * beta + N7;
  const g = N2 * beta ** 2 + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return celsius((N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2 - ZERO_CELSIUS_K);
}
