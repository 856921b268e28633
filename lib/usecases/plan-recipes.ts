/**
 * Recipes of the book as the plan sees them: litres per kg, what they need, which vessels they may take. All figures per kg
 * of fruit as weighed. Hours are estimates of the book; the plan is only ever as good as they are, and says so.
 */
import { syrupFor } from '#lib/batch/syrup-for.ts';
import { jarsByWeight } from '#lib/batch/weight-packs.ts';
import type { PlanRecipe, RecipeMode, StoragePlace } from '#lib/plan/instance.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import { type JarSize, jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { DOSE_ITEMS } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe, RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { massBalance } from '#lib/science/mass-balance.ts';
import type { JarKind, Kitchen } from '#lib/store/place.ts';

export interface RecipePlan {
  recipe: PlanRecipe;
  place: StoragePlace;
  /** Litres of one usual jar or pack. */
  unitLitres: number;
  kind: RecipeKind;
}

/** Density of a finished spread at 65 °Bx, kg/L (ICUMSA polynomial, lib/science/density.ts). */
const SPREAD_DENSITY = 1.3166;
/** kg of prepared fruit in a litre of frozen pack, and of dried pieces in a litre. Estimate. */
export const PACK_DENSITY = 0.7;
export const DRIED_DENSITY = 0.25;

/** Density of fresh juice of about 12 °Bx, kg/L (ICUMSA polynomial, lib/science/density.ts). */
const JUICE_DENSITY = 1.05;
/** Juice pressed from a kg of apples as weighed. V: 55 % fair, 67 % good (press trials); 0.62 between. Estimate. */
const PRESSED_SHARE = 0.62;

/**
 * Share of a recipe's fruit as weighed that is trimmed away: the fruit table's refuse, from USDA SR where it has it.
 * Nothing is peeled or stoned where juice is drawn from the whole fruit.
 */
const wasteShare = (recipe: Recipe): number =>
  recipe.extraction || recipe.finish.by === 'volume'
    ? 0
    : (fruitOf(recipe.fruits[0]?.foodIds[0] as string).wastePct ?? 0) / 100;

/** Litres made per kg of fruit as weighed; null when the book has no rule to reckon it by. */
export function litresPerKg(recipe: Recipe): number | null {
  const keep = 1 - wasteShare(recipe);
  switch (recipe.finish.by) {
    case 'solids':
      return spreadLitres(recipe, keep, recipe.finish.brix);
    case 'boil time':
      return (chargePerKg(recipe) * base(recipe) * (1 - recipe.finish.boilOffShare) * keep) / SPREAD_DENSITY;
    case 'weight table':
      return printedLitres(recipe, recipe.finish.crop);
    case 'pack':
      return keep / PACK_DENSITY;
    case 'drying':
      return (keep * (1 - recipe.finish.from)) / (1 - recipe.finish.to) / DRIED_DENSITY;
    case 'volume':
      return (recipe.extraction ? recipe.extraction.juiceGPerKg.typ / 1000 : PRESSED_SHARE) / JUICE_DENSITY;
    case 'mixing':
      return (chargePerKg(recipe) * keep) / 1.2;
  }
}

/** Jars of a printed weight line (pints or quarts only), asked for a tonne so that whole jars do not matter. */
function printedLitres(recipe: Recipe, crop: string): number | null {
  for (const size of ['pint', 'quart'] as const) {
    const jars = recipe.jarSizes.includes(size) ? jarsByWeight(crop, 1_000_000, size) : null;
    if (jars?.ok) return (jars.packs.value * jarSizeOf(size).fillMl) / 1_000_000;
  }
  return null;
}

/** Sugar of the syrup poured over packed fruit, kg per kg as weighed, by the printed load. */
function syrupSugar(recipe: Recipe, size: string | null, litresKg: number, litres: number): number {
  const sugar = syrupFor(recipe.syrup, (size ?? 'pint') as JarSize, 100).find((s) => s.name.startsWith('sugar'));
  return sugar ? (sugar.grams.value / 100_000) * (litresKg / litres) : 0;
}

