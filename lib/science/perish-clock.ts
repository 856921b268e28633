/**
 * Hours a lot of fresh fruit has left. The clock runs on the share of life used, u = Σ hours / life, so that a lot moved from
 * the shed to the cold room keeps what it has spent. Half of a lot is still usable at u = 1 (shape exp(-ln 2 · u⁴): estimate).
 */
import { type FruitGrade, gradeOf } from '#lib/reference/fruit-grades.ts';
import { freshLifeHours } from './fresh-life-hours.ts';

export interface HoursLeft {
  readonly hours: number;
  readonly low: number;
  readonly high: number;
  /** True when the grade's cap (soft: 24 h) shortened the answer. */
  readonly capped: boolean;
}

export interface Stay {
  readonly storeTempC: number;
  readonly hours: number;
}

/** Share of life used after stays at several temperatures, 0 for none. Infinity for a grade without life (cull). */
export function lifeUsed(lot: { foodId: string; grade: FruitGrade; stays: readonly Stay[] }): number {
  return lot.stays.reduce((used, stay) => {
    if (!(stay.hours >= 0)) throw new RangeError(`a stay lasts 0 hours or more, got ${stay.hours}`);
    const life = freshLifeHours({ ...lot, storeTempC: stay.storeTempC }).hours;
    return used + (stay.hours === 0 ? 0 : stay.hours / life);
  }, 0);
}

/** Share of a lot still usable when a share `used` of its life is gone. */
export const usableShare = (used: number): number => Math.exp(-Math.LN2 * used ** 4);

/** Hours left at `storeTempC` for a lot that has been there `ageHours`. 0, never negative, when its time is over. */
export function hoursLeft(lot: { foodId: string; grade: FruitGrade; storeTempC: number; ageHours: number }): HoursLeft {
  if (!(lot.ageHours >= 0)) throw new RangeError(`an age is 0 hours or more, got ${lot.ageHours}`);
  const life = freshLifeHours(lot);
  const cap = gradeOf(lot.grade).capHours ?? Number.POSITIVE_INFINITY;
  const left = (hours: number): number => Math.min(cap, Math.max(0, hours - lot.ageHours));
  return {
    hours: left(life.hours),
    low: left(life.low),
    high: left(life.high),
    capped: life.hours - lot.ageHours > cap,
  };
}
