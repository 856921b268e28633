/**
 * Keeping dried food. Published pair: most dried fruit 12 months at 60 °F (15.6 °C) and 6 at 80 °F (26.7 °C), airtight and
 * dark (NCHFP / Univ. Georgia, Packaging and Storing Dried Foods); vegetables half of that. Between and beyond the pair the
 * months follow the rate the pair implies (Q10 1.87), only as far as the published range of 4 to 12 months reaches.
 */
import type { Cited } from './source.ts';

export interface DriedLifeRow extends Cited {
  readonly storeTempC: number;
  readonly months: number;
}

export const DRIED_FRUIT_LIFE = [
  { storeTempC: 15.6, months: 12, source: 'NCHFPD', status: 'verified', also: ['DRYSTORE'] },
  { storeTempC: 26.7, months: 6, source: 'NCHFPD', status: 'verified', also: ['DRYSTORE'] },
] as const satisfies readonly DriedLifeRow[];

/** Printed overall range, months. */
export const DRIED_FRUIT_RANGE = { low: 4, high: 12, source: 'NCHFPD', status: 'verified' } as const;

/** Months of dried fruit at a store temperature in °C, never more than 12. Refuses a store where fewer than 4 would be left. */
export function driedFruitMonths(storeTempC: number): { ok: true; months: number } | { ok: false; reason: string } {
  const [cool, warm] = DRIED_FRUIT_LIFE;
  if (!Number.isFinite(storeTempC)) return { ok: false, reason: 'the temperature of the store is missing' };
  const share = (storeTempC - cool.storeTempC) / (warm.storeTempC - cool.storeTempC);
  const months = Math.min(DRIED_FRUIT_RANGE.high, cool.months * (warm.months / cool.months) ** share);
  if (months >= DRIED_FRUIT_RANGE.low) return { ok: true, months };
  return { ok: false, reason: `${storeTempC} °C is warmer than the published range of 4 to 12 months reaches` };
}

/** Conditioning: jar two-thirds full, shaken daily; condensation sends it back to the dryer. */
export const CONDITIONING = {
  days: 7,
  low: 4,
  high: 10,
  source: 'MSU_CONDITION',
  status: 'verified',
  note: '4-10 days; another text, from memory, 7-10; the default of 7 is a rule of this project',
} as const satisfies Cited & Record<string, unknown>;

export interface PasteuriseRow extends Cited {
  readonly how: string;
  readonly temperatureC: number;
  readonly minutes: number;
}

/** Against insects, for sun- or air-dried food: one of the three. */
export const PASTEURISE = [
  { how: 'freezer', temperatureC: -18, minutes: 2880, source: 'PASTEUR_DRY', status: 'verified', also: ['HANG'] },
  { how: 'oven, 160 °F', temperatureC: 71.1, minutes: 30, source: 'PASTEUR_DRY', status: 'verified', also: ['HANG'] },
  { how: 'oven, 175 °F', temperatureC: 79.4, minutes: 15, source: 'PASTEUR_DRY', status: 'verified' },
] as const satisfies readonly PasteuriseRow[];

/** Ways of pasteurising for food dried this way; none for a heated dryer or oven, which food leaves hot (estimate). */
export const pasteuriseAfter = (driedBy: 'dryer' | 'oven' | 'windowsill' | 'sun'): readonly PasteuriseRow[] =>
  driedBy === 'windowsill' || driedBy === 'sun' ? PASTEURISE : [];

export interface DriedKeepingRow extends Cited {
  readonly kind: 'fruit' | 'vegetable' | 'powder' | 'rind' | 'herb';
  /** Its end as a share of dried fruit's at the same temperature. */
  readonly ofFruit: number;
  /** Share of its own end at which to warn. */
  readonly warnAt: number;
}

export const DRIED_KEEPING = [
  { kind: 'fruit', ofFruit: 1, warnAt: 1, source: 'NCHFPD', status: 'verified' },
  { kind: 'vegetable', ofFruit: 0.5, warnAt: 1, source: 'NCHFPD', status: 'verified' },
  {
    kind: 'powder',
    ofFruit: 1,
    warnAt: 0.5,
    source: 'ESTIMATE',
    status: 'estimate',
    note: '6 to 12 months in the cool; its pectin loses some 10-20 % a year at 20 °C',
  },
  { kind: 'rind', ofFruit: 1, warnAt: 0.5, source: 'ESTIMATE', status: 'estimate', note: '6 to 12 months in the cool' },
  { kind: 'herb', ofFruit: 1, warnAt: 1, source: 'ESTIMATE', status: 'estimate' },
] as const satisfies readonly DriedKeepingRow[];

/** Months until the warning and the end at a store temperature, °C. Refuses as `driedFruitMonths` does, and an unknown kind. */
export function driedMonths(
  kind: DriedKeepingRow['kind'],
  storeTempC: number,
): { ok: true; warn: number; end: number } | { ok: false; reason: string } {
  const row = DRIED_KEEPING.find((r) => r.kind === kind);
  if (!row) return { ok: false, reason: `"${kind}" is not a kind of dried food in the table` };
  const fruit = driedFruitMonths(storeTempC);
  if (!fruit.ok) return fruit;
  const end = fruit.months * row.ofFruit;
  return { ok: true, warn: end * row.warnAt, end };
}

export interface GelPoint extends Cited {
  /** Relative humidity of the air, a share. */
  readonly humidity: number;
  /** Grams of water a gram of dry silica gel holds there. */
  readonly waterPerG: number;
}

export const SILICA_GEL = [
  { humidity: 0.24, waterPerG: 0.134, source: 'SIL', status: 'verified' },
  { humidity: 0.5, waterPerG: 0.27, source: 'SIL', status: 'verified', note: 'measured 0.288' },
  { humidity: 0.65, waterPerG: 0.32, source: 'SIL', status: 'verified', note: 'measured 0.33' },
] as const satisfies readonly GelPoint[];

export type IsothermFood = 'apple' | 'herb' | 'citrus-peel' | 'peel-core';

export interface IsothermRow extends Cited {
  readonly id: Exclude<IsothermFood, 'apple'>;
  readonly food: string;
  readonly monolayer: number;
  readonly c: number;
  readonly k: number;
}

/** GAB constants at 25 °C, kg water per kg dry matter; weak (from memory). The apple set is a formula in science. */
export const ISOTHERMS = [
  { id: 'herb', food: 'herbs (mint)', monolayer: 0.075, c: 9, k: 0.93, source: 'MEMORY', status: 'memory' },
  { id: 'citrus-peel', food: 'citrus peel', monolayer: 0.085, c: 10, k: 0.92, source: 'MEMORY', status: 'memory' },
  {
    id: 'peel-core',
    food: 'apple pomace or core and peel powder',
    monolayer: 0.07,
    c: 8,
    k: 0.95,
    source: 'MEMORY',
    status: 'memory',
  },
] as const satisfies readonly IsothermRow[];
