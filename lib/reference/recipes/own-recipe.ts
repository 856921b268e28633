/**
 * A recipe the household writes: its amounts by the kilogram, made into a recipe of the book's own shape. What it does not
 * write (process row, jars, ceilings, hours, how long it keeps) comes from its kind; a process row is never its to choose.
 */
import { type DoseItem, doseItem } from './dose-items.ts';
import { JELLIES } from './jellies.ts';
import type { AcidDose, Dose, ExtractionRule, FinishRule, FruitPart, PectinDose, Recipe } from './recipe.ts';
import {
  BUTTER_WORK,
  COLD_WORK,
  CRUSHED_CUPS,
  dose,
  house,
  JELLY_WORK,
  JUICE_CUPS,
  LOW_SUGAR_KEEPS,
  type RecipeDraft,
  SPREAD_KEEPS,
  SPREAD_WORK,
} from './recipe-draft.ts';
import { BUTTER_CLASS_BRIX, SPREAD_CLASS_BRIX } from './spread-class.ts';

export const OWN_KINDS = [
  'jam',
  'jelly',
  'preserve',
  'conserve',
  'marmalade',
  'butter',
  'paste',
  'freezer-jam',
  'fridge-jam',
] as const;
export type OwnKind = (typeof OWN_KINDS)[number];

export const OWN_ACIDS = [
  'lemon-juice-bottled',
  'lemon-juice-fresh',
  'citric-acid',
] as const satisfies readonly DoseItem[];
export const OWN_PECTINS = {
  'apple-powder': 'home powder',
  'citrus-powder': 'home powder',
  'pectin-stock': 'home stock',
  'pectin-powder': 'bought',
  'pectin-low-methoxyl': 'bought',
  'pectin-liquid': 'bought',
} as const satisfies Partial<Record<DoseItem, PectinDose['from']>>;
export type OwnPectin = keyof typeof OWN_PECTINS;
export type OwnAcid = (typeof OWN_ACIDS)[number];
export const OWN_EXTRAS = [
  'brown-sugar',
  'cider',
  'apple-juice',
  'almonds',
  'walnuts',
  'raisins',
  'ginger-ground',
  'cinnamon',
  'citrus-zest-dried',
  'herb-dried',
  'butter',
] as const satisfies readonly DoseItem[];

/** Grams a kilogram of prepared fruit, or of strained juice in a jelly; shares of the prepared fruit, 0-1, together 1. */
export interface OwnFigures {
  readonly title: string;
  readonly kind: OwnKind;
  readonly fruits: readonly { readonly foodId: string; readonly share: number }[];
  readonly sugarG: number;
  readonly waterG: number;
  readonly acid: { readonly item: (typeof OWN_ACIDS)[number]; readonly gPerKg: number } | null;
  readonly pectin: { readonly item: OwnPectin; readonly gPerKg: number } | null;
  readonly extras: readonly { readonly item: (typeof OWN_EXTRAS)[number]; readonly gPerKg: number }[];
  /** Soluble solids at which the boil ends, per cent; null for a kind that is not boiled down. */
  readonly brix: number | null;
  readonly softToo: boolean;
}

type OfKind = Pick<RecipeDraft, 'process' | 'jarSizes' | 'ceiling' | 'work' | 'keeps'> & Partial<RecipeDraft>;

const SIZES = ['half-pint', 'quarter-pint', 'twelve-ounce', 'pint'] as const;
const boiled = { jarSizes: SIZES, ceiling: CRUSHED_CUPS, work: SPREAD_WORK, keeps: SPREAD_KEEPS };
const uncanned = { process: null, jarSizes: ['half-pint', 'quarter-pint'], ceiling: CRUSHED_CUPS } as const;
const OF_KIND: Readonly<Record<OwnKind, OfKind>> = {
  jam: { ...boiled, process: { product: 'jam-or-preserve-no-added-pectin', pack: 'hot' } },
  jelly: {
    ...boiled,
    process: { product: 'jelly-with-or-without-added-pectin', pack: 'hot' },
    ceiling: JUICE_CUPS,
    work: JELLY_WORK,
  },
  preserve: { ...boiled, process: { product: 'jam-or-preserve-no-added-pectin', pack: 'hot' } },
  conserve: { ...boiled, process: { product: 'conserve-incl-nuts', pack: 'hot' } },
  marmalade: { ...boiled, process: { product: 'marmalade', pack: 'hot' } },
  butter: {
    ...boiled,
    process: { product: 'fruit-butter-other-acid-fruit', pack: 'hot' },
    ceiling: { by: 'pan' },
    work: BUTTER_WORK,
  },
  paste: { ...boiled, process: null, jarSizes: ['quarter-pint'], ceiling: { by: 'pan' }, work: BUTTER_WORK },
  'freezer-jam': { ...uncanned, contents: ['uncooked'], work: COLD_WORK, keeps: ['freezer jam'] },
  'fridge-jam': { ...uncanned, work: SPREAD_WORK, keeps: LOW_SUGAR_KEEPS },
};

