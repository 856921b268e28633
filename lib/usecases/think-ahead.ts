/**
 * A recipe thought through before any fruit is weighed: for so many kilograms, for so many jars, or to fill a pan; with another
 * pectin or acid; in another kitchen. What differs from the recipe as written is shown beside it.
 */
import { type BatchSheet, batchSheet } from '#lib/batch/batch-sheet.ts';
import { isByWeight } from '#lib/batch/measured-doses.ts';
import { phAfterAcid } from '#lib/batch/ph-advice.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { readingsOf } from '#lib/store/batch-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { type AheadView, aheadView } from './ahead-view.ts';
import { type Bench, benchQuestion, jarKindFor, panFor } from './bench-question.ts';
import type { Context } from './context.ts';
import { type ExchangedAcid, type ExchangedPectin, swapped } from './exchange-dose.ts';
import { learntFigures } from './learn-figures.ts';
import { type ShownFigure, shown } from './shown-figure.ts';

/** One amount counts: jars before the pan, the pan before kilograms. */
export interface AheadAsk {
  jars: number | null;
  fillPan: boolean;
  kg: number | null;
  /** Codes; null for the main kitchen, its first jam pan and the recipe's usual jar. */
  kitchen: string | null;
  pan: string | null;
  jar: string | null;
  /** Instead of the recipe's own. */
  pectin: ExchangedPectin | null;
  acid: ExchangedAcid | null;
  /** Of the raw fruit, read with a meter; for advice only. */
  measuredPh: number | null;
}

/** When nothing is said: a pan of jam. */
const START_G = 1500;
const MOST_G = 200_000;

export type Ahead = AheadView & {
  /** What the acid would make of the pH that was measured; null when none was. */
  phAfter: ShownFigure | null;
};

export async function thinkAhead(ctx: Context, recipe: Recipe, ask: AheadAsk): Promise<Ahead | Refusal> {
  const kitchen = ctx.place.kitchens.find((k) => k.code === ask.kitchen) ?? mainKitchen(ctx.place);
  if (!kitchen) return { refused: 'there is no kitchen on record yet' };
  const set = swapped(recipe, ask);
  if ('refused' in set) return set;
  const pan = panFor(kitchen, ask.pan);
  const read = await readingsOf(ctx.db, ctx.place.id, { kind: 'water', day: ctx.today, kitchenId: kitchen.id });
  const water = read.at(-1);
  const bench: Omit<Bench, 'recipe' | 'fruit' | 'asWritten'> = {
    kitchen,
    pan,
    jarKind: jarKindFor(ctx, recipe, ask.jar),
    waterC: water ? water.value / 100 : null,
    method: 'boiling-water',
    learnt: await learntFigures(ctx, kitchen, pan),
    asked: {},
  };
  const sheetFor = (r: Recipe, grams: number): BatchSheet =>
    batchSheet(benchQuestion(ctx, { ...bench, recipe: r, fruit: inUsualShares(r, grams), asWritten: r === recipe }));
  const grams = gramsAsked(ask, (g) => sheetFor(set, g));
  if (typeof grams !== 'number') return grams;
  const view = aheadView(ctx.place, {
    now: sheetFor(set, grams),
    asWritten: set === recipe ? null : sheetFor(recipe, grams),
  });
  return { ...view, phAfter: phAfterOf(set, ask.measuredPh) };
}

/** Fruit as weighed, each food in its usual share. */
function inUsualShares(recipe: Recipe, grams: number): Bench['fruit'] {
  const parts = recipe.fruits.filter((p) => p.share.typ > 0);
  const all = parts.reduce((s, p) => s + p.share.typ, 0);
  return parts.map((p) => ({
    foodId: p.foodIds[0] as string,
    grams: Math.round((grams * p.share.typ) / all),
    grade: 'perfect',
    groundFall: false,
  }));
}

function gramsAsked(ask: AheadAsk, sheetOf: (grams: number) => BatchSheet): number | Refusal {
  if (ask.jars !== null) {
    const wanted = ask.jars;
    const grams = leastGrams((g) => sheetOf(g).jars.value >= wanted);
    return grams ?? { refused: `${wanted} jars would take more than ${MOST_G / 1000} kg of fruit` };
  }
  if (ask.fillPan) {
    // One gram more than the most that one pan takes would need a second.
    const over = leastGrams((g) => sheetOf(g).pans.length > 1);
    return over === null ? { refused: 'no pan limits this recipe: say kilograms or jars' } : over - 1;
  }
  return ask.kg === null ? START_G : Math.round(ask.kg * 1000);
}

/**
 * Whole grams for which `enough` holds while a gram less is not enough, by bisection. Where a second pan costs a jar there may be
 * a smaller weight that does too. Null when 200 kg is not enough.
 */
export function leastGrams(enough: (grams: number) => boolean): number | null {
  let low = 0;
  let high = 1000;
  while (!enough(high)) {
    if (high === MOST_G) return null;
    low = high;
    high = Math.min(MOST_G, 2 * high);
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function phAfterOf(recipe: Recipe, measuredPh: number | null): ShownFigure | null {
  const foodId = recipe.fruits.length === 1 ? recipe.fruits[0]?.foodIds[0] : undefined;
  if (measuredPh === null || !foodId) return null;
  const grams = (item: DoseItem): number =>
    recipe.acid && isByWeight(recipe.acid) && recipe.acid.item === item ? recipe.acid.gPerKg : 0;
  const after = phAfterAcid({
    foodId,
    measuredPh,
    citricG: grams('citric-acid'),
    lemonJuiceG: grams('lemon-juice-bottled') + grams('lemon-juice-fresh'),
  });
  return after && shown(after);
}
