/**
 * Heat that reaches a pan, kW: burner × efficiency - losses of the open pan (1-2 kW/m², an estimate).
 * Efficiencies: ENERGY STAR, US DOE and home measurements (read); portable gas ring from memory.
 */
import { celsius } from '#lib/units/quantity.ts';
import { evaporationHeat } from './heat-capacity.ts';

export const BURNER_EFFICIENCY = {
  'gas hob': { low: 0.32, typ: 0.38, high: 0.42, status: 'verified' },
  'electric coil or radiant': { low: 0.7, typ: 0.75, high: 0.8, status: 'verified' },
  induction: { low: 0.8, typ: 0.85, high: 0.9, status: 'verified' },
  'portable gas ring': { low: 0.35, typ: 0.42, high: 0.5, status: 'memory' },
} as const;

/** Above about 40 kg/m²/h a pan a third full foams over: an estimate from maple and brewing practice. */
export const FOAM_LIMIT_KG_PER_M2_H = 40;

export const netPower = (stove: { burnerKw: number; efficiency: number; lossKw: number }): number =>
  stove.burnerKw * stove.efficiency - stove.lossKw;

/** Water boiled off, g/min, by a net power in kW at 100 °C: 1 kW takes 26.6 g/min. */
export const boilOffGPerMin = (netKw: number): number => (60_000 * netKw) / evaporationHeat(celsius(100));