/** Boiled to this when nothing else is written, per cent; null: mixed and packed. */
export const USUAL_BRIX: Readonly<Record<OwnKind, number | null>> = {
  jam: 65,
  jelly: 65,
  preserve: 65,
  conserve: 65,
  marmalade: 65,
  butter: 43,
  paste: 75,
  'freezer-jam': null,
  'fridge-jam': 50,
};

/** How the book draws juice of a fruit, or null when it makes no jelly of it. */
export const juiceRuleFor = (foodId: string): ExtractionRule | null =>
  JELLIES.find((r) => r.extraction && r.fruits[0]?.foodIds.includes(foodId))?.extraction ?? null;

/** A share may drift this far at the scale before it is another recipe. Common practice. */
const SHARE_DRIFT = 0.1;
/** Packs of what is mixed and packed, grams: a half-pint with room to swell. From memory. */
const PACK_G = 290;

export function ownRecipe(id: string, f: OwnFigures): Recipe {
  const finish: FinishRule = f.brix === null ? { by: 'mixing', packG: PACK_G } : { by: 'solids', brix: f.brix };
  const acid: AcidDose | null = f.acid ? { ...f.acid, purpose: 'gel' } : null;
  const pectin: PectinDose | null = f.pectin ? { ...f.pectin, from: OWN_PECTINS[f.pectin.item] } : null;
  const because = 'written by this household; no tested source';
  const recipe = house(
    {
      ...OF_KIND[f.kind],
      process: processOf(f),
      id,
      title: f.title,
      kind: f.kind,
      fruits: f.fruits.map(partOf),
      grades: f.softToo ? ['perfect', 'blemished', 'soft'] : ['perfect', 'blemished'],
      sugar: f.sugarG > 0 ? dose('sugar', f.sugarG) : null,
      water: f.waterG > 0 ? dose('water', f.waterG) : null,
      acid,
      pectin,
      others: f.extras.map((e): Dose => ({ ...e })),
      finish,
      extraction: f.kind === 'jelly' ? juiceRuleFor(f.fruits[0]?.foodId ?? '') : null,
    },
    because,
  );
  return { ...recipe, origin: { standing: 'house', because, by: 'household' } };
}

/**
 * The row printed for this very product, or null: a spread thinner than its class or without sugar, nuts in anything but a
 * conserve, and butter in the pan have none.
 */
function processOf(f: OwnFigures): Recipe['process'] {
  const row = OF_KIND[f.kind].process;
  const least = f.kind === 'butter' ? BUTTER_CLASS_BRIX : SPREAD_CLASS_BRIX;
  const nuts = f.extras.some((e) => doseItem(e.item).nut);
  if (!row || f.brix === null || f.brix < least) return null;
  if ((f.kind !== 'butter' && f.sugarG <= 0) || (f.kind !== 'conserve' && nuts)) return null;
  if (f.extras.some((e) => doseItem(e.item).allergens.includes('milk'))) return null;
  if (f.kind === 'butter' && f.fruits.every((p) => p.foodId.startsWith('apple-')))
    return { ...row, product: 'fruit-butter-apple' };
  const bought = f.pectin !== null && OWN_PECTINS[f.pectin.item] === 'bought';
  return bought && row.product === 'jam-or-preserve-no-added-pectin'
    ? { ...row, product: 'jam-with-added-pectin' }
    : row;
}

const partOf = ({ foodId, share }: OwnFigures['fruits'][number]): FruitPart => ({
  foodIds: [foodId],
  share:
    share === 1
      ? { low: 1, typ: 1, high: 1 }
      : { low: Math.max(0.01, share - SHARE_DRIFT), typ: share, high: Math.min(1, share + SHARE_DRIFT) },
});

/** The figures of a recipe of the book, to begin one's own from; null when the form has no room for what it holds. */
export function figuresOf(r: Recipe): OwnFigures | null {
  const kind = OWN_KINDS.find((k) => k === r.kind);
  if (!kind || (r.finish.by !== 'solids' && r.finish.by !== 'mixing')) return null;
  const acid = r.acid && 'gPerKg' in r.acid ? r.acid : null;
  const known = <T extends string>(list: readonly T[], item: string): T | undefined => list.find((x) => x === item);
  const acidItem = acid ? known(OWN_ACIDS, acid.item) : undefined;
  const pectinItem = r.pectin ? known(Object.keys(OWN_PECTINS) as OwnPectin[], r.pectin.item) : undefined;
  return {
    title: r.title,
    kind,
    fruits: r.fruits.map((p) => ({ foodId: p.foodIds[0] as string, share: p.share.typ })),
    sugarG: r.sugar?.gPerKg ?? 0,
    waterG: r.water?.gPerKg ?? 0,
    acid: acid && acidItem ? { item: acidItem, gPerKg: acid.gPerKg } : null,
    pectin: r.pectin && pectinItem ? { item: pectinItem, gPerKg: r.pectin.gPerKg } : null,
    extras: r.others.flatMap((d) => {
      const item = known(OWN_EXTRAS, d.item);
      return item ? [{ item, gPerKg: d.gPerKg }] : [];
    }),
    brix: r.finish.by === 'solids' ? r.finish.brix : null,
    softToo: r.grades.includes('soft'),
  };
}
