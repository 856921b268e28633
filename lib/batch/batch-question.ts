/** What a batch sheet is asked: recipe, the fruit that was weighed, kitchen, pan, jars, canners, and what the cook changed. */
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { Prices } from './batch-cost.ts';
import type { Canner } from './canner-clock.ts';
import type { Kitchen } from './finish-temperature.ts';
import type { SealMethod } from './gate.ts';
import type { HomePectinLot } from './home-pectin.ts';
import type { JarKind } from './jar-fill.ts';
import type { AskedAmounts } from './measured-doses.ts';
import type { PhReading } from './ph-reading.ts';
import type { FruitLot } from './prepared-fruit.ts';

export interface Pan {
  readonly litres: number;
  /** Share of the pan that may be filled, 0-1. */
  readonly maxFill: number;
  /** Water lost at a full boil, g/min; null while it was never timed. */
  readonly evapGPerMin: number | null;
}

export interface BatchQuestion {
  readonly recipe: Recipe;
  readonly fruit: readonly FruitLot[];
  readonly jar: JarKind;
  readonly kitchen: Kitchen;
  readonly method: SealMethod;
  readonly pan: Pan | null;
  readonly canners: readonly Canner[];
  /** Film on pan and tools and foam, grams a batch, and the gain by inversion (share): learnt, or 100 g and 0. */
  readonly settings: { readonly lossG: number; readonly inversionGain: number; readonly targetBrix?: number };
  readonly asked?: {
    readonly batches?: number;
    /** Grams for one batch. */
    readonly amounts?: AskedAmounts;
    readonly juiceG?: number;
    readonly juiceBrix?: number;
  };
  readonly asWritten?: boolean;
  readonly acidDoseGiven?: boolean;
  readonly reading?: PhReading;
  readonly prices?: Prices;
  /** Home powder and pectin stock in line for the dose, oldest first. */
  readonly homePectin?: readonly HomePectinLot[];
}
