/** What is in the jars of some lots, from the movements into their pans: the one reading behind label, card and gate. */
import { STOCK_OF_DOSE } from '#lib/batch/dose-stock.ts';
import { labelNames } from '#lib/batch/label-names.ts';
import { allergenText, type Basis, descending, type Ingredient, waterLeft } from '#lib/labels/ingredients.ts';
import { fruitWords } from '#lib/labels/names.ts';
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { DOSE_ITEMS, type DoseItem, type DoseItemRow, doseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { type DatedMovement, loadLots, movementsOf } from '#lib/store/ledger-store.ts';
import type { Context } from './context.ts';
import { type FrozenSheet, panBatchId, sheetOf } from './frozen-sheet.ts';
import { plantingsOf } from './plantings-of.ts';
import { recipeHere } from './recipes-here.ts';

export interface JarContents {
  lot: HeldLot;
  batch: BatchRecord | null;
  recipe: Recipe | null;
  /** Null where no record says what went in. */
  ingredients: Ingredient[] | null;
  /** Names the composition allows; null where nothing could be computed. */
  names: readonly string[] | null;
  /** Ground-fall and cull lots among its fruit. */
  badFruit: string[];
  fruit: HeldLot[];
  /** Trees and rows of its fruit. */
  trees: string[];
  /** Other batches of that day in the same pan. */
  samePan: BatchRecord[];
}

/** Prefix of the lot flag that says something else went in: "in it: butter". */
export const IN_IT = 'in it: ';

/** What may be said to have gone in beside what was weighed. */
export const NOTED_ITEMS = ['butter', 'almonds', 'walnuts', 'sulphites'] as const;

export async function contentsOf(ctx: Context, lots: readonly HeldLot[]): Promise<Map<string, JarContents>> {
  const ids = [...new Set(lots.flatMap((l) => (l.batchId ? [l.batchId] : [])))];
  const batches = await loadBatches(ctx.db, ctx.place.id, { ids });
  const ofDays = await batchesOfDays(ctx, batches);
  const movements = await movementsOf(
    ctx.db,
    ctx.place.id,
    batches.map((b) => panLotId(panBatchId(b))),
  );
  const named = movements.flatMap((m) => [m.from, m.to]).flatMap((a) => (isLot(a) ? [a.lot] : []));
  const parents = new Map(
    (await loadLots(ctx.db, ctx.place.id, { ids: [...new Set(named)], emptied: true })).map((l) => [l.id, l]),
  );
  return new Map(
    lots.map((lot) => {
      const batch = batches.find((b) => b.id === lot.batchId) ?? null;
      return [lot.id, contentsOfLot(ctx, lot, batch, movements, parents, ofDays)];
    }),
  );
}

const batchesOfDays = async (ctx: Context, batches: BatchRecord[]): Promise<BatchRecord[]> => {
  const days = new Set(batches.map((b) => b.day));
  const first = [...days].sort()[0];
  return first ? (await loadBatches(ctx.db, ctx.place.id, { since: first })).filter((b) => days.has(b.day)) : [];
};

function contentsOfLot(
  ctx: Context,
  lot: HeldLot,
  batch: BatchRecord | null,
  all: readonly DatedMovement[],
  parents: ReadonlyMap<string, HeldLot>,
  ofDays: readonly BatchRecord[],
): JarContents {
  const recipeId = batch?.recipeId ?? lot.recipeId;
  const recipe = recipeId === null ? null : (recipeHere(ctx.place, recipeId) ?? null);
  const blank: JarContents = {
    lot,
    batch,
    recipe,
    ingredients: null,
    names: null,
    badFruit: [],
    fruit: [],
    trees: [],
    samePan: [],
  };
  if (!batch) return { ...blank, ingredients: packedParts(lot) };
  const pan = panLotId(panBatchId(batch));
  const into = all.filter((m) => isLot(m.to) && m.to.lot === pan);
  const out = all.filter((m) => isLot(m.from) && m.from.lot === pan);
  const drawn = into.flatMap((m) => {
    const from = isLot(m.from) ? parents.get(m.from.lot) : undefined;
    return from ? [{ lot: from, grams: m.grams ?? m.qty }] : [];
  });
  const fruit = drawn.filter(({ lot: l }) => isFruit(l));
  const rawG = sum(fruit.map((f) => f.grams));
  const trimG = sum(out.filter((m) => isTrim(m, parents)).map((m) => m.grams ?? m.qty));
  const preparedG = Math.max(0, rawG - trimG);
  const share = rawG > 0 ? preparedG / rawG : 1;
  const ingredients = descending([
    ...fruit.map((f) => weighed(fruitName(ctx, f.lot, recipe), f.grams * share)),
    ...drawn.filter(({ lot: l }) => !isFruit(l)).map((d) => suppliedPart(d.lot, d.grams)),
    ...boughtParts(
      batch,
      drawn.map((d) => d.lot),
    ),
    ...addedParts(batch),
    waterPart(into, out),
    ...(hasSheet(batch)
      ? []
      : byRecipe(
          recipe,
          preparedG,
          drawn.map((d) => d.lot),
        )),
    ...notedParts(lot),
  ]);
  const trees = [...new Set(fruit.flatMap((f) => plantingsOf(ctx.place, f.lot)))].sort();
  return {
    ...blank,
    ingredients: ingredients.length > 0 ? ingredients : null,
    names: namesOf(batch, recipe, fruit, preparedG, drawn),
    badFruit: fruit.filter((f) => f.lot.groundFall || f.lot.grade === 'cull').map((f) => f.lot.code),
    fruit: fruit.map((f) => f.lot),
    trees,
    samePan: ofDays.filter(
      (b) => b.id !== batch.id && b.day === batch.day && b.kitchenId === batch.kitchenId && b.panCode === batch.panCode,
    ),
  };
}

/** What was weighed into packs without a pan. */
function packedParts(lot: HeldLot): Ingredient[] | null {
  const parts = lot.details.contents as { name: string; grams: number }[] | undefined;
  return parts ? descending([...parts.map((p) => weighed(p.name, p.grams)), ...notedParts(lot)]) : null;
}

const sum = (grams: readonly number[]): number => grams.reduce((a, b) => a + b, 0);
const isFruit = (l: HeldLot): boolean => l.kind === 'fruit' || l.kind === 'frozen';
const hasSheet = (b: BatchRecord): boolean => Array.isArray(b.result.doses);

/** Trim that was thrown, and trim that was kept as a set-aside. */
const isTrim = (m: DatedMovement, parents: ReadonlyMap<string, HeldLot>): boolean =>
  isLot(m.to) ? parents.get(m.to.lot)?.kind === 'set-aside' : m.to.sink === 'trim';

const weighed = (name: string, grams: number): Ingredient => ({
  name,
  grams: Math.round(grams),
  allergens: [],
  basis: 'weighed',
});

/** A crop is called what its grower calls it; where juice is drawn first, the juice went in. */
function fruitName(ctx: Context, lot: HeldLot, recipe: Recipe | null): string {
  const crop = ctx.place.crops.find((c) => c.id === lot.cropId)?.label;
  const food = FRUITS.find((f) => f.id === lot.foodId)?.name;
  const words = fruitWords(crop ?? food ?? lot.label);
  return recipe?.extraction || recipe?.kind === 'juice' ? `juice of ${words}` : words;
}

const part = (item: DoseItemRow, grams: number | null, basis: Basis): Ingredient => ({
  name: item.ingredient,
  grams: grams === null ? null : Math.round(grams),
  allergens: item.allergens.map((a) => allergenText(a, item.nut ?? item.ingredient)),
  basis,
});

/** Dose a stock item stands for: the item of its own name, else the dose that is drawn from it. */
function doseOfStock(item: string | null): DoseItemRow | null {
  if (item === null) return null;
  const drawn = (Object.entries(STOCK_OF_DOSE) as [DoseItem, string][]).find(([, stock]) => stock === item)?.[0];
  const known = item in DOSE_ITEMS ? (item as DoseItem) : drawn;
  return known ? doseItem(known) : null;
}

const suppliedPart = (lot: HeldLot, grams: number): Ingredient => {
  const item = doseOfStock(lot.item);
  return item ? part(item, grams, 'weighed') : weighed(lot.label.toLowerCase(), grams);
};

/** What a remade batch took beside the jars it was made from, as for the whole first pan. */
const addedParts = (batch: BatchRecord): Ingredient[] =>
  Array.isArray(batch.inputs.added)
    ? (batch.inputs.added as { item: DoseItem; panG: number }[])
        .filter((a) => a.item !== 'water')
        .map((a) => part(doseItem(a.item), a.panG, 'weighed'))
    : [];

/** Of the pan it was cooked in first: a remade batch's own sheet names only what was added. */
const firstDoses = (batch: BatchRecord): FrozenSheet['doses'] =>
  (batch.inputs.firstDoses as FrozenSheet['doses'] | undefined) ?? sheetOf(batch).doses;

/** Doses that were drawn from no lot: weighed on the sheet, brought in as used. */
const boughtParts = (batch: BatchRecord, drawn: readonly HeldLot[]): Ingredient[] =>
  hasSheet(batch)
    ? firstDoses(batch).flatMap((d) => {
        const found = (Object.entries(DOSE_ITEMS) as [DoseItem, DoseItemRow][]).find(([, row]) => row.name === d.name);
        if (!found || found[0] === 'water' || drawn.some((l) => doseOfStock(l.item) === found[1])) return [];
        return [part(found[1], d.grams, 'weighed')];
      })
    : [];

const waterPart = (into: readonly DatedMovement[], out: readonly DatedMovement[]): Ingredient => {
  const added = sum(into.filter((m) => !isLot(m.from) && m.from.sink === 'tap').map((m) => m.grams ?? m.qty));
  const vapour = sum(out.filter((m) => !isLot(m.to) && m.to.sink === 'vapour').map((m) => m.grams ?? m.qty));
  return weighed(DOSE_ITEMS.water.ingredient, waterLeft(added, vapour));
};

/** A record without weighed doses: what the recipe adds, by its own amounts, so that nothing in the jar goes unnamed. */
function byRecipe(recipe: Recipe | null, preparedG: number, drawn: readonly HeldLot[]): Ingredient[] {
  if (!recipe) return [];
  const doses = [...recipe.others, ...(recipe.acid && 'item' in recipe.acid ? [recipe.acid] : [])];
  const have = new Set(drawn.flatMap((l) => doseOfStock(l.item)?.ingredient ?? []));
  return doses
    .filter((d) => !have.has(doseItem(d.item).ingredient))
    .map((d) => part(doseItem(d.item), (d.gPerKg * preparedG) / 1000, 'recipe'));
}

const notedParts = (lot: HeldLot): Ingredient[] =>
  lot.flags
    .filter((f) => f.startsWith(IN_IT))
    .map((f) => {
      const name = f.slice(IN_IT.length);
      const item = name in DOSE_ITEMS ? doseItem(name as DoseItem) : null;
      return item
        ? part(item, null, 'noted')
        : { name, grams: null, allergens: name === 'sulphites' ? ['sulphites'] : [], basis: 'noted' as const };
    });

function namesOf(
  batch: BatchRecord,
  recipe: Recipe | null,
  fruit: readonly { lot: HeldLot; grams: number }[],
  preparedG: number,
  drawn: readonly { lot: HeldLot; grams: number }[],
): readonly string[] | null {
  if (!recipe || fruit.length === 0) return null;
  const sheet = hasSheet(batch) ? sheetOf(batch) : null;
  const finish = recipe.finish.by === 'solids' ? recipe.finish.brix : null;
  const brix = sheet?.brix ?? finish;
  if (brix === null) return null;
  const found = labelNames({
    kind: recipe.kind,
    foodIds: [...new Set(fruit.map((f) => f.lot.foodId ?? '').filter((id) => FRUITS.some((x) => x.id === id)))],
    fruitG: sheet?.preparedG || preparedG,
    sweetenerG: sum(drawn.filter((d) => doseOfStock(d.lot.item)?.sweetener).map((d) => d.grams)),
    brix,
  });
  return found.allowed.length > 0 ? found.allowed : null;
}
