/**
 * Everything a plan is computed from, as one snapshot. Every thing has an id and is found by its id, never by its
 * place in a list. Units: fruit kg, volume L, time h, areas m2, pectin and acid g, money in the smallest unit of the
 * place's currency (or any one unit, used throughout). Day 0 is today; the last planned day is `horizon - 1`.
 * A figure left out means the default named beside it.
 */
import type { PlainDate } from '../units/plain-date.ts';

export type FruitGrade = 'perfect' | 'blemished' | 'soft';
export type StoragePlace = 'shelf' | 'fridge' | 'freezer';

export interface PlanCrop {
  id: string;
  name?: string;
  /** Own pectin, g per kg fruit (0). */
  pectin?: number;
  /** Own acid, g per kg fruit (0). */
  acid?: number;
  /** Worth of a kg that keeps past the horizon (0). */
  carryValue?: number;
  /** Cost of wasting a kg, on top of the general weight (0). */
  wasteCost?: number;
}

export interface PlanLot {
  id: string;
  crop: string;
  grade: FruitGrade;
  /** As weighed, kg. */
  kg: number;
  /** First day it can be used, 0 or later. */
  avail: number;
  /** Last day it can be used, that day included; may lie past the horizon. */
  useBy: number;
  /** From this day on it counts as soft (never). */
  softFrom?: number;
  /** Share trimmed away per day of waiting, compounded (0). */
  lossPerDay?: number;
  /** Money per kg and day of waiting (0). */
  waitCost?: number;
}

export interface FruitUse {
  crop: string;
  grades: readonly FruitGrade[];
  /** Least and greatest share of the pan's fruit (0 and 1). */
  minShare?: number;
  maxShare?: number;
}

/** A vessel and its times. */
export interface RecipeMode {
  id: string;
  vessel: string;
  minKg: number;
  maxKg: number;
  /** Hands needed per batch, and per kg (0). */
  activeH: number;
  activePerKg?: number;
  /** One ring or burner in use per batch, and per kg (0). */
  burnerH: number;
  burnerPerKg?: number;
  /** The vessel is taken per batch. */
  vesselH: number;
}

export interface PlanRecipe {
  id: string;
  name?: string;
  product: string;
  fruit: readonly FruitUse[];
  /** Greatest share of soft fruit in the pan (1). */
  softMax?: number;
  /** L made per kg of fruit. */
  yieldPerKg: number;
  /** kg of the instance's sugar material per kg fruit (0). */
  sugar?: number;
  /** Further supplies per kg fruit, e.g. vinegar, freezer bags. */
  needs?: readonly { material: string; perKg: number }[];
  /** Wanted in the pan, g per kg fruit (0 = not looked at). */
  pectin?: number;
  acid?: number;
  /** Pectin materials this recipe may take (all). */
  pectinSources?: readonly string[];
  /** Once a day, shared by its batches (0). */
  setupH?: number;
  maxBatchesPerDay: number;
  modes: readonly RecipeMode[];
  /** Jar sizes it may be filled into; none = it is not jarred. */
  jars?: readonly string[];
  /** Present when the filled jars go through the canner; hours for each load (0). */
  canner?: { activeH?: number; burnerH?: number };
  /** Trays taken while the product dries. */
  dryer?: { m2PerKg: number; days: number };
  /** kg put into the freezer per kg fruit (0). */
  freezeKgPerKg?: number;
  leftovers?: readonly { crop: string; leftover: string; kgPerKg: number }[];
}

export interface PlanMaterial {
  id: string;
  name?: string;
  unit?: string;
  stock: number;
  /** Per unit; absent = cannot be bought. */
  price?: number;
  /** Days on which it can be bought (every day). */
  shopDays?: readonly number[];
  /** Greatest purchase on one shop day (no limit). */
  maxBuy?: number;
  /** What comes by itself, e.g. jars coming back. */
  arrivals?: readonly { day: number; amount: number }[];
  /** Worth of a unit left at the end (0), for at most `carryMax` units (no limit). */
  keepValue?: number;
  carryMax?: number;
}

