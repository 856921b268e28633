/**
 * Water activity of a sugar and acid solution: ln aw = ln x(water) - (Σ √k x)², mole fractions x.
 * Sucrose k from Starzak & Peacock (read); k of glucose, fructose and the acids from memory of Chirife and others, the two
 * sugars confirmed on the freezing points of the CRC Handbook. Citric over-predicts above 15 %, which no preserve reaches.
 * Used from 0 to 85 °Bx and -45 to 160 °C. Error about 0.01, besides 0.02 for every 2 °Bx not known.
 */
import { type Celsius, celsius } from '#lib/units/quantity.ts';
import type { Composition } from './composition.ts';
import { GAS_CONSTANT, MOLAR_MASS, ZERO_CELSIUS_K } from './physical-constants.ts';

const K_AT_25C = { glucose: 2.25, fructose: 2.25, citric: 6.17, malic: 1.82, tartaric: 4.68 } as const;
const ROOM = celsius(25);

/** Starzak & Peacock: k = -(Q/RT)(1 + a x + b x²), x the mole fraction of sucrose. */
const sucroseK = (x: number, kelvins: number): number =>
  (17_638 / (GAS_CONSTANT * kelvins)) * (1 - 1.0038 * x - 0.24653 * x * x);

/** Water activity, 0 to 1, at `t` (25 °C when not given). RangeError without water. */
export function waterActivity(c: Composition, t: Celsius = ROOM): number {
  if (!(c.water > 0)) throw new RangeError('a composition needs water');
  const kelvins = t + ZERO_CELSIUS_K;
  const moles = {
    glucose: c.glucose / MOLAR_MASS.glucose,
    fructose: c.fructose / MOLAR_MASS.fructose,
    citric: (c.citric ?? 0) / MOLAR_MASS.citric,
    malic: (c.malic ?? 0) / MOLAR_MASS.malic,
    tartaric: (c.tartaric ?? 0) / MOLAR_MASS.tartaric,
  };
  const water = c.water / MOLAR_MASS.water;
  const sucrose = c.sucrose / MOLAR_MASS.sucrose;
  const others = moles.glucose + moles.fructose + moles.citric + moles.malic + moles.tartaric;
  const total = water + sucrose + others + (c.ionsMmol ?? 0) / 1000;
  const xSucrose = sucrose / total;
  let pull = Math.sqrt(sucroseK(xSucrose, kelvins)) * xSucrose;
  for (const key of Object.keys(K_AT_25C) as (keyof typeof K_AT_25C)[]) {
    pull += Math.sqrt((K_AT_25C[key] * 298.15) / kelvins) * (moles[key] / total);
  }
  return (water / total) * Math.exp(-pull * pull);
}
