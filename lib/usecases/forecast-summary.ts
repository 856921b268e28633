/** What is kept of a forecast: ranges by week, properties of whole seasons, and what to buy. The seasons themselves are not. */
// biome-ignore-all lint/style/noNonNullAssertion: indices run over the results' own sizes
import type { Out } from '#lib/forecast/out.ts';
import { bands, emptyByWeek, overflow, quantilesByCount, storeBands } from '#lib/forecast/summary.ts';
import type { CropOutlook, Quantiles } from './forecast-harvest.ts';
import type { Checked } from './season-checks.ts';
import type { ForecastInput, LineMeta } from './season-scenario.ts';
import { LENT_JARS } from './season-stores.ts';
import type { WhatIf } from './season-what-if.ts';

export interface StoreOutlook {
  id: string;
  label: string;
  basis: string;
  unit: 'cm' | 'l';
  capacity: number;
  weeks: Quantiles[];
  /** A few of the seasons tried, from a lean one to a full one. */
  samples: number[][];
  over: { share: number; mostOftenFrom: number | null };
}
export interface LineOutlook extends LineMeta {
  weeks: Quantiles[];
  /** Share of seasons with none left at the end of each week. */
  gone: number[];
  /** Share of seasons in which none is left before the next harvest. */
  none: number;
  /** Twenty seasons evenly through all tried: week in which none is left, null = lasts. */
  dots: (number | null)[];
  /** First week by which none is left in half, and in seven tenths, of the seasons. */
  goneHalf: number | null;
  goneSeven: number | null;
  madeJars: Quantiles;
  /** Still there half a year past its best-before day, jars on average. */
  stale: number;
}
export interface Shopping {
  id: string;
  label: string;
  onHand: number;
  /** What all the seasons' jars took: half the time, 8 and 9 times in 10. To buy on top of what is on hand. */
  need: { half: number; eight: number; nine: number };
  buy: { half: number; eight: number; nine: number };
  /** First week in which one season in ten is short; null = none is. */
  shortFrom: number | null;
  /** Rounded up to: boxes of 12 lids, single jars, whole kg. */
  step: number;
}
export interface ForecastSummary {
  n: number;
  weeks: number;
  today: string;
  stores: StoreOutlook[];
  lines: LineOutlook[];
  harvest: CropOutlook[];
  lids: Shopping[];
  jars: Shopping[];
  sugar: Shopping | null;
  hoursPerWeek: number;
  plannedBatches: number;
  /** Changes tried on the same seasons; none until all seasons are in. */
  whatIf: WhatIf[];
  /** What would have been said on earlier days, and what came. */
  checks: Checked[];
}

const PS = [0.1, 0.25, 0.5, 0.75, 0.9] as const;
const named = (q: readonly number[]): Quantiles => ({ p10: q[0]!, p25: q[1]!, p50: q[2]!, p75: q[3]!, p90: q[4]! });
const round = (x: number, step: number): number => Number((Math.round(x / step) * step).toFixed(3));

export function forecastSummary(input: ForecastInput, out: Out, harvest: CropOutlook[]): ForecastSummary {
  const sc = input.scenario;
  return {
    n: out.n,
    weeks: out.weeks,
    today: input.today,
    stores: sc.stores.map((_, i) => storeOutlook(input, out, i)),
    lines: input.lines.map((meta, p) => lineOutlook(meta, out, p)),
    harvest,
    lids: sc.lids.map((lid, i) =>
      shopping(out, {
        id: lid.id,
        label: 'Lids, regular',
        onHand: lid.stock,
        step: 12,
        more: input.lidMargin,
        used: (w, s) => out.lids[(w * sc.lids.length + i) * out.n + s]!,
      }),
    ),
    jars: sc.containers.flatMap((c, i) => {
      if (c.unlimited) return [];
      const label = input.lines.find((l) => l.item === c.id)?.itemLabel ?? c.id;
      // What has been drawn of the lent jars too: empties on hand less what stands there now.
      const drawn = (w: number, s: number) => c.empties - out.empties[(w * sc.containers.length + i) * out.n + s]!;
      return [
        shopping(out, {
          id: c.id,
          label: `Jars, ${label}`,
          onHand: c.empties - LENT_JARS,
          step: 1,
          more: input.breakage,
          used: drawn,
        }),
      ];
    }),
    sugar: shopping(out, {
      id: 'sugar',
      label: 'Sugar',
      onHand: Math.floor(input.sugarOnHandG / 1000),
      step: 1,
      more: 0,
      used: (w, s) => out.sugar[w * out.n + s]!,
    }),
    hoursPerWeek: sc.hours[0] ?? 0,
    plannedBatches: sc.planned.reduce((n, b) => n + b.batches, 0),
    whatIf: [],
    checks: [],
  };
}

