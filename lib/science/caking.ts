/**
 * Whether a sugary fruit powder cakes: it does above its glass transition. Source: Welti-Chanes et al. 1999, 4.5 °C for
 * freeze-dried apple at water activity 0 and -81.4 °C for juice solids at 0.75; the straight line between them is this project's.
 * Every pantry is warmer, so the practical answer is how dry to keep it: below 0.25 (advice drawn from the same figures).
 */
import type { Celsius } from '#lib/units/quantity.ts';
import { celsius } from '#lib/units/quantity.ts';

export const KEEP_POWDER_BELOW = 0.25;

/** °C; water activity 0 to 0.75. RangeError outside. */
export function glassTransition(activity: number): Celsius {
  if (!(activity >= 0 && activity <= 0.75)) throw new RangeError(`a water activity here is 0 to 0.75, got ${activity}`);
  return celsius(4.5 - 114.5 * activity);
}

export const cakes = (powder: { activity: number; t: Celsius }): boolean => powder.t > glassTransition(powder.activity);
