/** The page of a recipe of one's own: the form with what stands in the address, and what the program says to it. */
import { EXTRA_LINES, FRUIT_LINES, ownRecipeForm, ownRecipeText } from '#lib/forms/own-recipe.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { ownDoubts } from '#lib/reference/recipes/own-doubts.ts';
import {
  figuresOf,
  OWN_ACIDS,
  OWN_EXTRAS,
  OWN_KINDS,
  OWN_PECTINS,
  type OwnFigures,
  type OwnPectin,
  ownRecipe,
} from '#lib/reference/recipes/own-recipe.ts';
import type { Context } from './context.ts';
import { doseOptions } from './exchange-dose.ts';
import { recipeHere } from './recipes-here.ts';
import type { ShownFigure } from './shown-figure.ts';
import { thinkAhead } from './think-ahead.ts';

type Option = { value: string; label: string };
type Typed = Readonly<Record<string, string | undefined>>;

export interface OwnRecipeView {
  answer: string;
  props: {
    typed: Record<string, string>;
    kinds: Option[];
    fruits: Option[];
    acids: Option[];
    pectins: Option[];
    extras: Option[];
    fruitLines: readonly number[];
    extraLines: readonly number[];
    preview: {
      goes: string;
      ph: string;
      reasons: string[];
      doubts: string[];
      finish: { label: string; figure: ShownFigure }[];
      jars: { label: string; figure: ShownFigure }[];
      set: { outlook: string } | null;
      names: string[];
    } | null;
    refused: string | null;
    change: string;
  };
}

/** Null when the recipe to begin from, or to change, is not there. */
export async function readOwnRecipe(ctx: Context, query: Typed): Promise<OwnRecipeView | null> {
  const change = query.change ?? '';
  const own = ctx.place.ownRecipes.filter((r) => r.code === change).at(-1);
  if (change && !own) return null;
  const from = query.from ? recipeHere(ctx.place, query.from) : undefined;
  if (query.from && !from) return null;
  const asked = query.asked === 'yes' || query.refused !== undefined;
  const begun = own?.figures ?? (from ? figuresOf(from) : null);
  const typed = asked ? formText(query) : begun ? ownRecipeText(begun) : {};
  const parsed = asked ? ownRecipeForm.safeParse(typed) : null;
  const figures = parsed ? (parsed.success ? parsed.data : null) : begun;
  return {
    answer: own ? `Change ${own.figures.title}` : from ? `My own, from ${from.title}` : 'A recipe of my own',
    props: {
      typed,
      kinds: OWN_KINDS.map((k) => ({ value: k, label: k.replace('-', ' ') })),
      fruits: FRUITS.map((f) => ({ value: f.id, label: f.name })),
      acids: doseOptions(OWN_ACIDS),
      pectins: doseOptions(Object.keys(OWN_PECTINS) as OwnPectin[]),
      extras: doseOptions(OWN_EXTRAS),
      fruitLines: FRUIT_LINES,
      extraLines: EXTRA_LINES,
      preview: figures ? await previewOf(ctx, figures) : null,
      refused: parsed && !parsed.success ? parsed.error.issues.map((i) => i.message).join('; ') : null,
      change,
    },
  };
}

/** The form's own fields of the address. */
const formText = (query: Typed): Record<string, string> =>
  Object.fromEntries(
    Object.entries(query).flatMap(([k, v]) =>
      v === undefined || ['change', 'from', 'asked', 'refused', 'said'].includes(k) ? [] : [[k, v]],
    ),
  );

async function previewOf(ctx: Context, figures: OwnFigures): Promise<OwnRecipeView['props']['preview']> {
  const ahead = await thinkAhead(ctx, ownRecipe('own', figures), {
    jars: null,
    fillPan: false,
    kg: null,
    kitchen: null,
    pan: null,
    jar: null,
    pectin: null,
    acid: null,
    measuredPh: null,
  });
  if ('refused' in ahead) return null;
  const { goes, ph, reasons, finish, jars, set, names } = ahead;
  return { goes, ph, reasons, doubts: ownDoubts(figures), finish, jars, set, names };
}