export interface PlanJar {
  id: string;
  name?: string;
  litres: number;
  /** The jar itself, its lid, its band: whatever one filled jar takes. */
  uses: readonly { material: string; each: number }[];
  /** Jars of this size in one canner load. */
  perLoad: number;
  /** Room it takes in store, L (its own litres). */
  storeLitres?: number;
}

export interface PlanLeftover {
  id: string;
  name?: string;
  dryDays: number;
  /** Units of the material per kg wet. */
  dryYield: number;
  m2PerKg: number;
  becomes: string;
}

/** A source of pectin or of acid: g active per unit; greatest units per kg fruit (no limit). */
export interface PlanSource {
  material: string;
  strength: number;
  maxPerKg?: number;
}

/** Values fall from segment to segment: the tenth jar is worth less than the first. */
export interface PlanProduct {
  id: string;
  name?: string;
  place: StoragePlace;
  segments: readonly { litres: number; value: number }[];
}

export interface PlanOutlet {
  id: string;
  name?: string;
  kind: 'eat' | 'sell' | 'give' | 'press' | 'compost';
  crop: string;
  grades: readonly FruitGrade[];
  days: readonly number[];
  /** kg a day (no limit). */
  maxKg?: number;
  value: number;
}

export interface PlanDay {
  /** People's hours, all together. */
  active: number;
  /** Further hours that may be bought dear. */
  overtime: number;
  burner: number;
  cannerLoads: number;
  /** m2 of trays. */
  dryer: number;
  /** kg the freezer can freeze in a day (no limit). */
  freezeKg?: number;
  /** Hours each kind of vessel can be used (24). */
  vesselH?: Readonly<Record<string, number>>;
  /** Whose hours they are; when given, they add up to `active`. */
  people?: readonly { id: string; hours: number }[];
}

export interface PlanWeights {
  /** Per hour of work. */
  labour: number;
  /** Per hour of overtime, on top. */
  overtime: number;
  /** Per burner hour. */
  burner: number;
  /** Per kg of fruit wasted. */
  waste: number;
  /** Per litre over the free room and day. */
  overflow: number;
  /** Per unit (hour, load, m2, kg frozen) that a pinned plan lacks. */
  shortage: number;
  /** Per kg below a least batch that was pinned. */
  underfill: number;
  /** Per batch and day of delay; about 0.002 makes equal plans early (0). */
  tieBreak?: number;
}

export interface PlanPin {
  recipe: string;
  day: number;
  batches: number;
  mode?: string;
  /** Exactly so many, not at least. */
  exact?: boolean;
}

export interface FormerPlan {
  batches: readonly { recipe: string; day: number; batches: number }[];
  /** Money per batch moved within three days; less for later days. */
  weight: number;
}

export interface PlanInstance {
  /** For showing the days; the arithmetic does not look at it. */
  firstDay?: PlainDate;
  horizon: number;
  crops: readonly PlanCrop[];
  lots: readonly PlanLot[];
  recipes: readonly PlanRecipe[];
  products: readonly PlanProduct[];
  vessels: readonly { id: string; name?: string; count: number }[];
  jars: readonly PlanJar[];
  materials: readonly PlanMaterial[];
  leftovers: readonly PlanLeftover[];
  pectinSources: readonly PlanSource[];
  acidSources: readonly PlanSource[];
  outlets: readonly PlanOutlet[];
  /** One per day of the horizon. */
  days: readonly PlanDay[];
  /** Free litres at the end of each day: what is there and what will be eaten already counted. */
  storage: readonly { place: StoragePlace; free: readonly number[] }[];
  weights: PlanWeights;
  variety?: { min: number; penalty: number };
  pins?: readonly PlanPin[];
  former?: FormerPlan;
  sugarMaterial?: string;
}

/** A possible season: its own lots, and how much it weighs. Weights add up to 1. */
export interface PlanFuture {
  probability: number;
  lots: readonly PlanLot[];
}
