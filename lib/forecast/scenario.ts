/**
 * One season ahead as plain numbers: what is on hand, what ripens, what is used, what is meant to be made.
 * Weeks count from 0 = the first simulated week. Masses in kg, runs of shelf in cm, volumes in litres. Records refer to each
 * other by position in their lists; ids are names of random streams, so they must stay the same from run to run.
 */

export interface StoreSpec {
  readonly id: string;
  readonly capacity: number;
  readonly unit: 'cm' | 'l';
  /** Making stops when the next batch would not fit. Otherwise an overflow is only reported. */
  readonly hard?: boolean;
}

export interface ContainerSpec {
  readonly id: string;
  /** Empties on hand. */
  readonly empties: number;
  /** Position of its lid; -1 for none. */
  readonly lid: number;
  readonly diameterCm: number;
  readonly heightCm: number;
  readonly ml: number;
  /** Bags and the like: never counted, never short. */
  readonly unlimited?: boolean;
}

export interface LidSpec {
  readonly id: string;
  readonly stock: number;
  /** Making stops when they run out. Otherwise their use is only counted. */
  readonly limited?: boolean;
}

export interface CropSpec {
  readonly id: string;
  /** Share of the fruit on hand that lasts another week. */
  readonly keepPerWeek: number;
  readonly freshKgPerWeek: number;
  readonly onHandKg: number;
}

export interface ProductSpec {
  readonly id: string;
  readonly store: number;
  readonly container: number;
  /** Shelf: jars in one column and cm a column takes. Litres: 1 and litres a piece takes. */
  readonly perColumn: number;
  readonly perUnit: number;
  /** Best-by week = week made + this. */
  readonly lifeWeeks: number;
  readonly usePerWeek: number;
  /** Use by week relative to the average, one value a week, mean 1; flat when left out. */
  readonly profile?: readonly number[];
  /** How well the rate is known: coefficient of variation of the rate itself. */
  readonly rateCv: number;
  /** Variance over mean of one week's use, 1 or more. */
  readonly dispersion: number;
  /** Position of its crop; -1 for none. */
  readonly crop: number;
  readonly kgPerJar: number;
  readonly sugarKgPerJar: number;
  readonly jarsPerBatch: number;
  readonly hoursPerBatch: number;
  /** Relative spread of the jars a batch gives. */
  readonly yieldSd: number;
  /** Share of used jars that come back, and after how many weeks (1 to 15). */
  readonly returnProb: number;
  readonly returnLagWeeks: number;
  /** Store an opened jar stands in (-1 none), the room it takes there and for how many weeks (under 16). */
  readonly openStore: number;
  readonly openUnit: number;
  readonly openWeeks: number;
}

/** Jars on hand. One past its best-by counts as due in week 0. */
export interface Lot {
  readonly product: number;
  readonly jars: number;
  readonly bestByWeek: number;
  /** Counted from memory: the true number lies within this many of it. Counted by hand when left out. */
  readonly offBy?: number;
}

/** Gifts (a fixed number) and market days (a Poisson count). Jars given come back after 8 weeks. */
export interface EventSpec {
  readonly id: string;
  readonly week: number;
  readonly product: number;
  readonly mean: number;
  readonly fixed?: boolean;
  readonly returnProb: number;
}

export interface PlannedBatch {
  readonly id: string;
  readonly week: number;
  readonly product: number;
  readonly batches: number;
  readonly prob: number;
}

/** A standing intention. With `Scenario.batchWorth` only `product` is read. */
export interface Intention {
  readonly product: number;
  readonly target: number;
  readonly fromWeek: number;
  readonly toWeek: number;
  readonly maxBatchesPerWeek: number;
}

export interface Scenario {
  readonly weeks: number;
  readonly stores: readonly StoreSpec[];
  readonly containers: readonly ContainerSpec[];
  readonly lids: readonly LidSpec[];
  readonly crops: readonly CropSpec[];
  readonly products: readonly ProductSpec[];
  readonly lots: readonly Lot[];
  readonly events: readonly EventSpec[];
  readonly planned: readonly PlannedBatch[];
  readonly intentions: readonly Intention[];
  /** Kitchen hours of each week. */
  readonly hours: readonly number[];
  /** Chance that a week's kitchen time falls through. */
  readonly missWeekProb: number;
  /** Sugar that may be used in all, kg; without it sugar is only counted. */
  readonly sugarLimitKg?: number;
  /** Worth of one more batch per hour, by product and jars in stock (`batchWorth`). Present: best batch first. Absent: list order. */
  readonly batchWorth?: readonly Float32Array[];
}

/** Weeks until a given or sold jar comes back. From memory, unmeasured. */
export const EVENT_RETURN_WEEKS = 8;
/** Length of the rings of returning and opened jars, weeks. */
export const RING_WEEKS = 16;
