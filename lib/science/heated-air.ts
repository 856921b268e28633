/** Relative humidity of room air once a dryer has heated it: the vapour stays, the room for it grows. By definition. */
import type { Celsius } from '#lib/units/quantity.ts';
import { saturationPressure } from './saturation.ts';

/** `humidity` is a share, 0 to 1, at `roomT`. */
export function heatedAirHumidity(air: { humidity: number; roomT: Celsius; dryerT: Celsius }): number {
  if (!(air.humidity >= 0 && air.humidity <= 1))
    throw new RangeError(`a humidity is a share of 0 to 1, got ${air.humidity}`);
  return (air.humidity * saturationPressure(air.roomT)) / saturationPressure(air.dryerT);
}
