import { RING_WEEKS, type Scenario } from './scenario.ts';

/** Everything one simulated season changes, in small arrays that stay in first-level cache. */
export interface SeasonState {
  /** [product][best-by week]. */
  readonly buckets: Uint16Array;
  readonly total: Int32Array;
  /** No jar of the product sits before this bucket. */
  readonly head: Int32Array;
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
