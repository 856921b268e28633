/**
 * The three verdicts every jar carries, kept apart because a sealed lid proves nothing about time, acid or jar: process
 * (`as tested`, `not as tested`, `unknown`), seal, and hold. Clocks in hours after the jars came out: look at 12, late from
 * 20, closed at 24 (MSU sheets on seals and on reprocessing; the 20 is this project's).
 */
export type ProcessVerdict = 'as tested' | 'not as tested' | 'unknown';
export type SealVerdict = 'too early' | 'to be checked' | 'late' | 'sealed' | 'not sealed' | 'unverified';

export interface ProcessRecord {
  /** Minutes of the printed row; null when no row applies. */
  readonly required: number | null;
  /** Minutes kept at a full boil; null when nobody wrote them down. */
  readonly kept: number | null;
  readonly deviations: readonly string[];
}

export function processVerdict({ required, kept, deviations }: ProcessRecord): ProcessVerdict {
  if (required === null || deviations.length > 0) return 'not as tested';
  if (kept === null || !Number.isFinite(kept)) return 'unknown';
  return kept >= required ? 'as tested' : 'not as tested';
}

export const SEAL_CLOCK = { dueH: 12, lateH: 20, closedH: 24 } as const;

export interface SealRecord {
  readonly hoursOut: number;
  /** What somebody saw; null while nobody looked. */
  readonly sealed: boolean | null;
}

export function sealVerdict({ hoursOut, sealed }: SealRecord): SealVerdict {
  if (sealed !== null) return sealed ? 'sealed' : 'not sealed';
  if (hoursOut >= SEAL_CLOCK.closedH) return 'unverified';
  if (hoursOut >= SEAL_CLOCK.lateH) return 'late';
  return hoursOut >= SEAL_CLOCK.dueH ? 'to be checked' : 'too early';
}

export type WayOut = 'fridge' | 'freezer' | 'process again' | 'discard';
/** Why jars may not stand on the shelf: the lid gave, the process was cut short or changed, the pH is too high. */
export type WhyOut = 'unsealed' | 'process' | 'acid';

/** Hours within which a process that was not as tested may be done again in full. */
const AGAIN_H = 2;

/**
 * What may be done with such jars, by the hours since they came out. Processing again takes a new lid and the full time.
 * A lid that gave leaves 24 h (MSU sheet on reprocessing). A process not as tested leaves 2 h for a second one (Nebraska
 * extension; another service gives 24 h: the stricter is taken) and 24 h for the cold. A pH above the limit is put right
 * by no second boil; the cold takes it within the same 24 h.
 */
export function waysOut(why: WhyOut, hoursOut: number, hasProcessRow: boolean): WayOut[] {
  if (!(hoursOut <= SEAL_CLOCK.closedH)) return ['discard'];
  if (why === 'acid' || !hasProcessRow) return ['fridge', 'freezer'];
  if (why === 'process' && hoursOut > AGAIN_H) return ['fridge', 'freezer'];
  return ['fridge', 'freezer', 'process again'];
}

/** So many of a load gave that the load is looked at, not the jar: two, or a tenth (this project's own mark). */
export const loadSuspect = (open: number, made: number): boolean => open >= 2 || open * 10 >= made;

export interface HoldVerdict {
  readonly held: boolean;
  readonly reasons: readonly string[];
}

/** Hold: anything open against the lot stops use and sale until somebody decides. */
export function holdVerdict(reasons: readonly string[]): HoldVerdict {
  return { held: reasons.length > 0, reasons };
}
