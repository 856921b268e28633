/**
 * Sterile-jar rule: jars are boiled empty when the process itself is too short to do it.
 * Source: MSU Extension sheet 01600946, after AIB 539: less than 10 minutes of processing needs sterile jars; boil them
 * 10 minutes up to 1,000 ft and 1 minute more for each further 1,000 ft begun.
 */
import type { Cited } from './source.ts';

export const STERILE_RULE = {
  neededBelowMinutes: 10,
  boilMinutes: 10,
  freeFt: 1000,
  stepFt: 1000,
  source: 'MSU_STERIL',
  status: 'verified',
} as const satisfies Cited & Record<string, unknown>;

/** True when a process of this many minutes needs jars boiled beforehand. */
export const needsSterileJars = (processMinutes: number): boolean => processMinutes < STERILE_RULE.neededBelowMinutes;

/** Minutes to boil empty jars at an altitude in feet. RangeError below 0 ft or for what is not a number. */
export function steriliseMinutes(altitudeFt: number): number {
  if (!(altitudeFt >= 0 && Number.isFinite(altitudeFt))) {
    throw new RangeError(`${altitudeFt} ft is outside the sterile-jar rule, which begins at 0 ft`);
  }
  const above = Math.max(0, altitudeFt - STERILE_RULE.freeFt);
  return STERILE_RULE.boilMinutes + Math.ceil(above / STERILE_RULE.stepFt);
}
