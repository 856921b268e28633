/**
 * A whole cook, minute by minute: heating, boiling, inversion. Euler steps of 5 s (evaporation is smooth). Source: heat and mass
 * balances on the formulas of this room. Its inputs are
 * checked one by one, its total time has not been compared with any measured batch: ±30 %, then one factor per pan and burner.
 */
import { type Celsius, celsius, type Pascal } from '#lib/units/quantity.ts';
import { brixOf, type Composition, dissolvedG, massOf } from './composition.ts';
import { evaporationHeat, heatCapacity, mixedHeatCapacity } from './heat-capacity.ts';
import { inversionRate, invert } from './inversion.ts';
import { saturationTemperature } from './saturation.ts';
import { boilingPoint } from './solution-boiling-point.ts';

export interface CookPoint {
  readonly minutes: number;
  readonly t: Celsius;
  readonly massG: number;
  /** Of the liquid part. */
  readonly brix: number;
  /** Share of the dissolved sugar that is glucose and fructose. */
  readonly inverted: number;
  readonly composition: Composition;
}

export interface CookTrack {
  readonly minutesToBoil: number;
  readonly end: CookPoint;
  /** One point a minute from the start of the boil, and the end. */
  readonly points: readonly CookPoint[];
  /** kg of water per m² of pan and hour, mean over the boil; above 40 it foams over. */
  readonly fluxKgPerM2H: number;
}

export interface Cook {
  readonly charge: Composition;
  readonly startC: Celsius;
  readonly panAreaM2: number;
  readonly netKw: number;
  readonly pressure: Pascal;
  readonly pH: number;
  readonly target: { readonly elevationK: number } | { readonly brix: number } | { readonly panWeightG: number };
  /** Factor on the inversion rate, 0.3-1 until calibrated. */
  readonly inversionFactor?: number;
  readonly heatCapacity?: 'polynomial' | 'mixing rule';
}

const STEP_S = 5;
const LONGEST_MIN = 600;

/** RangeError when the burner cannot bring it to the boil or the target is not reached within 10 hours. */
export function simulateCook(cook: Cook): CookTrack {
  if (!(cook.netKw > 0)) throw new RangeError('this burner only covers the losses of the pan');
  const water = saturationTemperature(cook.pressure);
  const startMass = massOf(cook.charge);
  let c = cook.charge;
  let t: number = cook.startC;
  let minutes = 0;
  let minutesToBoil: number | null = null;
  let nextPoint = 0;
  const points: CookPoint[] = [];
  while (minutes < LONGEST_MIN) {
    const boils = boilingPoint(c, cook.pressure);
    if (t >= boils || minutesToBoil !== null) {
      minutesToBoil ??= minutes;
      t = boils;
      const now: CookPoint = pointOf(minutes, celsius(t), c);
      if (minutes >= nextPoint) {
        points.push(now);
        nextPoint = Math.floor(minutes) + 1;
      }
      if (reached(cook, now, water)) return track(cook, { startMass, minutesToBoil, points, end: now });
      c = boiledOff(c, cook, celsius(t));
    } else {
      t += (cook.netKw * STEP_S) / heatCapacityOf(c, celsius(t), cook);
    }
    const rate = inversionRate({ composition: c, t: celsius(t), pH: cook.pH }) * (cook.inversionFactor ?? 1);
    c = invert(c, 1 - Math.exp((-rate * STEP_S) / 60));
    minutes += STEP_S / 60;
  }
  throw new RangeError('the target is not reached within 10 hours');
}

function pointOf(minutes: number, t: Celsius, c: Composition): CookPoint {
  const sugar = c.sucrose + c.glucose + c.fructose;
  const inverted = sugar > 0 ? (c.glucose + c.fructose) / sugar : 0;
  return { minutes, t, massG: massOf(c), brix: brixOf(c), inverted, composition: c };
}

function reached(cook: Cook, now: CookPoint, water: Celsius): boolean {
  const { target } = cook;
  if ('elevationK' in target) return now.t - water >= target.elevationK;
  if ('brix' in target) return now.brix >= target.brix;
  return now.massG <= target.panWeightG;
}

/** kJ/K of the whole pan. */
function heatCapacityOf(c: Composition, t: Celsius, cook: Cook): number {
  const pulp = c.insoluble ?? 0;
  if (cook.heatCapacity === 'mixing rule') return mixedHeatCapacity(c.water, dissolvedG(c) + pulp);
  return ((massOf(c) - pulp) * heatCapacity(Math.min(80, brixOf(c)), t) + 1.42 * pulp) / 1000;
}

/** One step of boiling: part of the heat evaporates water, part follows the rising boiling point. */
function boiledOff(c: Composition, cook: Cook, t: Celsius): Composition {
  const drier = { ...c, water: c.water - 1 };
  const risePerG = boilingPoint(drier, cook.pressure) - t;
  const gPerS = cook.netKw / (evaporationHeat(t) / 1000 + heatCapacityOf(c, t, cook) * risePerG);
  return { ...c, water: c.water - gPerS * STEP_S };
}

function track(
  cook: Cook,
  run: { startMass: number; minutesToBoil: number; points: CookPoint[]; end: CookPoint },
): CookTrack {
  const { end, minutesToBoil, points, startMass } = run;
  const hours = (end.minutes - minutesToBoil) / 60;
  const fluxKgPerM2H = hours > 0 ? (startMass - end.massG) / 1000 / cook.panAreaM2 / hours : 0;
  if (points.at(-1) !== end) points.push(end);
  return { minutesToBoil, end, points, fluxKgPerM2H };
}
