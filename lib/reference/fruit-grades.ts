/**
 * How much of a fruit's fresh life each grade has left. Estimates of this project: publications say that injured fruit
 * breathes faster and keeps less, none gives a factor. Cull (mould, rot, ground fall, worm through) has no life as food.
 */
import type { Cited } from './source.ts';

export type FruitGrade = 'perfect' | 'blemished' | 'soft' | 'cull';

export interface GradeRow extends Cited {
  readonly grade: FruitGrade;
  readonly lifeFactor: number;
  readonly low: number;
  readonly high: number;
  /** Never shown as having more hours than this; null for no cap. */
  readonly capHours: number | null;
}

export const FRUIT_GRADES = [
  { grade: 'perfect', lifeFactor: 1, low: 0.85, high: 1.15, capHours: null, source: 'ESTIMATE', status: 'estimate' },
  { grade: 'blemished', lifeFactor: 0.5, low: 0.35, high: 0.7, capHours: null, source: 'ESTIMATE', status: 'estimate' },
  { grade: 'soft', lifeFactor: 0.2, low: 0.1, high: 0.35, capHours: 24, source: 'ESTIMATE', status: 'estimate' },
  { grade: 'cull', lifeFactor: 0, low: 0, high: 0, capHours: 0, source: 'HOUSE_RULE', status: 'estimate' },
] as const satisfies readonly GradeRow[];

export function gradeOf(grade: string): GradeRow {
  const row = FRUIT_GRADES.find((r) => r.grade === grade);
  if (!row) throw new RangeError(`"${grade}" is not a grade`);
  return row;
}

export interface ApplePaceRow extends Cited {
  readonly temperatureC: number;
  /** How many times faster than at 0 °C. */
  readonly rate: number;
}

/** Apple ripening against 0 °C; log-linear between rows. */
export const APPLE_PACE = [
  { temperatureC: 0, rate: 1, source: 'APPLE2', status: 'verified' },
  { temperatureC: 4.44, rate: 2, source: 'APPLE2', status: 'verified' },
  { temperatureC: 10, rate: 2.7, source: 'IOWA', status: 'verified' },
  { temperatureC: 21, rate: 8, source: 'MEMORY', status: 'memory', note: '6 to 10' },
] as const satisfies readonly ApplePaceRow[];
