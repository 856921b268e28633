/**
 * When to stop, in order of trust: pan weight, refractometer, temperature above water boiling today, clock. The temperature
 * is 8 °F (4.44 K) above boiling water for every full-sugar spread, a guide only (MSU sheet 01600890).
 */
import { settingTemperature } from '#lib/science/setting-temperature.ts';
import { waterBoilingPoint } from '#lib/science/water-boiling-point.ts';
import { METRES_PER_FOOT } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';
import { type Figure, figure, input } from './figure.ts';

export interface Kitchen {
  readonly altitudeFt: number;
  /** Today's boiling water read with the cook's own thermometer, °C. */
  readonly waterBoilsAtC?: number;
}

export interface FinishTemperature {
  readonly waterC: Figure;
  readonly stopC: Figure;
}

export function finishTemperature(kitchen: Kitchen): FinishTemperature {
  const read = kitchen.waterBoilsAtC;
  const water = waterBoilingPoint(
    read === undefined ? { altitudeM: kitchen.altitudeFt * METRES_PER_FOOT } : { measured: celsius(read) },
  );
  return {
    waterC: figure({
      value: water.t,
      unit: '°C',
      formula:
        read === undefined
          ? 'boiling water by altitude in the standard atmosphere; a reading of today beats it'
          : 'your reading today',
      inputs: [input('altitude', kitchen.altitudeFt, 'ft')],
    }),
    stopC: figure({
      value: settingTemperature(water.t),
      unit: '°C',
      formula: 'boiling water today and 8 °F (4.44 K); a guide, the pan weight decides',
      inputs: [input('boiling water', water.t, '°C')],
      source: 'MSU_JAM',
      status: 'verified',
    }),
  };
}