const doses = (recipe: Recipe) =>
  [
    recipe.sugar,
    recipe.water,
    recipe.acid && 'gPerKg' in recipe.acid ? recipe.acid : null,
    recipe.pectin,
    ...recipe.others,
  ].filter((d) => d !== null);
const chargePerKg = (recipe: Recipe): number => 1 + doses(recipe).reduce((g, d) => g + d.gPerKg, 0) / 1000;
/** kg the doses are reckoned on, per kg of prepared fruit: the strained juice where juice is drawn. */
const base = (recipe: Recipe): number => (recipe.extraction ? recipe.extraction.juiceGPerKg.typ / 1000 : 1);

function spreadLitres(recipe: Recipe, keep: number, brix: number): number {
  const soluble = fruitOf(recipe.fruits[0]?.foodIds[0] as string).solublePct.typ;
  const inputs = [
    { grams: 1000 * base(recipe), solublePct: soluble },
    ...doses(recipe).map((d) => ({ grams: d.gPerKg * base(recipe), solublePct: DOSE_ITEMS[d.item].solublePct })),
  ];
  return ((massBalance({ inputs, targetBrix: brix }).panTargetG / 1000) * keep) / SPREAD_DENSITY;
}

const PLACE: Partial<Record<RecipeKind, StoragePlace>> = {
  'freezer-jam': 'freezer',
  frozen: 'freezer',
  'fridge-jam': 'fridge',
};
export const placeOf = (kind: RecipeKind): StoragePlace | 'dry' =>
  PLACE[kind] ?? (kind === 'dried' || kind === 'leather' || kind === 'candied' || kind === 'blend' ? 'dry' : 'shelf');

/** By-products the plan knows how to dry and use again. */
export const DRIED_LEFTOVERS: readonly string[] = ['apple-peel-core'];

/** Dose items as the ledger's supplies name them. */
export const MATERIAL: Readonly<Record<string, string>> = {
  sugar: 'sugar',
  'lemon-juice-bottled': 'lemon-juice',
  'citric-acid': 'citric-acid',
};

/** A recipe for the plan, with the fruit of these crops; null when the book has no yield for it or no vessel fits. */
export function planRecipe(
  recipe: Recipe,
  crops: readonly { id: string; foodId: string }[],
  kitchen: Kitchen,
  jarKinds: readonly JarKind[],
): RecipePlan | null {
  const litres = litresPerKg(recipe);
  if (litres === null) return null;
  const keep = 1 - wasteShare(recipe);
  const place = placeOf(recipe.kind);
  const jars = jarKinds.filter(
    (k) => k.canning && k.size !== null && recipe.jarSizes.includes(k.size as Recipe['jarSizes'][number]),
  );
  const jarred = place === 'shelf' && recipe.process !== null;
  const usual = jars.find((k) => k.size === recipe.jarSizes[0]) ?? jars[0];
  if (jarred && !usual) return null;
  const modes = modesOf(recipe, kitchen, keep);
  if (modes.length === 0) return null;
  const needs = doses(recipe).flatMap((d) =>
    MATERIAL[d.item] && d.item !== 'sugar'
      ? [
          {
            material: MATERIAL[d.item] as string,
            perKg: (d.gPerKg * keep * base(recipe)) / (d.item === 'lemon-juice-bottled' ? 1.03 : 1),
          },
        ]
      : [],
  );
  const sugar =
    ((recipe.sugar?.gPerKg ?? 0) * keep * base(recipe)) / 1000 +
    (jarred && usual ? syrupSugar(recipe, usual.size, litres, usual.fillMl / 1000) : 0);
  const of = crops.filter((c) => recipe.fruits.some((p) => p.foodIds.includes(c.foodId)));
  const trays = recipe.finish.by === 'drying' || place === 'dry';
  return {
    kind: recipe.kind,
    place: place === 'dry' ? 'shelf' : place,
    unitLitres:
      jarred && usual
        ? usual.fillMl / 1000
        : recipe.finish.by === 'pack'
          ? recipe.finish.packG / 1000 / PACK_DENSITY
          : 0.25,
    recipe: {
      id: recipe.id,
      name: recipe.title,
      product: recipe.id,
      fruit: of.map((c) => ({ crop: c.id, grades: recipe.grades })),
      // A jelly of nothing but soft fruit stays runny; a jam whose recipe takes soft fruit may be all of it. Common practice.
      softMax: recipe.kind === 'jelly' ? 0.5 : 1,
      yieldPerKg: litres,
      ...(sugar > 0 ? { sugar } : {}),
      ...(needs.length > 0 ? { needs } : {}),
      ...pectinWanted(recipe, keep),
      setupH: 0.3,
      maxBatchesPerDay: 3,
      modes,
      ...(jarred ? { jars: [usual?.code as string], canner: { activeH: 0.1, burnerH: 0.35 } } : {}),
      ...(trays ? { dryer: { m2PerKg: 0.2, days: 1 } } : {}),
      ...(place === 'freezer' ? { freezeKgPerKg: keep } : {}),
      leftovers: recipe.byProducts
        .filter((b) => b.use === 'pectin' && DRIED_LEFTOVERS.includes(b.material))
        .flatMap((b) => of.map((c) => ({ crop: c.id, leftover: b.material, kgPerKg: b.share }))),
    },
  };
}

