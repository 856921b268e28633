/** "Think it through" on a recipe's page: what stands in the address, worked out, and the choices of its form. */
import { aheadForm } from '#lib/forms/ahead.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { jarKindFor, panFor } from './bench-question.ts';
import type { Context } from './context.ts';
import { exchangeOptions } from './exchange-dose.ts';
import { type Ahead, thinkAhead } from './think-ahead.ts';

type Option = { value: string; label: string };

export interface AheadPage {
  view: Ahead | null;
  refused: string | null;
  /** What the answer is for, also where nothing was chosen. */
  chosen: { kitchen: string; pan: string; jar: string };
  kitchens: Option[];
  pans: Option[];
  jars: Option[];
  pectins: Option[];
  acids: Option[];
}

/** Null for a recipe that is not made in a pan: there is nothing to scale or exchange. */
export async function readAhead(
  ctx: Context,
  recipe: Recipe,
  typed: Readonly<Record<string, string | undefined>>,
): Promise<AheadPage | null> {
  if (!['solids', 'boil time', 'mixing'].includes(recipe.finish.by)) return null;
  const parsed = aheadForm.safeParse(typed);
  const told = parsed.success
    ? await thinkAhead(ctx, recipe, parsed.data)
    : { refused: parsed.error.issues.map((i) => i.message).join('; ') };
  const kitchen = ctx.place.kitchens.find((k) => k.code === typed.kitchen) ?? mainKitchen(ctx.place);
  return {
    view: 'refused' in told ? null : told,
    refused: 'refused' in told ? told.refused : null,
    chosen: {
      kitchen: kitchen?.code ?? '',
      pan: kitchen ? (panFor(kitchen, typed.pan ?? null)?.code ?? '') : '',
      jar: jarKindFor(ctx, recipe, typed.jar ?? null)?.code ?? '',
    },
    kitchens: ctx.place.kitchens.map((k) => ({ value: k.code, label: `${k.label}, ${k.altitudeM} m` })),
    pans: kitchen?.pans.filter((p) => p.maxFillPercent !== null).map((p) => ({ value: p.code, label: p.label })) ?? [],
    jars:
      recipe.jarSizes.length === 0
        ? []
        : ctx.place.jarKinds.filter((k) => k.size !== null).map((k) => ({ value: k.code, label: k.label })),
    ...exchangeOptions(),
  };
}
