// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario, lengths follow from the scenario
import type { KernelTables } from './kernel-tables.ts';
import { NEVER, type Out } from './out.ts';
import { RING_WEEKS, type Scenario } from './scenario.ts';

/** Everything one simulated season changes, in small arrays that stay in first-level cache. */
export interface SeasonState {
  /** [product][best-by week]. */
  readonly buckets: Uint16Array;
  readonly total: Int32Array;
  /** No jar of the product sits before this bucket. */
  readonly head: Int32Array;
  /** This season's use a week and the key of its random numbers. */
  readonly rate: Float64Array;
  readonly useKey: Int32Array;
  /** This week's chance that nothing is wanted, in 2^-32ths, and the start of the count recursion (`household-use.ts`). */
  readonly noneWanted: Float64Array;
  readonly countStart: Float64Array;
  /** Products of which something is wanted this week, and their random numbers. */
  readonly asking: Int32Array;
  readonly askedAt: Float64Array;
  readonly used: Int32Array;
  readonly given: Int32Array;
  readonly unmet: Int32Array;
  readonly expired: Int32Array;
  readonly made: Int32Array;
  readonly runOut: Uint8Array;
  readonly empty: Uint8Array;
  readonly firstMade: Uint8Array;
  readonly empties: Int32Array;
  /** Part of a jar on its way back that has not made up a whole one. */
  readonly carry: Float64Array;
  readonly ring: Float64Array;
  readonly openNow: Float64Array;
  readonly openRing: Float64Array;
  readonly lids: Int32Array;
  readonly fruit: Float64Array;
  /** This season's harvest, kg, [crop][week]. */
  readonly harvest: Float64Array;
  readonly lost: Float64Array;
  readonly fresh: Float64Array;
  /** Products still in question this week. */
  readonly candidates: Int32Array;
  kitchenKey: number;
  flip: number;
  hoursLeft: number;
  hoursUsed: number;
  sugarKg: number;
}

export function seasonState(sc: Scenario): SeasonState {
  const p = sc.products.length;
  const i32 = (k: number) => new Int32Array(k);
  const f64 = (k: number) => new Float64Array(k);
  return {
    buckets: new Uint16Array(p * (sc.weeks + 1)),
    total: i32(p),
    head: i32(p),
    rate: f64(p),
    useKey: i32(p),
    noneWanted: f64(p),
    countStart: f64(p),
    asking: i32(p),
    askedAt: f64(p),
    used: i32(p),
    given: i32(p),
    unmet: i32(p),
    expired: i32(p),
    made: i32(p),
    runOut: new Uint8Array(p),
    empty: new Uint8Array(p),
    firstMade: new Uint8Array(p),
    empties: i32(sc.containers.length),
    carry: f64(sc.containers.length),
    ring: f64(sc.containers.length * RING_WEEKS),
    openNow: f64(sc.stores.length),
    openRing: f64(sc.stores.length * RING_WEEKS),
    lids: i32(sc.lids.length),
    fruit: f64(sc.crops.length),
    harvest: f64(sc.crops.length * sc.weeks),
    lost: f64(sc.crops.length),
    fresh: f64(sc.crops.length),
    candidates: i32(sc.intentions.length),
    kitchenKey: 0,
    flip: 0,
    hoursLeft: 0,
    hoursUsed: 0,
    sugarKg: 0,
  };
}

export function startSeason(t: KernelTables, st: SeasonState): void {
  st.buckets.set(t.startBuckets);
  st.total.set(t.startTotal);
  st.empties.set(t.startEmpties);
  st.fruit.set(t.startFruit);
  for (const a of [st.head, st.used, st.given, st.unmet, st.expired, st.made, st.lids]) a.fill(0);
  for (const a of [st.carry, st.ring, st.openNow, st.openRing, st.lost, st.fresh]) a.fill(0);
  for (const a of [st.runOut, st.empty, st.firstMade]) a.fill(NEVER);
  st.hoursUsed = 0;
  st.sugarKg = 0;
}

/** Writes what season `s` came to into `out`. */
export function endSeason(st: SeasonState, out: Out, s: number): void {
  for (let p = 0; p < out.products; p++) {
    const at = p * out.n + s;
    out.runOut[at] = st.runOut[p]!;
    out.empty[at] = st.empty[p]!;
    out.firstMade[at] = st.firstMade[p]!;
    out.used[at] = st.used[p]!;
    out.given[at] = st.given[p]!;
    out.unmet[at] = st.unmet[p]!;
    out.expired[at] = st.expired[p]!;
    out.made[at] = st.made[p]!;
  }
  for (let c = 0; c < st.fruit.length; c++) {
    out.lostKg[c * out.n + s] = st.lost[c]!;
    out.freshKg[c * out.n + s] = st.fresh[c]!;
    out.leftKg[c * out.n + s] = st.fruit[c]!;
  }
  out.hours[s] = st.hoursUsed;
}
