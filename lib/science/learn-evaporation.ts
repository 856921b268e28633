/**
 * What a pan boiled off in one batch, from its logged weights: the slope of a straight line through weight and time (least
 * squares). The pan's own weight drops out. Heating up is left out because only the minutes between two weighings count.
 */
import type { Observed } from './learn-factor.ts';

export interface PanWeighing {
  /** Minutes from any common start. */
  readonly minutes: number;
  readonly grams: number;
}

/** A kitchen scale and a pan lifted off the boil: 10 g (estimate). Weights are kept to 10 g. */
const WEIGHING_SD_G = 10;
const LEAST_MINUTES = 3;

/** g/min with its error; null with fewer than two weighings, under 3 minutes, or no clear loss (three errors). */
export function panLossRate(weighings: readonly PanWeighing[]): Observed | null {
  if (weighings.length < 2) return null;
  const n = weighings.length;
  const meanT = weighings.reduce((s, w) => s + w.minutes, 0) / n;
  const meanG = weighings.reduce((s, w) => s + w.grams, 0) / n;
  const spread = weighings.reduce((s, w) => s + (w.minutes - meanT) ** 2, 0);
  const span = Math.max(...weighings.map((w) => w.minutes)) - Math.min(...weighings.map((w) => w.minutes));
  if (span < LEAST_MINUTES) return null;
  const rate = -weighings.reduce((s, w) => s + (w.minutes - meanT) * (w.grams - meanG), 0) / spread;
  const relSd = WEIGHING_SD_G / Math.sqrt(spread) / rate;
  return rate > 0 && relSd < 1 / 3 ? { value: rate, relSd } : null;
}
