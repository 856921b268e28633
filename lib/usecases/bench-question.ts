/** What a batch sheet is asked here: this kitchen, pan, jar and its canners, with the figures learnt and the house's habits. */
import type { BatchQuestion } from '#lib/batch/batch-question.ts';
import type { FruitLot } from '#lib/batch/prepared-fruit.ts';
import { type JarSize, jarSizeOf } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { JarKind, Kitchen, Pan } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import type { Context } from './context.ts';
import type { LearntFigures } from './learn-figures.ts';

export interface Bench {
  recipe: Recipe;
  fruit: readonly FruitLot[];
  kitchen: Kitchen;
  pan: Pan | null;
  jarKind: JarKind | null;
  /** Today's boiling water, °C; null: reckoned from the altitude. */
  waterC: number | null;
  method: BatchQuestion['method'];
  learnt: LearntFigures;
  asked: NonNullable<BatchQuestion['asked']>;
  asWritten: boolean;
}

export function benchQuestion(ctx: Context, b: Bench): BatchQuestion {
  const size = (b.jarKind?.size ?? b.recipe.jarSizes[0] ?? 'half-pint') as JarSize;
  const { settings } = ctx.place;
  return {
    recipe: b.recipe,
    fruit: b.fruit,
    jar: { size, fillMl: jarSizeOf(size).fillMl, madeForCanning: b.jarKind?.canning ?? false },
    kitchen: { altitudeFt: feet(b.kitchen.altitudeM), ...(b.waterC !== null ? { waterBoilsAtC: b.waterC } : {}) },
    method: b.method,
    pan:
      b.pan && b.pan.maxFillPercent !== null
        ? {
            litres: b.pan.ml / 1000,
            maxFill: b.pan.maxFillPercent / 100,
            evapGPerMin: b.learnt.evapGPerMin ?? b.pan.evapGPerMin,
          }
        : null,
    canners: b.kitchen.canners.map((c) => ({
      id: c.code,
      method: c.method,
      jarsPerLoad: Object.fromEntries(
        Object.entries(c.loads).flatMap(([code, n]) =>
          ctx.place.jarKinds.filter((k) => k.code === code && k.size).map((k) => [k.size, n]),
        ),
      ),
      heatUpMin: c.heatUpS / 60,
      reheatMin: c.reheatS / 60,
    })),
    settings: {
      lossG: b.learnt.lossG ?? settings.panLossG,
      inversionGain: settings.invertedShare * INVERSION_GAIN,
    },
    homePectin: b.learnt.homePectin,
    asked: b.asked,
    asWritten: b.asWritten,
    ...(settings.prices ? { prices: settings.prices } : {}),
  };
}

/** A gram of sucrose inverted takes up 0.0526 g of water (molar masses). */
const INVERSION_GAIN = 0.0526;

/** The jar kind of that code, or the recipe's usual one that is here. */
export const jarKindFor = (ctx: Context, recipe: Recipe, code: string | null): JarKind | null =>
  ctx.place.jarKinds.find((k) => k.code === code) ??
  recipe.jarSizes
    .map((size) => ctx.place.jarKinds.find((k) => k.size === size && k.canning))
    .find((k) => k !== undefined) ??
  null;

/** The pan of that code, or the first one that jam is boiled in. */
export const panFor = (kitchen: Kitchen, code: string | null): Pan | null =>
  kitchen.pans.find((p) => p.code === code) ?? kitchen.pans.find((p) => p.maxFillPercent !== null) ?? null;
