/**
 * An invented orchard that is deliberately not the model: other ripening curves, two flushes, weather that hangs together
 * from day to day, a picker who leaves some and forgets some, fruit that drops, a site that differs from its table.
 * Figures are of our own making; nothing here is fitted to anything.
 */

import type { PickRecord } from '#lib/forecast/harvest-posterior.ts';
import type { PastSeason, TableEntry } from '#lib/forecast/learn-prior.ts';
import { summariseSeason } from '#lib/forecast/learn-prior.ts';
import type { Sfc32 } from '#lib/forecast/random.ts';

/** Kilograms, spread between years, mid-day, its spread, days from 10 to 90 %, chance of a failed year. */
export const KINDS: readonly TableEntry[] = [
  { expected: 12, cv: 0.35, mid: 170, midSd: 6, width: 18, failProb: 0.08, failShare: 0.25 },
  { expected: 40, cv: 0.5, mid: 230, midSd: 6, width: 12, failProb: 0.15, failShare: 0.25 },
  { expected: 80, cv: 0.4, mid: 262, midSd: 6, width: 24, failProb: 0.1, failShare: 0.25 },
  { expected: 15, cv: 0.3, mid: 190, midSd: 5, width: 14, failProb: 0.05, failShare: 0.25 },
];

export interface Orchard {
  readonly past: readonly { season: PastSeason; records: readonly PickRecord[] }[];
  readonly records: readonly PickRecord[];
  /** What was picked in all, recorded or not. */
  readonly picked: readonly PickRecord[];
  readonly mean: number;
}

/** A site with three finished seasons and one to be forecast. Seasons with fewer than four records are drawn again. */
export function drawOrchard(kind: TableEntry, rng: Sfc32, everyDay = false): Orchard {
  const site = {
    scale: Math.exp(0.4 * rng.normal() - 0.08),
    shift: 8 * rng.normal(),
    widths: Math.exp(0.3 * rng.normal()),
    habit: everyDay ? 1 : 2 + Math.floor(3 * rng.u()),
  };
  const season = () => {
    for (;;) {
      const drawn = drawSeason(kind, site, rng);
      if (drawn.records.length >= 4) return drawn;
    }
  };
  const past = [0, 1, 2].flatMap(() => {
    const { records } = season();
    const summary = summariseSeason(records, kind.expected);
    return summary ? [{ season: summary, records }] : [];
  });
  return { past, ...season(), mean: kind.expected * site.scale };
}

interface Site {
  scale: number;
  shift: number;
  widths: number;
  habit: number;
}

function drawSeason(kind: TableEntry, site: Site, rng: Sfc32) {
  const sd = Math.sqrt(Math.log(1 + kind.cv ** 2));
  const total =
    kind.expected *
    site.scale *
    (rng.u() < kind.failProb ? 0.05 + 0.4 * rng.u() : Math.exp(sd * rng.normal() - sd ** 2 / 2));
  const mid = kind.mid + site.shift + kind.midSd * rng.normal();
  const width = kind.width * site.widths * Math.exp(0.2 * rng.normal());
  const ripe = ripeByDay(mid, width, rng);
  const picked: PickRecord[] = [];
  const records: PickRecord[] = [];
  let hanging = 0;
  let done = 0;
  let next = Number.NEGATIVE_INFINITY;
  let begun = false;
  for (const { day, share } of ripe) {
    hanging = hanging * 0.96 + share * total;
    done += share;
    if (done > 0.985 && hanging < 0.01 * total) break;
    begun ||= hanging >= 0.02 * total;
    if (!begun || day < next || rng.u() < 0.2) continue;
    const kg = hanging * (0.75 + 0.23 * rng.u());
    hanging -= kg;
    picked.push({ t: day, kg });
    if (kg >= 0.002 * total && rng.u() >= 0.06)
      records.push({ t: day, kg: Math.max(0.05, Math.round(20 * kg * (1 + 0.05 * rng.normal())) / 20) });
    next = day + site.habit + (rng.u() < 0.3 ? 1 : 0) + (done > 0.9 ? 2 : 0);
  }
  return { picked, records };
}

/** Share of the crop that ripens on each day: one of four shapes, each day's weather moving it. */
function ripeByDay(mid: number, width: number, rng: Sfc32): { day: number; share: number }[] {
  const sd = width / 2.56;
  const form = rng.u();
  const k = 3 + 6 * rng.u();
  const apart = width * (0.5 + 0.4 * rng.u());
  const second = 0.2 + 0.3 * rng.u();
  const normal = (x: number, m: number, s: number) => Math.exp(-0.5 * ((x - m) / s) ** 2);
  const density = (t: number): number => {
    const x = t - mid;
    if (form < 0.4) {
      const y = x / sd + Math.sqrt(k);
      return y > 0 ? y ** (k - 1) * Math.exp(-y * Math.sqrt(k)) : 0;
    }
    if (form < 0.65) return normal(x, 0, sd);
    if (form < 0.8) return Math.max(0, 1 - (x / (0.75 * width)) ** 2);
    return (1 - second) * normal(x, -apart / 2, width / 4) + second * normal(x, apart / 2, width / 4);
  };
  let weather = 0;
  const days = Array.from({ length: Math.ceil(5 * width) + 40 }, (_, i) => {
    weather = 0.8 * weather + 0.3 * rng.normal();
    const day = Math.round(mid - 2.5 * width - 20) + i;
    return { day, weight: density(day) * Math.exp(weather) };
  });
  const sum = days.reduce((s, d) => s + d.weight, 0);
  return days.map(({ day, weight }) => ({ day, share: weight / sum }));
}
