/**
 * Where water boils today. The cook's own reading, in the same pan with the same thermometer, comes first: working in
 * differences from it cancels altitude, weather and the thermometer's own error. Source without a reading: the standard atmosphere on the boiling curve.
 */
import type { Celsius } from '#lib/units/quantity.ts';
import { saturationTemperature } from './saturation.ts';
import { standardPressure } from './standard-pressure.ts';

export interface WaterBoilingPoint {
  readonly t: Celsius;
  readonly from: 'reading' | 'standard atmosphere';
}

/** RangeError for a reading outside 80-105 °C (no kitchen; a thermometer or unit fault) and when neither is given. */
export function waterBoilingPoint(known: { altitudeM?: number; measured?: Celsius }): WaterBoilingPoint {
  if (known.measured !== undefined) {
    if (!(known.measured >= 80 && known.measured <= 105)) {
      throw new RangeError(
        `water does not boil at ${known.measured} °C in a kitchen: check the thermometer and its unit`,
      );
    }
    return { t: known.measured, from: 'reading' };
  }
  if (known.altitudeM === undefined) throw new RangeError("today's reading or the altitude is needed");
  return { t: saturationTemperature(standardPressure(known.altitudeM)), from: 'standard atmosphere' };
}
