/**
 * Fresh life of a food at a temperature: log-linear between the published cold store (geometric middle of its printed days)
 * and 20 °C (an estimate of this project in every row). Colder than the cold store counts as the cold store; warmer than
 * 20 °C follows the same line down, to 40 °C.
 */
import { freshLifeOf } from '#lib/reference/fresh-life.ts';
import { type FruitGrade, gradeOf } from '#lib/reference/fruit-grades.ts';

export interface LifeHours {
  readonly hours: number;
  readonly low: number;
  readonly high: number;
}

const WARM_C = 20;

/** RangeError for a food without a printed life and for a store outside -2 to 40 °C. */
export function freshLifeHours(lot: { foodId: string; grade: FruitGrade; storeTempC: number }): LifeHours {
  const { foodId, grade, storeTempC } = lot;
  if (!(storeTempC >= -2 && storeTempC <= 40)) {
    throw new RangeError(`fresh fruit is kept from -2 to 40 °C, not at ${storeTempC} °C`);
  }
  const row = freshLifeOf(foodId);
  const factor = gradeOf(grade);
  const coldDays = Math.sqrt(row.daysLow * row.daysHigh);
  const warmth = Math.max(0, (storeTempC - row.storeTempC) / (WARM_C - row.storeTempC));
  const days = coldDays * (row.daysAt20C / coldDays) ** warmth;
  const spread = Math.sqrt(row.daysHigh / row.daysLow);
  return {
    hours: 24 * days * factor.lifeFactor,
    low: ((24 * days) / spread) * factor.low,
    high: 24 * days * spread * factor.high,
  };
}