/**
 * Pectin wanted only where the recipe asks for an added source: the dose itself in 150-grade equivalents, which any
 * source on hand may carry (apple powder 5.5 g sugar a gram against 150: lib/science/pectin-supply.ts).
 */
const APPLE_POWDER_STRENGTH = 5.5 / 150;
function pectinWanted(recipe: Recipe, keep: number): Pick<PlanRecipe, 'pectin'> {
  if (!recipe.pectin) return {};
  const strength =
    recipe.pectin.item === 'apple-powder' ? APPLE_POWDER_STRENGTH : recipe.pectin.item === 'pectin-stock' ? 0.004 : 0.5;
  const own = fruitOf(recipe.fruits[0]?.foodIds[0] as string).pectinPct.ripe * 10 * 0.75;
  return { pectin: own * keep + recipe.pectin.gPerKg * keep * strength };
}

/** Own pectin of a crop that counts in the pan, g of 150-grade equivalent per kg as weighed (extraction 0.75, science section 5). */
export const ownPectin = (foodId: string): number => {
  const f = fruitOf(foodId);
  return f.pectinPct.ripe * 10 * 0.75 * (1 - (f.wastePct ?? 0) / 100);
};

/** Which vessels: pans for what boils down, within the batch ceiling and the pan's own fill; the table for what only freezes or dries. */
function modesOf(recipe: Recipe, kitchen: Kitchen, keep: number): RecipeMode[] {
  const w = recipe.work;
  const hours = {
    activeH: w.activeFixedH,
    activePerKg: w.activeHPerKg,
    burnerH: w.burnerFixedH,
    burnerPerKg: w.burnerHPerKg,
  };
  const place = placeOf(recipe.kind);
  if (place === 'freezer' || place === 'dry')
    return [{ id: 'table', vessel: 'table', minKg: 0.5, maxKg: 8, ...hours, vesselH: 0.5 }];
  if (recipe.kind === 'juice') return [{ id: 'press', vessel: 'press', minKg: 10, maxKg: 36, ...hours, vesselH: 1.5 }];
  const ceilingKg =
    recipe.ceiling.by === 'cups'
      ? (recipe.ceiling.warn * recipe.ceiling.gPerCup) / 1000 / (keep * base(recipe))
      : Number.POSITIVE_INFINITY;
  return kitchen.pans
    .filter((p) => p.maxFillPercent !== null)
    .map((p) => {
      const fits = (p.ml / 1000) * ((p.maxFillPercent as number) / 100);
      const maxKg = Math.min(ceilingKg, fits / Math.max(0.8, chargePerKg(recipe) * keep));
      return {
        id: p.code,
        vessel: p.code,
        minKg: Math.min(0.8, maxKg / 2),
        maxKg: Math.round(maxKg * 100) / 100,
        ...hours,
        vesselH: Math.max(0.75, w.burnerFixedH + w.burnerHPerKg * maxKg),
      };
    });
}
