import type { Scenario } from './scenario.ts';

/** "Never" in the week fields of `Out`. */
export const NEVER = 255;

/**
 * Results with the season kept: "full at some time before harvest" is a property of whole years and cannot be had from
 * weekly quantiles. The season is the innermost index everywhere.
 */
export interface Out {
  readonly n: number;
  readonly weeks: number;
  readonly products: number;
  /** Jars at the end of the week, [week][product][season]. */
  readonly stock: Uint16Array;
  /** Room taken at the end of the week, [week][store][season], cm or l. */
  readonly store: Float32Array;
  readonly storeUnits: readonly ('cm' | 'l')[];
  /** First week a jar was wanted and none left; first week that ended at 0; first week made again: [product][season], 255 = never. */
  readonly runOut: Uint8Array;
  readonly empty: Uint8Array;
  readonly firstMade: Uint8Array;
  /** Jars over the whole season, [product][season]: used by the household, given or sold, wanted in vain, past best-by, made. */
  readonly used: Uint16Array;
  readonly given: Uint16Array;
  readonly unmet: Uint16Array;
  readonly expired: Uint16Array;
  readonly made: Uint16Array;
  /** Lids used so far, [week][lid][season], and lids on hand at the start. */
  readonly lids: Uint16Array;
  readonly lidStock: readonly number[];
  /** Empty jars on hand, [week][container][season]; 0 for unlimited ones. */
  readonly empties: Int16Array;
  /** Sugar used so far, kg, [week][season]. */
  readonly sugar: Float32Array;
  /** Kitchen hours used, [season]. */
  readonly hours: Float32Array;
  /** Fruit lost, eaten fresh, and left at the end, kg, [crop][season]. */
  readonly lostKg: Float32Array;
  readonly freshKg: Float32Array;
  readonly leftKg: Float32Array;
}

/** Room for `n` seasons. `shared`: memory that several threads may fill, each its own range of seasons. */
export function allocOut(sc: Scenario, n: number, shared = false): Out {
  const bytes = (size: number) => (shared ? new SharedArrayBuffer(size) : new ArrayBuffer(size));
  const u8 = (k: number) => new Uint8Array(bytes(k));
  const u16 = (k: number) => new Uint16Array(bytes(2 * k));
  const f32 = (k: number) => new Float32Array(bytes(4 * k));
  const each = sc.products.length * n;
  return {
    n,
    weeks: sc.weeks,
    products: sc.products.length,
    stock: u16(sc.weeks * each),
    store: f32(sc.weeks * sc.stores.length * n),
    storeUnits: sc.stores.map((s) => s.unit),
    runOut: u8(each),
    empty: u8(each),
    firstMade: u8(each),
    used: u16(each),
    given: u16(each),
    unmet: u16(each),
    expired: u16(each),
    made: u16(each),
    lids: u16(sc.weeks * sc.lids.length * n),
    lidStock: sc.lids.map((l) => l.stock),
    empties: new Int16Array(bytes(2 * sc.weeks * sc.containers.length * n)),
    sugar: f32(sc.weeks * n),
    hours: f32(n),
    lostKg: f32(sc.crops.length * n),
    freshKg: f32(sc.crops.length * n),
    leftKg: f32(sc.crops.length * n),
  };
}
