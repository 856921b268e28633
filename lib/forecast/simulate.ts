/**
 * The pantry through the season, one season at a time.
 *
 * Order within a week (results depend on it): empties back; fruit in; fresh eating; planned batches; standing intentions;
 * fruit losses; household draw, first expired first out; gifts and market; past best-by removed; tally.
 *
 * Random numbers are addressed by (seed, season, name, week), never drawn in sequence, so a thread may take any range of
 * seasons. Only + - * and Math.imul decide what happens in a week. One step a function, each a short loop over flat arrays:
 * the compiler is done with short functions sooner, and keeps their arrays in registers.
 */
// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario, lengths follow from the scenario
import { followIntentions } from './follow-intentions.ts';
import { holdEvent } from './hold-event.ts';
import { householdUse, setMeanUse } from './household-use.ts';
import { type KernelTables, kernelTables } from './kernel-tables.ts';
import { makeBatch } from './make-batch.ts';
import type { Out } from './out.ts';
import { key, mix32 } from './random.ts';
import { recountLots } from './recount-lots.ts';
import { RING_WEEKS, type Scenario } from './scenario.ts';
import type { Draws } from './season-draws.ts';
import { endSeason, type SeasonState, seasonState, startSeason } from './season-state.ts';
import { flushTile, newTile, TILE } from './season-tile.ts';
import { weekTally } from './week-tally.ts';

export interface Simulation {
  readonly scenario: Scenario;
  readonly draws: Draws;
  readonly out: Out;
}

const RING_MASK = RING_WEEKS - 1;
const INV_32 = 2 ** -32;
const KITCHEN = 0x51ed270b;
/** Under this the fruit of a crop is not worth counting; it goes to the losses. */
const LAST_FRUIT_KG = 0.05;
const WHOLE = 1e-9;

/** Simulates seasons `from` to `to - 1` into `run.out`. Throws RangeError for a scenario beyond the counters' limits. */
export function simulate(run: Simulation, from = 0, to = run.draws.n): void {
  const { scenario, draws, out } = run;
  const t = kernelTables(scenario);
  const st = seasonState(scenario);
  const tile = newTile(scenario);
  for (let tileFrom = from; tileFrom < to; tileFrom += TILE) {
    const tileTo = Math.min(to, tileFrom + TILE);
    for (let s = tileFrom; s < tileTo; s++) {
      startSeason(t, st);
      const seasonKey = key(draws.seed, draws.antithetic ? s >> 1 : s, 7) | 0;
      takeDraws(t, st, { draws, season: s, seasonKey });
      recountLots(scenario, st, { seasonKey, flip: st.flip });
      for (let week = 0; week < t.weeks; week++) {
        comeBack(t, st, week);
        const anyFruit = fruitIn(t, st, week);
        kitchenWeek(t, st, { week, anyFruit });
        if (anyFruit) fruitLosses(t, st);
        householdUse(t, st, week);
        for (const event of t.eventsOf[week]!) holdEvent(t, st, { event, week });
        weekTally(t, st, { tile, row: s - tileFrom, week });
      }
      endSeason(st, out, s);
    }
    flushTile(tile, out, { from: tileFrom, to: tileTo });
  }
}

/** What was drawn for the whole season: its keys, how fast each product is used, and its harvest week by week. */
function takeDraws(
  t: KernelTables,
  st: SeasonState,
  { draws, season: s, seasonKey }: { draws: Draws; season: number; seasonKey: number },
): void {
  st.flip = draws.antithetic && (s & 1) === 1 ? -1 : 0;
  st.kitchenKey = mix32(seasonKey ^ KITCHEN) | 0;
  for (let p = 0; p < st.rate.length; p++) {
    st.rate[p] = t.usePerWeek[p]! * draws.mult[p * draws.n + s]!;
    st.useKey[p] = mix32(seasonKey ^ t.productUid[p]!) | 0;
    setMeanUse(t, st, { product: p, week: 0 });
  }
  const { harvest } = st;
  for (let c = 0; c < st.fruit.length; c++) {
    const bank = draws.banks[c]!;
    const scale = draws.cropScale?.[c] ?? 1;
    const row = draws.cropIdx[c * draws.n + s]! * t.weeks;
    for (let w = 0; w < t.weeks; w++) harvest[c * t.weeks + w] = bank[row + w]! * scale;
  }
}

/** Empties that come back this week, whole jars only, and room in the fridge where an opened jar is finished. */
function comeBack(t: KernelTables, st: SeasonState, week: number): void {
  const { carry, ring, empties, openNow, openRing } = st;
  const slot = week & RING_MASK;
  for (let c = 0; c < carry.length; c++) {
    const back = carry[c]! + ring[c * RING_WEEKS + slot]!;
    ring[c * RING_WEEKS + slot] = 0;
    const whole = Math.floor(back + WHOLE);
    carry[c] = back - whole;
    if (t.counted[c]!) empties[c]! += whole;
  }
  for (let i = 0; i < openNow.length; i++) {
    const left = openNow[i]! - openRing[i * RING_WEEKS + slot]!;
    openNow[i] = left > WHOLE ? left : 0;
    openRing[i * RING_WEEKS + slot] = 0;
  }
}

/** Fruit in and some of it eaten fresh. Returns whether there is any. */
function fruitIn(t: KernelTables, st: SeasonState, week: number): boolean {
  const { fruit, fresh, harvest } = st;
  let any = false;
  for (let c = 0; c < fruit.length; c++) {
    const kg = fruit[c]! + harvest[c * t.weeks + week]!;
    if (kg > 0) {
      any = true;
      const eaten = Math.min(kg, t.freshKg[c]!);
      fresh[c]! += eaten;
      fruit[c] = kg - eaten;
    }
  }
  return any;
}

/** Planned batches, each with its chance, then what the kitchen means to make with the hours left. */
function kitchenWeek(t: KernelTables, st: SeasonState, { week, anyFruit }: { week: number; anyFruit: boolean }): void {
  const fallsThrough = (mix32(st.kitchenKey ^ Math.imul(week + 1, 0xc2b2ae35)) ^ st.flip) >>> 0;
  st.hoursLeft = fallsThrough * INV_32 < t.missWeekProb ? 0 : t.hours[week]!;
  for (const b of t.plannedOf[week]!) {
    const x = (mix32(mix32(st.kitchenKey ^ b.uid) ^ Math.imul(week + 17, 0x27d4eb2f)) ^ st.flip) >>> 0;
    if (x * INV_32 < b.prob)
      for (let k = 0; k < b.batches; k++) if (makeBatch(t, st, { product: b.product, week, planned: true })) break;
  }
  if ((anyFruit || t.fruitless) && st.hoursLeft > 0) followIntentions(t, st, week);
}

function fruitLosses(t: KernelTables, st: SeasonState): void {
  const { fruit, lost } = st;
  for (let c = 0; c < fruit.length; c++) {
    const kg = fruit[c]!;
    if (kg <= 0) continue;
    const kept = kg * t.keepShare[c]!;
    fruit[c] = kept < LAST_FRUIT_KG ? 0 : kept;
    lost[c]! += kg - fruit[c]!;
  }
}
