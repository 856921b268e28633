/**
 * A crop's prior from the tables and from the block's own earlier seasons: normal-normal updates on the log of the total,
 * the mid-date and the log of the width. Spreads from memory, tuned on simulated orchards; a user's own seasons take over.
 */
import { type CropPrior, EVENNESS, SHAPE_WEIGHTS } from './crop-prior.ts';
import type { PickRecord } from './harvest-posterior.ts';

/** What tables say of a block. Masses in kg, days on any one day count. */
export interface TableEntry {
  readonly expected: number;
  /** Between years, at one site. */
  readonly cv: number;
  readonly mid: number;
  /** Between years, days. */
  readonly midSd: number;
  /** Days from 10 % to 90 %. */
  readonly width: number;
  /** Chance of a failed year and the share of a crop it brings. */
  readonly failProb: number;
  readonly failShare: number;
}

export interface PastSeason {
  readonly total: number;
  /** What the table expected that year, at that age of the plants. */
  readonly expected: number;
  readonly t10: number;
  readonly t50: number;
  readonly t90: number;
}

export interface PriorOptions {
  /** Years differ more than the tables say: on simulated orchards 1.15 made the 80 % ranges hold 80 %. */
  readonly inflation?: number;
}

/** How far one site is from the table: log of the total, days of the mid-date, log of the width; and years among each other. */
const SITE_SD_LOG = 0.5;
const SITE_MID_SD = 10;
const SITE_WIDTH_SD_LOG = 0.35;
const YEAR_WIDTH_SD_LOG = 0.2;
/** Seasons a table's chance of failure counts for. */
const TABLE_SEASONS = 8;
/** A season under this share of the expected crop counts as failed. */
const FAILED_BELOW = 0.32;
const LOWEST_LOG_RATIO = -1.2;
const FAILED_CV = 0.7;
/** The first record's fruit is taken to have ripened over this many days. */
const FIRST_RECORD_DAYS = 3;

/** Normal prior N(mean, variance), observations with variance `noise`. */
function normalUpdate(prior: { mean: number; variance: number }, seen: readonly number[], noise: number) {
  const precision = 1 / prior.variance + seen.length / noise;
  const sum = seen.reduce((total, x) => total + x, 0);
  return { mean: (prior.mean / prior.variance + sum / noise) / precision, variance: 1 / precision };
}

/** Prior for the coming season. With no past season it is the table, made as wide as sites differ. */
export function learnPrior(table: TableEntry, past: readonly PastSeason[], options: PriorOptions = {}): CropPrior {
  const inflation = options.inflation ?? 1.15;
  const totalVar = Math.log(1 + table.cv ** 2) * inflation ** 2;
  const midVar = (inflation * table.midSd) ** 2;
  const widthVar = (inflation * YEAR_WIDTH_SD_LOG) ** 2;

  const ordinary = past.filter((s) => s.total > FAILED_BELOW * s.expected);
  const counted = ordinary.length < 2 ? past : ordinary;
  const ratios = counted.map((s) => Math.max(LOWEST_LOG_RATIO, Math.log(s.total / s.expected)) + totalVar / 2);
  const site = normalUpdate({ mean: 0, variance: SITE_SD_LOG ** 2 }, ratios, totalVar);
  const mid = normalUpdate(
    { mean: table.mid, variance: SITE_MID_SD ** 2 },
    past.map((s) => s.t50),
    midVar,
  );
  const widths = past.map((s) => Math.log(Math.max(2, s.t90 - s.t10)));
  const width = normalUpdate({ mean: Math.log(table.width), variance: SITE_WIDTH_SD_LOG ** 2 }, widths, widthVar);

  const mean = table.expected * Math.exp(site.mean + site.variance / 2);
  const failed = (TABLE_SEASONS * table.failProb + past.length - counted.length) / (TABLE_SEASONS + past.length);
  return {
    total: [
      { weight: 1 - failed, mean, cv: Math.sqrt(Math.exp(totalVar + site.variance) - 1) },
      { weight: failed, mean: mean * table.failShare, cv: FAILED_CV },
    ],
    mid: { mean: mid.mean, sd: Math.sqrt(midVar + mid.variance) },
    width: { median: Math.exp(width.mean), sdLog: Math.sqrt(widthVar + width.variance) },
    shapes: SHAPE_WEIGHTS,
    kappa: EVENNESS,
  };
}

/** Total and the days of 10, 50 and 90 % of one finished season; null when nothing was picked. */
export function summariseSeason(records: readonly PickRecord[], expected: number): PastSeason | null {
  const total = records.reduce((sum, r) => sum + r.kg, 0);
  if (!(total > 0)) return null;
  const sorted = [...records].sort((a, b) => a.t - b.t);
  const dayOf = (share: number): number => {
    let done = 0;
    let from = (sorted[0] as PickRecord).t - FIRST_RECORD_DAYS;
    for (const { t, kg } of sorted) {
      if (kg > 0 && done + kg >= share * total) return from + ((share * total - done) / kg) * (t - from);
      done += kg;
      from = t;
    }
    return from;
  };
  return { total, expected, t10: dayOf(0.1), t50: dayOf(0.5), t90: dayOf(0.9) };
}
