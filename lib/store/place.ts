/** A place as the rest of the program sees it: plain values, no rows of the database. */
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { OwnFigures } from '#lib/reference/recipes/own-recipe.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';

export interface Place {
  id: string;
  name: string;
  demo: boolean;
  /** The demo place's own day; null means the real day in `timeZone`. */
  day: PlainDate | null;
  timeZone: string;
  settings: PlaceSettings;
  kitchens: Kitchen[];
  rooms: StoreRoom[];
  containers: Container[];
  jarKinds: JarKind[];
  people: Person[];
  crops: Crop[];
  /** Every version of the recipes the household wrote, oldest first. */
  ownRecipes: OwnRecipe[];
}

/** One version of a recipe the household wrote. */
export interface OwnRecipe {
  /** Id in batches, lines and addresses. */
  recipeId: string;
  code: string;
  version: number;
  retired: boolean;
  figures: OwnFigures;
}

/** The household's own constants, each one a figure it may overrule. */
export interface PlaceSettings {
  targetBrix: number;
  invertedShare: number;
  panLossG: number;
  batchWarnCups: number;
  batchStopCups: number;
  crushedGPerCup: number;
  lidMargin: number;
  breakage: number;
  reserve: number;
  jarsBack: { eaten: number; given: number; sold: number };
  softCapHours: number;
  dayEndsAt: string;
  /** What bought goods cost here, in the smallest unit of money; missing until the household says. */
  prices?: { currency: string; perKg: Partial<Record<DoseItem, number>>; perLid?: number };
  /** Rule card of the place of sale, field by field as typed (lib/labels/rule-card). */
  ruleCard?: Record<string, string>;
  /** Young trees for sale at the nursery bench, by cultivar. */
  nursery?: { cultivar: string; crop: string; forSale: number }[];
  /** The demo's clock: the time its day was set to, and the real instant that was. */
  clock?: { time: string; setAt: string };
}

export interface Kitchen {
  id: string;
  code: string;
  label: string;
  altitudeM: number;
  main: boolean;
  burners: { code: string; watts: number; outdoors: boolean }[];
  pans: Pan[];
  canners: Canner[];
  dryers: { code: string; trays: number; trayCm2: number; gPerTray: number; centiC: number }[];
}
export interface Pan {
  code: string;
  label: string;
  ml: number;
  diameterMm: number | null;
  maxFillPercent: number | null;
  evapGPerMin: number | null;
}
export interface Canner {
  code: string;
  label: string;
  method: 'boiling-water' | 'steam';
  /** Jars per load by jar kind. */
  loads: Record<string, number>;
  heatUpS: number;
  reheatS: number;
}
export interface StoreRoom {
  id: string;
  code: string;
  label: string;
  kind: 'shelf' | 'ambient' | 'fridge' | 'freezer' | 'dry';
  bays: number | null;
  shelvesPerBay: number | null;
  widthMm: number | null;
  depthMm: number | null;
  clearMm: number | null;
  maxGPerShelf: number | null;
  litres: number | null;
  crates: number | null;
  lowC: number | null;
  highC: number | null;
}
export interface Container {
  id: string;
  code: string;
  label: string;
  tareG: number;
  volumeMl: number;
}
export interface JarKind {
  id: string;
  code: string;
  label: string;
  /** Size in the process tables; null where no table knows it. */
  size: string | null;
  fillMl: number;
  pitchMm: number;
  heightMm: number;
  canning: boolean;
}
export interface Person {
  id: string;
  code: string;
  label: string;
  role: string;
  can: string[];
  /** Kitchen minutes by weekday, Monday first. */
  minutes: number[];
}
export interface Crop {
  id: string;
  code: string;
  foodId: string;
  label: string;
  unit: string;
  count: number;
  gPerUnit: number;
  windowFrom: string;
  windowTo: string;
  soldPercent: number;
  eatenPercent: number;
  cullPercent: number;
  plantings: Planting[];
}
export interface Planting {
  code: string;
  row: string;
  position: number | null;
  block: string | null;
  cultivar: string | null;
  rootstock: string | null;
  planted: number | null;
  count: number;
  unit: string;
}

/** The kitchen work is reckoned for unless another is chosen. */
export const mainKitchen = (place: Place): Kitchen | undefined =>
  place.kitchens.find((k) => k.main) ?? place.kitchens[0];
export const roomOfKind = (place: Place, kind: StoreRoom['kind']): StoreRoom | undefined =>
  place.rooms.find((r) => r.kind === kind);
