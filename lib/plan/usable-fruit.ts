/** How a waiting lot shrinks, softens, and what it is worth when it outlasts the plan. */
import type { FruitGrade, PlanCrop, PlanLot } from './instance.ts';

type Waiting = Pick<PlanLot, 'grade' | 'avail' | 'useBy' | 'softFrom' | 'lossPerDay'>;

/** Share of soft fruit's pectin that is counted: soft fruit has lost pectin. Estimate of the planning trial, not measured. */
export const SOFT_PECTIN_FACTOR = 0.6;

/** Usable share of a kg drawn on a day: (1 - loss)^(days waited). */
export const usableShare = (lot: Waiting, day: number): number =>
  (1 - (lot.lossPerDay ?? 0)) ** Math.max(0, day - lot.avail);

/** The grade a lot counts as on a day. */
export const gradeOn = (lot: Waiting, day: number): FruitGrade =>
  lot.softFrom !== undefined && day >= lot.softFrom ? 'soft' : lot.grade;

/** True when the lot can be drawn on that day. */
export const isThere = (lot: Waiting, day: number): boolean => day >= lot.avail && day <= lot.useBy;

/**
 * Money per kg kept past the horizon: the crop's carry value x usable share x min(1, days left / 5). A lot about to
 * die after the horizon is worth little, so it is neither dumped into poor jam nor hoarded. The five days are an estimate.
 */
export function carryWorth(lot: Waiting, crop: PlanCrop, horizon: number): number {
  const daysLeft = lot.useBy - horizon + 1;
  return daysLeft <= 0 ? 0 : (crop.carryValue ?? 0) * Math.min(1, daysLeft / 5) * usableShare(lot, horizon);
}
