// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario
import type { KernelTables } from './kernel-tables.ts';
import { mix32 } from './random.ts';
import type { SeasonState } from './season-state.ts';

/** Why a batch was not made, in the order asked; 0 = it was made. */
export type Refusal = 0 | 1 | 2 | 3 | 4 | 5 | 6;
export const MADE: Refusal = 0;
const NO_FRUIT: Refusal = 1;
const NO_HOURS: Refusal = 2;
const NO_EMPTIES: Refusal = 3;
const NO_LIDS: Refusal = 4;
const NO_ROOM: Refusal = 5;
const NO_SUGAR: Refusal = 6;

const TINY = 1e-9;
const INV_32 = 2 ** -32;
const SQRT_12 = Math.sqrt(12);

/**
 * One whole batch, or the first reason against it. Fruit, sugar and hours are those of the recipe; the jars it gives vary.
 * `planned` batches count their hours but are not held back by them.
 */
export function makeBatch(
  t: KernelTables,
  st: SeasonState,
  batch: { product: number; week: number; planned: boolean },
): Refusal {
  const { product: p, week } = batch;
  const spec = t.products[p]!;
  const crop = t.crop[p]!;
  const fruitKg = t.fruitPerBatch[p]!;
  if (crop >= 0 && st.fruit[crop]! < fruitKg - TINY) return NO_FRUIT;
  if (!batch.planned && st.hoursLeft < spec.hoursPerBatch - TINY) return NO_HOURS;
  const jars = jarsOfBatch(t, st, p);
  const container = t.container[p]!;
  if (t.counted[container]! && st.empties[container]! < jars) return NO_EMPTIES;
  const lid = t.lidOf[p]!;
  if (lid >= 0 && st.lids[lid]! + jars > t.lidLimit[lid]!) return NO_LIDS;
  const store = t.store[p]!;
  if (
    t.hardCapacity[store]! !== Number.POSITIVE_INFINITY &&
    roomTaken(t, st, { store, product: p, jars }) > t.hardCapacity[store]! + TINY
  )
    return NO_ROOM;
  const sugarKg = spec.jarsPerBatch * spec.sugarKgPerJar;
  if (sugarKg > 0 && st.sugarKg + sugarKg > t.sugarLimitKg + TINY) return NO_SUGAR;

  if (crop >= 0) st.fruit[crop] = Math.max(0, st.fruit[crop]! - fruitKg);
  st.hoursLeft -= spec.hoursPerBatch;
  st.hoursUsed += spec.hoursPerBatch;
  st.sugarKg += sugarKg;
  if (t.counted[container]!) st.empties[container]! -= jars;
  if (lid >= 0) st.lids[lid]! += jars;
  const bestBy = Math.min(t.weeks, week + spec.lifeWeeks);
  st.buckets[p * t.buckets + bestBy]! += jars;
  if (bestBy < st.head[p]!) st.head[p] = bestBy;
  st.total[p]! += jars;
  st.made[p]! += jars;
  if (st.firstMade[p]! > week) st.firstMade[p] = week;
  return MADE;
}

function jarsOfBatch(t: KernelTables, st: SeasonState, p: number): number {
  const { jarsPerBatch: n, yieldSd } = t.products[p]!;
  if (!(yieldSd > 0)) return n;
  const x = mix32(mix32(st.kitchenKey ^ t.productUid[p]!) ^ Math.imul(st.made[p]! + 1, 0x9e3779b1)) ^ st.flip;
  return Math.max(1, n + Math.round(((x >>> 0) * INV_32 - 0.5) * SQRT_12 * yieldSd * n));
}

function roomTaken(t: KernelTables, st: SeasonState, more: { store: number; product: number; jars: number }): number {
  let room = st.openNow[more.store]!;
  for (let p = 0; p < t.store.length; p++) {
    if (t.store[p] !== more.store) continue;
    const jars = st.total[p]! + (p === more.product ? more.jars : 0);
    room += Math.ceil(jars / t.perColumn[p]!) * t.perUnit[p]!;
  }
  return room;
}
