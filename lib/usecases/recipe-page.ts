/** One recipe of the book: what goes in by the kilogram, and the minutes of every jar in every kitchen of the place. */
import { fruitOf } from '#lib/reference/fruits.ts';
import { JAR_SIZES, type JarSize, jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { type ProcessTime, processTime } from '#lib/reference/process-times.ts';
import { DOSE_ITEMS } from '#lib/reference/recipes/dose-items.ts';
import { figuresOf } from '#lib/reference/recipes/own-recipe.ts';
import type { Dose, Recipe } from '#lib/reference/recipes/recipe.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { choiceOf, usualFruit } from './choose-recipe.ts';
import type { Context } from './context.ts';
import { ownOffered, recipeHere } from './recipes-here.ts';
import type { ShownFigure } from './shown-figure.ts';

export interface RecipePageView {
  title: string;
  /** Whether the household wrote it, and whether one's own can begin from it. */
  own: { code: string | null; version: number | null; old: boolean; mayCopy: boolean };
  goes: string;
  note: string | null;
  standing: string;
  household: boolean;
  fruits: string[];
  /** Fruits of the recipe that go elsewhere than its first one, with the reason. */
  otherwise: string[];
  /** Grams for each kilogram of prepared fruit, or of strained juice. */
  doses: { name: string; figure: ShownFigure }[];
  per: string;
  acidByJar: string | null;
  /** Where the minutes are printed. */
  minutesFrom: string | null;
  kitchens: { label: string; jars: { jar: string; text: string; refused: boolean }[] }[];
}

/** The page of a recipe, or null when the book has none of that id or the place has no kitchen. */
export function readRecipePage(ctx: Context, id: string): RecipePageView | null {
  const recipe = recipeHere(ctx.place, id);
  const kitchen = mainKitchen(ctx.place);
  if (!recipe || !kitchen) return null;
  const choice = choiceOf(recipe, usualFruit(recipe), feet(kitchen.altitudeM));
  const judged = recipe.fruits
    .flatMap((p) => p.foodIds)
    .map((f) => {
      const { goes, note } = choiceOf(
        recipe,
        [{ foodId: f, grams: 1000, grade: 'perfect', groundFall: false }],
        feet(kitchen.altitudeM),
      );
      return { goes, text: `${fruitOf(f).name}: ${goes}${note ? `. ${note}` : ''}` };
    });
  // Minutes beside a fruit the gate keeps off the shelf would read as leave to can it.
  const canned = judged.some((j) => j.goes.startsWith('shelf')) ? recipe : { ...recipe, process: null };
  return {
    title: recipe.title,
    own: ownStanding(ctx, recipe),
    goes: choice.goes,
    note: choice.note,
    standing:
      recipe.origin.standing === 'published'
        ? `published: ${recipe.origin.sources.map((s) => SOURCES[s].title).join('; ')}`
        : `house recipe: ${recipe.origin.because}`,
    household: recipe.householdOnly,
    fruits: recipe.fruits.map((p) => p.foodIds.map((f) => fruitOf(f).name).join(' or ')),
    otherwise: judged.filter((j) => j.goes !== choice.goes).map((j) => j.text),
    doses: dosesOf(recipe).map((d) => ({ name: DOSE_ITEMS[d.item].name, figure: doseFigure(recipe, d) })),
    per: recipe.extraction ? 'strained juice' : 'prepared fruit',
    acidByJar:
      recipe.acid && 'perJarOf' in recipe.acid
        ? 'The tested acid dose in every jar: its amount for your jar stands on the batch sheet.'
        : null,
    minutesFrom: minutesSource(canned, feet(kitchen.altitudeM)),
    kitchens: ctx.place.kitchens.map((k) => ({ label: k.label, jars: jarMinutes(canned, feet(k.altitudeM)) })),
  };
}

function ownStanding({ place }: Context, recipe: Recipe): RecipePageView['own'] {
  const own = place.ownRecipes.find((r) => r.recipeId === recipe.id);
  return {
    code: own?.code ?? null,
    version: own?.version ?? null,
    old: own !== undefined && !ownOffered(place).includes(own),
    mayCopy: figuresOf(recipe) !== null,
  };
}

const doseFigure = ({ origin, extraction }: Recipe, d: Dose): ShownFigure => ({
  value: d.gPerKg,
  unit: 'g',
  band: null,
  formula: `for each kilogram of ${extraction ? 'strained juice' : 'prepared fruit'}; published cups are turned into grams by the household table`,
  inputs: [],
  source:
    origin.standing === 'published'
      ? origin.sources.map((s) => SOURCES[s].title).join('; ')
      : `house recipe: ${origin.because}`,
  status: origin.standing === 'published' ? origin.status : 'common practice',
});

const dosesOf = (r: Recipe): Dose[] =>
  [r.sugar, r.water, r.acid, r.pectin, ...r.others].filter((d): d is Dose => d !== null && 'gPerKg' in d);

/** Each jar size in a boiling-water canner at this altitude, feet: its tested minutes, or why there are none. */
export function jarMinutes(recipe: Recipe, altitudeFt: number): RecipePageView['kitchens'][number]['jars'] {
  const rule = recipe.process;
  if (!rule) return [];
  const at = (jar: JarSize): ProcessTime => processTime({ ...rule, jar, altitudeFt, method: 'boiling-water' });
  return JAR_SIZES.map(({ size, name }) => {
    const time = at(size);
    if (time.ok) return { jar: name, text: `${time.minutes} min`, refused: false };
    const down = time.nextSizeDown;
    const smaller = down ? at(down) : null;
    const offer = down && smaller?.ok ? `. Take the ${jarSizeOf(down).name}: ${smaller.minutes} min here` : '';
    return { jar: name, text: `${time.reason}${offer}`, refused: true };
  });
}

function minutesSource(recipe: Recipe, altitudeFt: number): string | null {
  const jar = recipe.jarSizes[0];
  if (!recipe.process || !jar) return null;
  const time = processTime({ ...recipe.process, jar, altitudeFt, method: 'boiling-water' });
  return time.ok ? `${SOURCES[time.row.source].title} (${time.row.status})` : null;
}
