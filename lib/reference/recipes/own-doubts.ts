/** What is doubtful in a recipe people wrote: amounts outside what the recipes of the book take. Said, never refused. */
import { type DoseItem, doseItem } from './dose-items.ts';
import type { OwnFigures } from './own-recipe.ts';
import type { Dose, Recipe } from './recipe.ts';
import { RECIPES } from './recipe-book.ts';

/** Cooks stop a little before or after the book; per cent of solids. Estimate. */
const FINISH_SLACK = 3;

/** Of what no recipe of the book takes, so many grams a kilogram are doubtful. Estimate. */
const MUCH_G = 50;

/** One sentence a doubt, with the figure and the book's own span for this kind (of any kind for acid, pectin and the rest). */
export function ownDoubts(f: OwnFigures): string[] {
  const alike = RECIPES.filter((r) => r.kind === f.kind);
  const whose = `the book’s recipes for ${f.kind.replace('-', ' ')}`;
  const solids = alike.flatMap((r) => (r.finish.by === 'solids' ? [r.finish.brix] : []));
  const found = [
    doubtOf(doseItem('sugar').name, f.sugarG, { taken: taken(alike, 'sugar'), whose }),
    doubtOf(doseItem('water').name, f.waterG, { taken: taken(alike, 'water'), whose }),
    ...[f.acid, f.pectin, ...f.extras].map((d) =>
      d
        ? doubtOf(doseItem(d.item).name, d.gPerKg, { taken: taken(RECIPES, d.item), whose: 'the book’s recipes' })
        : null,
    ),
  ].filter((d) => d !== null);
  const [low, high] = [Math.min(...solids), Math.max(...solids)];
  return f.brix !== null && solids.length > 0 && (f.brix < low - FINISH_SLACK || f.brix > high + FINISH_SLACK)
    ? [...found, `${f.brix} % solids: ${whose} stop at ${span(low, high)} %`]
    : found;
}

/** What each recipe takes of it; nothing where it is left out. */
const taken = (among: readonly Recipe[], item: DoseItem): number[] =>
  among.map((r) =>
    [r.sugar, r.water, r.acid, r.pectin, ...r.others]
      .filter((d): d is Dose => d !== null && 'gPerKg' in d && d.item === item)
      .reduce((sum, d) => sum + d.gPerKg, 0),
  );

function doubtOf(name: string, grams: number, book: { taken: readonly number[]; whose: string }): string | null {
  const low = Math.min(...book.taken);
  const high = Math.max(...book.taken);
  if (high === 0) return grams > MUCH_G ? `${grams} g of ${name} a kg: none of ${book.whose} takes any` : null;
  if (grams >= low && grams <= high) return null;
  return `${grams} g of ${name} a kg: ${book.whose} take ${span(low, high)} g`;
}

const span = (low: number, high: number): string => (low === high ? `${low}` : `${low} to ${high}`);
