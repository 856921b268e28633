/** Another pectin or another acid in a recipe. */
import { isByWeight } from '#lib/batch/measured-doses.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import { type DoseItem, doseItem } from '#lib/reference/recipes/dose-items.ts';
import { OWN_ACIDS, OWN_PECTINS, type OwnAcid, type OwnPectin } from '#lib/reference/recipes/own-recipe.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';

/** Grams a kilogram of fruit or juice; null for the recipe's own amount of it. */
export interface ExchangedPectin {
  item: OwnPectin | 'none';
  gPerKg: number | null;
}
export interface ExchangedAcid {
  item: OwnAcid | 'none';
  gPerKg: number | null;
}

/** The recipe itself when nothing is exchanged. A tested acid dose is neither exchanged nor lowered. */
export function swapped(
  recipe: Recipe,
  ask: { pectin: ExchangedPectin | null; acid: ExchangedAcid | null },
): Recipe | Refusal {
  const changes: Partial<Pick<Recipe, 'pectin' | 'acid'>>[] = [];
  if (ask.acid) {
    if (recipe.acid?.purpose === 'safety dose')
      return { refused: 'the acid of this recipe is a tested dose: it is not exchanged for another and not lowered' };
    const { item } = ask.acid;
    const own = recipe.acid && isByWeight(recipe.acid) && recipe.acid.item === item ? recipe.acid.gPerKg : null;
    const gPerKg = ask.acid.gPerKg ?? own;
    if (item === 'none') changes.push({ acid: null });
    else if (gPerKg === null) return { refused: 'how much of the other acid goes in is missing' };
    else changes.push({ acid: { item, gPerKg, purpose: 'gel' } });
  }
  if (ask.pectin) {
    const { item } = ask.pectin;
    const gPerKg = ask.pectin.gPerKg ?? (recipe.pectin?.item === item ? recipe.pectin.gPerKg : null);
    if (item === 'none') changes.push({ pectin: null });
    else if (gPerKg === null) return { refused: 'how much of the other pectin goes in is missing' };
    else changes.push({ pectin: { item, gPerKg, from: OWN_PECTINS[item] } });
  }
  return changes.length === 0 ? recipe : Object.assign({}, recipe, ...changes);
}

type Option = { value: string; label: string };

/** The recipe's own pectin and acid, none, and what may stand in for them. */
export const exchangeOptions = (): { pectins: Option[]; acids: Option[] } => ({
  pectins: [...UNCHANGED, ...doseOptions(Object.keys(OWN_PECTINS) as OwnPectin[])],
  acids: [...UNCHANGED, ...doseOptions(OWN_ACIDS)],
});

const UNCHANGED: readonly Option[] = [
  { value: '', label: 'as written' },
  { value: 'none', label: 'none' },
];

/** Items by their names, to choose from. */
export const doseOptions = (items: readonly DoseItem[]): Option[] =>
  items.map((i) => ({ value: i, label: doseItem(i).name }));
