/** A scenario as flat arrays, so that the simulated weeks touch no object. */
import { checkScenario } from './check-scenario.ts';
import { uid } from './random.ts';
import type { Intention, ProductSpec, Scenario } from './scenario.ts';

export interface HeldEvent {
  readonly product: number;
  readonly mean: number;
  readonly fixed: boolean;
  readonly uid: number;
  readonly returnProb: number;
}

export interface KernelTables {
  readonly weeks: number;
  readonly missWeekProb: number;
  readonly hours: Float64Array;
  /** Infinity where sugar is only counted. */
  readonly sugarLimitKg: number;
  readonly products: readonly ProductSpec[];
  readonly productUid: Int32Array;
  readonly store: Int32Array;
  readonly container: Int32Array;
  readonly crop: Int32Array;
  readonly perColumn: Int32Array;
  /** 1 / perColumn. */
  readonly invColumn: Float64Array;
  readonly perUnit: Float64Array;
  /** Products store by store; those of store i stand from `storeFrom[i]` to before `storeFrom[i + 1]`. */
  readonly byStore: Int32Array;
  readonly storeFrom: Int32Array;
  /** Buckets of one product: its jars by best-by week; the last bucket holds all that outlast the season. */
  readonly buckets: number;
  readonly startBuckets: Uint16Array;
  readonly startTotal: Int32Array;
  readonly usePerWeek: Float64Array;
  /** [product][week]. */
  readonly profile: Float64Array;
  /** Products whose use changes with the week. */
  readonly seasonal: Int32Array;
  /** p0 = e^(-mean * zeroRate); count recursion l = mean * invPhi, q. */
  readonly zeroRate: Float64Array;
  readonly invPhi: Float64Array;
  readonly q: Float64Array;
  readonly returnProb: Float64Array;
  readonly returnLag: Int32Array;
  readonly openStore: Int32Array;
  readonly openUnit: Float64Array;
  readonly openWeeks: Int32Array;
  /** Of the product's container; -1 none. */
  readonly lidOf: Int32Array;
  /** What one batch takes; fruit 0 where the product needs none. */
  readonly fruitPerBatch: Float64Array;
  readonly hoursPerBatch: Float64Array;
  readonly counted: Uint8Array;
  readonly lidLimit: Float64Array;
  /** Room of hard stores, Infinity of others. */
  readonly hardCapacity: Float64Array;
  readonly startEmpties: Int32Array;
  readonly startFruit: Float64Array;
  readonly keepShare: Float64Array;
  readonly freshKg: Float64Array;
  readonly intentions: readonly Intention[];
  /** Something meant to be made needs no fruit. */
  readonly fruitless: boolean;
  /** As in `Scenario.batchWorth`. */
  readonly batchWorth: readonly Float32Array[] | undefined;
  readonly eventsOf: readonly (readonly HeldEvent[])[];
  readonly plannedOf: readonly (readonly { product: number; batches: number; prob: number; uid: number }[])[];
}

const placesOf = (products: readonly ProductSpec[], fits: (p: ProductSpec) => boolean): number[] =>
  products.flatMap((p, i) => (fits(p) ? [i] : []));

/** Throws RangeError (see `checkScenario`) for anything the counters could not hold. */
export function kernelTables(sc: Scenario): KernelTables {
  checkScenario(sc);
  const { products, weeks } = sc;
  const ints = (of: (p: ProductSpec) => number) => Int32Array.from(products, of);
  const floats = (of: (p: ProductSpec) => number) => Float64Array.from(products, of);
  const buckets = weeks + 1;
  const startBuckets = new Uint16Array(products.length * buckets);
  const startTotal = new Int32Array(products.length);
  for (const lot of sc.lots) {
    const at = lot.product * buckets + Math.min(weeks, Math.max(0, lot.bestByWeek));
    startBuckets[at] = (startBuckets[at] as number) + lot.jars;
    startTotal[lot.product] = (startTotal[lot.product] as number) + lot.jars;
  }
  const profile = new Float64Array(products.length * weeks).fill(1);
  products.forEach((p, i) => {
    if (p.profile) profile.set(p.profile.slice(0, weeks), i * weeks);
  });
  const weekly = <T>(of: (week: number) => T): T[] => Array.from({ length: weeks }, (_, w) => of(w));
  return {
    weeks,
    missWeekProb: sc.missWeekProb,
    hours: Float64Array.from(sc.hours),
    sugarLimitKg: sc.sugarLimitKg ?? Number.POSITIVE_INFINITY,
    products,
    productUid: ints((p) => uid(p.id)),
    store: ints((p) => p.store),
    container: ints((p) => p.container),
    crop: ints((p) => p.crop),
    perColumn: ints((p) => p.perColumn),
    invColumn: floats((p) => 1 / p.perColumn),
    perUnit: floats((p) => p.perUnit),
    byStore: Int32Array.from(sc.stores.flatMap((_, i) => placesOf(products, (p) => p.store === i))),
    storeFrom: Int32Array.from({ length: sc.stores.length + 1 }, (_, i) => products.filter((p) => p.store < i).length),
    buckets,
    startBuckets,
    startTotal,
    usePerWeek: floats((p) => p.usePerWeek),
    profile,
    seasonal: Int32Array.from(placesOf(products, (p) => p.profile !== undefined)),
    zeroRate: floats((p) => (p.dispersion > 1 ? Math.log(p.dispersion) / (p.dispersion - 1) : 1)),
    invPhi: floats((p) => 1 / p.dispersion),
    q: floats((p) => 1 - 1 / p.dispersion),
    returnProb: floats((p) => p.returnProb),
    returnLag: ints((p) => p.returnLagWeeks),
    openStore: ints((p) => (p.openWeeks > 0 ? p.openStore : -1)),
    openUnit: floats((p) => p.openUnit),
    openWeeks: ints((p) => p.openWeeks),
    fruitPerBatch: floats((p) => (p.crop < 0 ? 0 : p.jarsPerBatch * p.kgPerJar)),
    hoursPerBatch: floats((p) => p.hoursPerBatch),
    lidOf: ints((p) => sc.containers[p.container]?.lid ?? -1),
    counted: Uint8Array.from(sc.containers, (c) => (c.unlimited ? 0 : 1)),
    lidLimit: Float64Array.from(sc.lids, (l) => (l.limited ? l.stock : Number.POSITIVE_INFINITY)),
    hardCapacity: Float64Array.from(sc.stores, (s) => (s.hard ? s.capacity : Number.POSITIVE_INFINITY)),
    startEmpties: Int32Array.from(sc.containers, (c) => (c.unlimited ? 0 : c.empties)),
    startFruit: Float64Array.from(sc.crops, (c) => c.onHandKg),
    keepShare: Float64Array.from(sc.crops, (c) => c.keepPerWeek),
    freshKg: Float64Array.from(sc.crops, (c) => c.freshKgPerWeek),
    intentions: sc.intentions,
    fruitless: sc.intentions.some((i) => (products[i.product] as ProductSpec).crop < 0),
    batchWorth: sc.batchWorth,
    eventsOf: weekly((w) =>
      sc.events.filter((e) => e.week === w).map((e) => ({ ...e, fixed: e.fixed === true, uid: uid(e.id) })),
    ),
    plannedOf: weekly((w) => sc.planned.filter((b) => b.week === w).map((b) => ({ ...b, uid: uid(b.id) }))),
  };
}
