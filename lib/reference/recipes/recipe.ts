/**
 * A recipe as figures: amounts per kilogram, finish, pack, process row, source. Directions are written by the program
 * from these figures (lib/batch/instructions); no published wording is kept.
 * Masses in grams, shares 0-1, percentages by weight, hours for planning. What is not given is not guessed.
 */
import type { HoldItem } from '../hold-times.ts';
import type { JarSize } from '../jar-sizes.ts';
import type { ProcessProduct } from '../process-times.ts';
import type { Cited } from '../source.ts';
import type { SourceId } from '../sources.ts';
import type { SyrupRow } from '../syrups.ts';
import type { DoseItem } from './dose-items.ts';

export type RecipeKind =
  | 'jam'
  | 'jelly'
  | 'preserve'
  | 'conserve'
  | 'marmalade'
  | 'butter'
  | 'sauce'
  | 'puree'
  | 'whole-fruit'
  | 'pie-filling'
  | 'juice'
  | 'syrup'
  | 'leather'
  | 'dried'
  | 'candied'
  | 'paste'
  | 'freezer-jam'
  | 'fridge-jam'
  | 'frozen'
  | 'blend'
  | 'tomato';

/** Cull is not on the list: it never enters food. */
export type RecipeGrade = 'perfect' | 'blemished' | 'soft';

/** One fruit of the recipe; any of `foodIds` may fill it. Shares are of the prepared weight. */
export interface FruitPart {
  readonly foodIds: readonly string[];
  readonly share: { readonly low: number; readonly typ: number; readonly high: number };
}

/** Grams per kilogram of prepared fruit (of strained juice in a jelly or syrup). */
export interface Dose {
  readonly item: DoseItem;
  readonly gPerKg: number;
  /** After the finish: its weight is added to the pan target and does not count in the balance. */
  readonly when?: 'after the finish';
}

export interface AcidDose extends Dose {
  readonly purpose: 'gel' | 'flavour' | 'safety dose';
}

/** The published dose of a food by jar, looked up in acid-doses: a floor, never converted from one acid to another. */
export interface JarDose {
  readonly perJarOf: 'tomato' | 'fig' | 'pear-asian';
  readonly purpose: 'safety dose';
}

export interface PectinDose extends Dose {
  readonly from: 'home powder' | 'home stock' | 'bought';
}

/** Juice drawn first: water and juice in grams per kg of fruit as weighed (stalks off, nothing peeled). */
export interface ExtractionRule extends Cited {
  readonly waterGPerKg: number;
  readonly simmerMin: readonly [number, number];
  readonly juiceGPerKg: { readonly low: number; readonly typ: number; readonly high: number };
  readonly by: 'jelly bag' | 'press' | 'steam';
}

export type FinishRule =
  /** Boil until soluble solids reach this, per cent by weight. */
  | { readonly by: 'solids'; readonly brix: number }
  /** Boil hard this long; share of the charge lost is an assumption. */
  | { readonly by: 'boil time'; readonly minutes: number; readonly boilOffShare: number }
  /** Nothing to boil off: jars or packs are filled by weight. */
  | { readonly by: 'weight table'; readonly crop: string }
  /** Jars filled by volume at the density of what is filled: juice. */
  | { readonly by: 'volume' }
  /** Packed as it is, in packs of this many grams. */
  | { readonly by: 'pack'; readonly packG: number }
  /** Dried from one moisture (wet basis, 0-1) to another. */
  | { readonly by: 'drying'; readonly from: number; readonly to: number; readonly packG: number }
  /** Mixed and packed, nothing lost. */
  | { readonly by: 'mixing'; readonly packG: number };

export interface ProcessRule {
  readonly product: ProcessProduct;
  readonly pack: 'hot' | 'raw';
}

/** Crushed fruit or juice by cups: quality warning and stop. `pan`: only the pan limits. */
export type CeilingRule =
  | {
      readonly by: 'cups';
      readonly of: 'crushed fruit' | 'juice';
      readonly gPerCup: number;
      readonly warn: number;
      readonly stop: number;
    }
  | { readonly by: 'pan' }
  | { readonly by: 'nothing' };

export interface ByProduct {
  /** apple-peel-core, apple-pomace, citrus-rind, stones, seeds, skins, pulp. */
  readonly material: string;
  /** Share of the fruit as weighed. */
  readonly share: number;
  readonly use: 'pectin' | 'zest' | 'compost' | 'second run';
  readonly seedsOutFirst: boolean;
}

/** Hours for planning: a fixed part and a part per kg of fruit as weighed. Always an estimate. */
export interface WorkRule {
  readonly activeFixedH: number;
  readonly activeHPerKg: number;
  readonly burnerFixedH: number;
  readonly burnerHPerKg: number;
  readonly status: 'estimate';
}

/** Published: a named publication's recipe followed as written. House: figures of this program, or of the household itself. */
export type RecipeOrigin =
  | {
      readonly standing: 'published';
      readonly sources: readonly SourceId[];
      readonly status: Cited['status'];
      readonly rules: readonly string[];
    }
  | { readonly standing: 'house'; readonly because: string; readonly by?: 'household' };

/** What else is in it that bears on the shelf. */
export type Content =
  | 'ordinary starch'
  | 'cook-type starch'
  | 'dairy or egg'
  | 'gelatine'
  | 'only alcohol'
  | 'oil'
  | 'uncooked';

export interface Recipe {
  readonly id: string;
  readonly title: string;
  readonly kind: RecipeKind;
  readonly fruits: readonly FruitPart[];
  readonly grades: readonly RecipeGrade[];
  readonly extraction: ExtractionRule | null;
  readonly sugar: Dose | null;
  /** Syrup poured over packed fruit, a row of syrups; for quality only. */
  readonly syrup: SyrupRow['id'] | null;
  readonly acid: AcidDose | JarDose | null;
  readonly water: Dose | null;
  readonly pectin: PectinDose | null;
  readonly others: readonly Dose[];
  readonly contents: readonly Content[];
  readonly finish: FinishRule;
  /** Null: no tested process, so never for the shelf. */
  readonly process: ProcessRule | null;
  /** Usual size first. */
  readonly jarSizes: readonly JarSize[];
  readonly ceiling: CeilingRule;
  readonly byProducts: readonly ByProduct[];
  readonly work: WorkRule;
  /** Where it may go instead of the shelf, and how long: the rows of hold-times under these items. */
  readonly keeps: readonly HoldItem[];
  readonly origin: RecipeOrigin;
  /** True for every house recipe: kept and given by the household, not sold as tested. */
  readonly householdOnly: boolean;
}
