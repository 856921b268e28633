/** Share of the water that is ice in a frozen spread or fruit, by definition of the liquid's °Bx; 9 % of that ice's volume is the growth a headspace must take. */
import type { Celsius } from '#lib/units/quantity.ts';
import { brixFrozenAt } from './freezing-point.ts';

/** `brix` of the unfrozen spread, `inverted` share of its sugar, store temperature below 0 °C. 0 when nothing freezes. */
export function iceFraction(spread: { brix: number; inverted: number; t: Celsius }): number {
  const liquid = brixFrozenAt(spread.t, spread.inverted);
  return Math.max(0, 1 - ((spread.brix / liquid) * (100 - liquid)) / (100 - spread.brix));
}
