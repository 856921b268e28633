/**
 * Whether a pH reading counts. Two buffers are read with the sample, one on each side of 4.6 (4.01 and 7.00 as a rule), each
 * within 0.1 of its value; else the reading is void and the meter is calibrated again.
 * Source: pH meter practice of Minnesota and Wisconsin extension sheets; limit 4.6 of 21 CFR 114. The amber band from 4.4
 * is a rule of this project. A predicted pH never comes here.
 */
export interface PhReading {
  readonly pH: number;
  readonly buffers: readonly { readonly nominal: number; readonly read: number }[];
}

export type ReadingStanding = { ok: true; pH: number; amber: boolean } | { ok: false; reason: string };

export const ACID_LIMIT_PH = 4.6;
const AMBER_FROM_PH = 4.4;
const BUFFER_TOLERANCE = 0.1;
/** Binary fractions: 4.02 - 3.92 must count as 0.1. */
const EPSILON = 1e-9;

export function readingStanding({ pH, buffers }: PhReading): ReadingStanding {
  if (!(pH >= 0 && pH <= 14)) return { ok: false, reason: 'the pH reading is not a number between 0 and 14' };
  const off = buffers.find((b) => !(Math.abs(b.read - b.nominal) <= BUFFER_TOLERANCE + EPSILON));
  if (off) {
    return {
      ok: false,
      reason: `the meter read the ${off.nominal.toFixed(2)} buffer as ${off.read.toFixed(2)}, more than 0.1 off: calibrate it and read again`,
    };
  }
  const straddles = buffers.some((b) => b.nominal < ACID_LIMIT_PH) && buffers.some((b) => b.nominal > ACID_LIMIT_PH);
  if (!straddles) return { ok: false, reason: 'a reading counts only with a buffer read below and one above pH 4.6' };
  return { ok: true, pH, amber: pH >= AMBER_FROM_PH };
}
