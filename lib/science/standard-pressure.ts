/** The standard atmosphere, ISO 2533, troposphere. Status: from memory of the standard; agrees with an independent library to 1 Pa. */
import { type Pascal, pascal } from '#lib/units/quantity.ts';

const SEA_LEVEL_PA = 101_325;
const LAPSE_PER_M = 2.25577e-5;
const EXPONENT = 5.25588;

/** Mean air pressure at an altitude in metres, -500 to 11 000. RangeError outside. The day's weather moves it by 2-3 %. */
export function standardPressure(altitudeM: number): Pascal {
  if (!(altitudeM >= -500 && altitudeM <= 11_000)) {
    throw new RangeError(`the standard atmosphere is used from -500 to 11 000 m, not at ${altitudeM} m`);
  }
  return pascal(SEA_LEVEL_PA * (1 - LAPSE_PER_M * altitudeM) ** EXPONENT);
}

/** Altitude in metres at which the standard atmosphere has a pressure. */
export const standardAltitude = (p: Pascal): number => (1 - (p / SEA_LEVEL_PA) ** (1 / EXPONENT)) / LAPSE_PER_M;
