/**
 * First guess for a load by the way it is dried. Dryer: the printed hours of household dryers. Oven: twice those (source: home-cooking
 * page LEATHER2, leather 18 h against 4-10 h, and memory), but for zest and herbs, whose hours were printed for an oven. Windowsill: apple slices by the law of 13 published runs with still
 * air of 0.1 m/s, from 3 to 6 mm; all else by the dryer's rate times the drying power of the room's air, vapour pressure deficit × speed^0.38,
 * against room air of 20 °C and 50 % heated to 60 °C at 1 m/s (the 0.38 from those runs; checked on one published leaf: 48 times slower by the rule,
 * 56 as printed). Hung: herbs take a week or more (source HANG); a week is the middle here. In room air all ends at the equilibrium.
 */
import type { IsothermFood } from '#lib/reference/dried-storage.ts';
import { type Celsius, celsius } from '#lib/units/quantity.ts';
import { appleRate } from './apple-drying-law.ts';
import { type DryerStart, startRate } from './dryer-start.ts';
import { dryBasis, equilibriumMoisture } from './gab-isotherm.ts';
import { heatedAirHumidity } from './heated-air.ts';
import { moistureRatio, type PageRate, rateAt } from './page-drying.ts';
import { saturationPressure } from './saturation.ts';

export type DryingWay = 'dryer' | 'oven' | 'windowsill' | 'hung';
export const isRoomAir = (way: DryingWay): boolean => way === 'windowsill' || way === 'hung';

export interface DryingGuess {
  readonly rate: PageRate;
  /** kg water per kg dry that the air leaves in it; 0 in a heated dryer. */
  readonly leftX: number;
}

const OVEN_SLOWER = 2;
const OVEN_PRINTED = ['citrus-zest', 'herb-leaf', 'apricot-halves'];
const STILL_AIR = 0.1;
const SLICE_MM = Math.sqrt(3 * 6);
const SPEED_POWER = 0.38;
const WEEK_H = 168;
const DRYER_T = celsius(60);

/** Vapour pressure the air could still take up, Pa; `humidity` is a share, 0 to 1. */
export const vapourDeficit = (t: Celsius, humidity: number): number => (1 - humidity) * saturationPressure(t);

/** How many times slower than a dryer at 60 °C with air of 1 m/s the still air of a room is. */
export function slowerInRoom(room: { t: Celsius; humidity: number }): number {
  const dryer = vapourDeficit(DRYER_T, heatedAirHumidity({ humidity: 0.5, roomT: celsius(20), dryerT: DRYER_T }));
  return (dryer / vapourDeficit(room.t, room.humidity)) * (1 / STILL_AIR) ** SPEED_POWER;
}

/** `humidity` (a share, 0 to below 1) counts in room air only; there `t` is the room's. */
export function dryingGuess(
  start: DryerStart,
  by: { way: DryingWay; t: Celsius; humidity: number; food: IsothermFood },
): DryingGuess {
  const rate60 = startRate(start);
  if (by.way === 'dryer') return { rate: rateAt(rate60, by.t, start.kind), leftX: 0 };
  if (by.way === 'oven') {
    const rate = rateAt(rate60, by.t, start.kind);
    return { rate: { ...rate, kappa: rate.kappa / (OVEN_PRINTED.includes(start.id) ? 1 : OVEN_SLOWER) }, leftX: 0 };
  }
  const leftX = equilibriumMoisture({ activity: by.humidity, t: by.t, food: by.food });
  if (by.way === 'hung') return { rate: weekRate(start, leftX), leftX };
  const rate =
    start.id === 'apple-slices'
      ? appleRate({ t: by.t, humidity: by.humidity, metresPerSecond: STILL_AIR }, SLICE_MM)
      : { ...rate60, kappa: rate60.kappa / slowerInRoom(by) };
  return { rate, leftX };
}

/** The rate that takes a week to the target in this air; to a fiftieth of its water, where the air does not go so far. */
function weekRate({ w0, wt, n }: DryerStart, leftX: number): PageRate {
  const ratio = (dryBasis(wt) - leftX) / (dryBasis(w0) - leftX);
  return { n, kappa: (-Math.log(ratio > 0 ? ratio : 0.02)) ** (1 / n) / WEEK_H };
}

const MOULD_FROM_H = 48;
/** Still half water after two days in a room above 20 °C: mould is to be looked for (estimate). */
export const mouldLooms = ({ rate, leftX }: DryingGuess, load: { w0: number; t: Celsius }): boolean =>
  load.t > 20 && moistureRatio(rate, MOULD_FROM_H) * (dryBasis(load.w0) - leftX) + leftX > dryBasis(0.5);
