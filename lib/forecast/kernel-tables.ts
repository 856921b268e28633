/** A scenario as flat arrays, so that the simulated weeks touch no object. */
import { checkScenario } from './check-scenario.ts';
import { uid } from './random.ts';
import type { ProductSpec, Scenario } from './scenario.ts';

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
  readonly perUnit: Float64Array;
  /** Buckets of one product: its jars by best-by week; the last bucket holds all that outlast the season. */
  readonly buckets: number;
  readonly startBuckets: Uint16Array;
  readonly startTotal: Int32Array;
  readonly usePerWeek: Float64Array;
  /** [product][week]. */
  readonly profile: Float64Array;
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
  readonly eventsOf: readonly (readonly {
    product: number;
    mean: number;
    fixed: boolean;
    uid: number;
    returnProb: number;
  }[])[];
  readonly plannedOf: readonly (readonly { product: number; batches: number; prob: number; uid: number }[])[];
}

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
    perUnit: floats((p) => p.perUnit),
    buckets,
    startBuckets,
    startTotal,
    usePerWeek: floats((p) => p.usePerWeek),
    profile,
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
    eventsOf: weekly((w) =>
      sc.events.filter((e) => e.week === w).map((e) => ({ ...e, fixed: e.fixed === true, uid: uid(e.id) })),
    ),
    plannedOf: weekly((w) => sc.planned.filter((b) => b.week === w).map((b) => ({ ...b, uid: uid(b.id) }))),
  };
}
