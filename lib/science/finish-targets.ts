/**
 * When to stop, in order of trust: weight of the pan, refractometer, temperature above today's boiling water, clock.
 * The temperature band is what 15 to 50 % of inverted sugar does to the boiling point (measured jellies ran from 5 to 59 %,
 * Tolman 1901); its middle is the 8 °F rule, moved with the target °Bx along the model.
 */
import { type Celsius, celsius, type Pascal } from '#lib/units/quantity.ts';
import { syrup } from './composition.ts';
import { BOIL_TIME_SPREAD } from './evaporation.ts';
import { saturationPressure } from './saturation.ts';
import { settingTemperature } from './setting-temperature.ts';
import { boilingPoint } from './solution-boiling-point.ts';

export type FinishTarget =
  | { readonly by: 'pan weight'; readonly grams: number }
  | { readonly by: 'refractometer'; readonly brix: number }
  | { readonly by: 'temperature'; readonly t: Celsius; readonly low: Celsius; readonly high: Celsius }
  | { readonly by: 'clock'; readonly minutes: number; readonly low: number; readonly high: number };

/** Below this the boiling point moves too little with °Bx to stop by: 1 K is more than 8 °Bx (an estimate). */
const LOWEST_BRIX_BY_TEMPERATURE = 60;

/** `water` is today's boiling point of water, `boilMin` the minutes at the boil; no temperature is given below 60 °Bx. */
export function finishTargets(batch: {
  panTargetG: number;
  brix: number;
  water: Celsius;
  boilMin?: number;
}): readonly FinishTarget[] {
  const { panTargetG, brix, water, boilMin } = batch;
  const targets: FinishTarget[] = [
    { by: 'pan weight', grams: panTargetG },
    { by: 'refractometer', brix },
  ];
  if (brix >= LOWEST_BRIX_BY_TEMPERATURE) targets.push({ by: 'temperature', ...finishTemperature(brix, water) });
  if (boilMin !== undefined) {
    const spread = BOIL_TIME_SPREAD;
    targets.push({ by: 'clock', minutes: boilMin, low: boilMin * (1 - spread), high: boilMin * (1 + spread) });
  }
  return targets;
}

function finishTemperature(brix: number, water: Celsius): { t: Celsius; low: Celsius; high: Celsius } {
  const p: Pascal = saturationPressure(water);
  const at = (b: number, inverted: number): number => boilingPoint(syrup(b, inverted), p);
  return {
    t: celsius(settingTemperature(water) + at(brix, 0.3) - at(65, 0.3)),
    low: celsius(at(brix, 0.15)),
    high: celsius(at(brix, 0.5)),
  };
}
