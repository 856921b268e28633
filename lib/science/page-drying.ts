/**
 * Thin-layer drying after Page (1949): MR = exp(-(κ t)^n), MR = (X - Xe) / (X0 - Xe), X in kg water per kg dry, t in hours.
 * Written with κ in 1/h so that κ moves with the temperature (Arrhenius) and n does not.
 */
import type { Celsius } from '#lib/units/quantity.ts';
import { GAS_CONSTANT, ZERO_CELSIUS_K } from './physical-constants.ts';

export interface PageRate {
  /** 1/h. */
  readonly kappa: number;
  readonly n: number;
}

/** Activation energies, kJ/mol: estimates among published 16-63. */
export const DRYING_ENERGY = { fruit: 35, peel: 20, herb: 50 } as const;
const REFERENCE_K = 60 + ZERO_CELSIUS_K;

/** Share of the removable water still there after `hours`. */
export const moistureRatio = (rate: PageRate, hours: number): number => Math.exp(-((rate.kappa * hours) ** rate.n));

/** Hours until a moisture ratio, 1 at the start. RangeError at 0 and below: the target is at or under what the air allows. */
export function hoursToRatio(rate: PageRate, ratio: number): number {
  if (!(ratio > 0))
    throw new RangeError('the air of this dryer cannot take the food that low: finish it hotter or drier');
  return ratio >= 1 ? 0 : (-Math.log(ratio)) ** (1 / rate.n) / rate.kappa;
}

/** κ from one weighing at `hours` > 0 with a moisture ratio between 0 and 1. */
export function kappaFromWeighing(n: number, hours: number, ratio: number): number {
  if (!(hours > 0 && ratio > 0 && ratio < 1)) throw new RangeError('a weighing counts once some water has gone');
  return (-Math.log(ratio)) ** (1 / n) / hours;
}

/** A 60 °C rate at another temperature. */
export const rateAt = (rate60: PageRate, t: Celsius, kind: keyof typeof DRYING_ENERGY): PageRate => ({
  n: rate60.n,
  kappa:
    rate60.kappa *
    Math.exp((-1000 * DRYING_ENERGY[kind] * (1 / (t + ZERO_CELSIUS_K) - 1 / REFERENCE_K)) / GAS_CONSTANT),
});
