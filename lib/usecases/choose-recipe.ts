/** Which recipes of the book this fruit may become here, and where each would go. */
import type { FruitUsed } from '#lib/batch/fruit-used.ts';
import { storageClass } from '#lib/batch/gate.ts';
import { byWeightG, type HeldLot } from '#lib/ledger/lot.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import type { Context } from './context.ts';
import { placeOf } from './plan-recipes.ts';
import { recipeHere, recipesHere } from './recipes-here.ts';

export interface RecipeChoice {
  id: string;
  title: string;
  kind: string;
  /** "shelf, 10 min here", "freezer", "no tested process: freeze it". */
  goes: string;
  standing: 'published' | 'house recipe';
  note: string | null;
}

export interface FruitChoice {
  id: string;
  code: string;
  label: string;
  grade: string;
  grams: number;
  chosen: boolean;
}

export interface ChooserView {
  fruit: FruitChoice[];
  recipes: RecipeChoice[];
}

export async function readChooser(ctx: Context, lotIds: readonly string[]): Promise<ChooserView> {
  const held = (await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit', 'frozen'] })).filter((l) => l.grade !== 'cull');
  // What turns stands before what is frozen.
  const lots = [...held.filter((l) => l.kind === 'fruit'), ...held.filter((l) => isPlainFruit(ctx, l))];
  const chosen = lots.filter((l) => lotIds.includes(l.id));
  const foods = new Set(chosen.map((l) => l.foodId));
  const kitchen = mainKitchen(ctx.place);
  const fitting = recipesHere(ctx.place).filter(
    (r) =>
      foods.size > 0 &&
      r.fruits.some((p) => p.share.low > 0 && p.foodIds.some((id) => foods.has(id))) &&
      [...foods].every((f) => r.fruits.some((p) => p.foodIds.includes(f ?? ''))),
  );
  return {
    fruit: lots.map((l) => ({
      id: l.id,
      code: l.code,
      label: l.label,
      grade: l.grade ?? '',
      grams: byWeightG(l) ?? 0,
      chosen: lotIds.includes(l.id),
    })),
    recipes: kitchen ? fitting.map((r) => choiceOf(r, fruitOfLots(chosen), feet(kitchen.altitudeM))) : [],
  };
}

/** Packs of fruit frozen as it is, whose weight is on record. */
function isPlainFruit(ctx: Context, lot: HeldLot): boolean {
  if (lot.kind !== 'frozen') return false;
  const recipe = lot.recipeId ? recipeHere(ctx.place, lot.recipeId) : null;
  return recipe?.kind === 'frozen' && !recipe.sugar && lot.foodId !== null && !lot.hold && byWeightG(lot) !== null;
}

const fruitOfLots = (lots: readonly HeldLot[]): FruitUsed[] =>
  lots.map((l) => ({
    foodId: l.foodId ?? '',
    grams: byWeightG(l) ?? 0,
    grade: l.grade ?? 'perfect',
    groundFall: l.groundFall,
  }));

/** The fruits a recipe needs in their usual shares, each by the first food it names. */
export const usualFruit = (recipe: Recipe): FruitUsed[] =>
  recipe.fruits
    .filter((p) => p.share.typ > 0)
    .map((p) => ({ foodId: p.foodIds[0] ?? '', grams: 1000 * p.share.typ, grade: 'perfect', groundFall: false }));

/** A recipe as offered for this fruit in a kitchen at this altitude, feet: the strictest fruit of a mixture decides. */
export function choiceOf(recipe: Recipe, fruit: readonly FruitUsed[], altitudeFt: number): RecipeChoice {
  const verdict = storageClass({
    recipe,
    fruit,
    jar: { size: (recipe.jarSizes[0] ?? 'half-pint') as JarSize, madeForCanning: true },
    altitudeFt,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
  });
  const cold = verdict.ways.find((w) => w !== 'shelf');
  const needs = verdict.needs.includes('ph-reading') ? ', once a pH reading allows it' : '';
  return {
    id: recipe.id,
    title: recipe.title,
    kind: recipe.kind.replaceAll('-', ' '),
    goes:
      verdict.shelf || verdict.needs.length > 0
        ? `shelf, ${verdict.process?.minutes} min here${needs}`
        : cold
          ? `${cold}`
          : 'no published way to keep it',
    standing: recipe.origin.standing === 'published' ? 'published' : 'house recipe',
    // What is frozen or dried by its own recipe needs no word on why it is not canned.
    note: verdict.shelf || placeOf(recipe.kind) !== 'shelf' ? null : (verdict.reasons[0] ?? null),
  };
}