function storeOutlook(input: ForecastInput, out: Out, i: number): StoreOutlook {
  const spec = input.scenario.stores[i]!;
  const { label, basis } = input.stores[i]!;
  const over = overflow(out, i, spec.capacity);
  return {
    id: spec.id,
    label,
    basis,
    unit: spec.unit,
    capacity: spec.capacity,
    weeks: Array.from({ length: out.weeks }, (_, w) => named(storeBands(out, w, i, PS).map((x) => round(x, 0.1)))),
    samples: sampleSeasons(out, i).map((s) =>
      Array.from({ length: out.weeks }, (_, w) => round(out.store[(w * out.storeUnits.length + i) * out.n + s]!, 0.1)),
    ),
    over:
      spec.capacity > 0 ? { share: over.share, mostOftenFrom: over.mostOftenFrom } : { share: 0, mostOftenFrom: null },
  };
}

/** Seasons at the 15th, 40th, 65th and 90th place in a hundred by their fullest week. */
function sampleSeasons(out: Out, store: number): number[] {
  const most = Float64Array.from({ length: out.n }, (_, s) => {
    let top = 0;
    for (let w = 0; w < out.weeks; w++)
      top = Math.max(top, out.store[(w * out.storeUnits.length + store) * out.n + s]!);
    return top;
  });
  const order = Uint32Array.from(most.keys()).sort((a, b) => most[a]! - most[b]! || a - b);
  return [0.15, 0.4, 0.65, 0.9].map((p) => order[Math.floor(p * out.n)]!);
}

function lineOutlook(meta: LineMeta, out: Out, p: number): LineOutlook {
  const weeks = noneLeftWeeks(out, p, meta);
  const goneBy = (share: number): number | null => weeks[Math.max(1, Math.ceil(share * out.n - 1e-9)) - 1] ?? null;
  const mean = (values: ArrayLike<number>) => {
    let sum = 0;
    for (let s = 0; s < out.n; s++) sum += values[p * out.n + s]!;
    return sum / out.n;
  };
  return {
    ...meta,
    weeks: Array.from({ length: out.weeks }, (_, w) => named(bands(out, w, p, PS))),
    gone: [...emptyByWeek(out, p)].map((x) => round(x, 0.001)),
    none: weeks.length / out.n,
    dots: Array.from({ length: 20 }, (_, i) => goneBy((i + 0.5) / 20)),
    goneHalf: goneBy(0.5),
    goneSeven: goneBy(0.7),
    madeJars: named(quantilesByCount(out.made, p * out.n, out.n, PS)),
    stale: round(mean(out.expired), 0.1),
  };
}

/** First week with none left from the end of the season under way to the next harvest, sorted; only seasons in which it comes to that. */
export function noneLeftWeeks(out: Out, p: number, span: { fromWeek: number; toWeek: number }): number[] {
  const weeks: number[] = [];
  for (let s = 0; s < out.n; s++) {
    for (let w = span.fromWeek; w < Math.min(out.weeks, span.toWeek); w++) {
      if (out.stock[(w * out.products + p) * out.n + s]! > 0) continue;
      weeks.push(w);
      break;
    }
  }
  return weeks.sort((a, b) => a - b);
}

interface Counted {
  id: string;
  label: string;
  onHand: number;
  step: number;
  /** Share added for breakage and spoiled lids. */
  more: number;
  /** Drawn from what is on hand by the end of a week, in one season. Not below 0 where more came back than went. */
  used: (week: number, season: number) => number;
}

function shopping(out: Out, c: Counted): Shopping {
  const most = new Float64Array(out.n);
  let shortFrom: number | null = null;
  for (let w = 0; w < out.weeks; w++) {
    let short = 0;
    for (let s = 0; s < out.n; s++) {
      most[s] = Math.max(most[s]!, c.used(w, s) * (1 + c.more));
      if (most[s]! > c.onHand) short++;
    }
    if (shortFrom === null && short >= 0.1 * out.n) shortFrom = w;
  }
  most.sort();
  const need = (p: number) => Math.ceil(most[Math.max(1, Math.ceil(p * out.n)) - 1]! - 1e-6);
  const buy = (p: number) => Math.ceil(Math.max(0, need(p) - c.onHand) / c.step) * c.step;
  return {
    id: c.id,
    label: c.label,
    onHand: c.onHand,
    need: { half: need(0.5), eight: need(0.8), nine: need(0.9) },
    buy: { half: buy(0.5), eight: buy(0.8), nine: buy(0.9) },
    shortFrom,
    step: c.step,
  };
}
