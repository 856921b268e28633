/**
 * Where a batch may go. Pure and total: every question gets an answer, and the shelf is the answer only when a published
 * process row matches product, pack, jar, method and altitude band, every fruit is admitted by it, the acid rule is met, and
 * the jar is made for canning. The stricter table governs: never-shelf list and low-acid rules, then acid class, then row.
 */
import { FRUITS } from '#lib/reference/fruits.ts';
import { HOLD_TIMES, type HoldRow } from '#lib/reference/hold-times.ts';
import { type JarSize, jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { type NeverShelfKind, neverShelfFor } from '#lib/reference/never-shelf.ts';
import { processAdmits } from '#lib/reference/process-admits.ts';
import { PROCESS_PRODUCTS } from '#lib/reference/process-products.ts';
import { type ProcessTime, processTime } from '#lib/reference/process-times.ts';
import { doseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Content, Recipe } from '#lib/reference/recipes/recipe.ts';
import { acidStanding, type Need } from './acid-standing.ts';
import { type FoodFitness, fitForFood } from './fit-for-food.ts';
import { type FruitUsed, foodShares } from './fruit-used.ts';
import type { PhReading } from './ph-reading.ts';

export type SealMethod =
  | 'boiling-water'
  | 'steam'
  | 'oven'
  | 'open kettle'
  | 'inversion'
  | 'paraffin'
  | 'dishwasher'
  | 'electric pot';
export type Way = 'shelf' | 'fridge' | 'freezer' | 'dried';

export interface StorageQuestion {
  readonly recipe: Recipe;
  readonly fruit: readonly FruitUsed[];
  readonly jar: { readonly size: JarSize; readonly madeForCanning: boolean };
  readonly altitudeFt: number;
  readonly method: SealMethod;
  /** The recipe's amounts, fruit and order were kept. */
  readonly asWritten: boolean;
  /** The acid dose of the recipe was measured in (each jar, where it is by jar). */
  readonly acidDoseGiven: boolean;
  readonly reading?: PhReading | undefined;
  /** Minutes at a full boil; left out while planning. */
  readonly minutesKept?: number | undefined;
}

export interface StorageClass {
  readonly shelf: boolean;
  /** What alone still stands between this batch and the shelf; empty when nothing does or when nothing helps. */
  readonly needs: readonly Need[];
  /** Minutes of the row, null when there is none. Shown even while a need is open. */
  readonly process: Extract<ProcessTime, { ok: true }> | null;
  readonly ways: readonly Way[];
  /** How long it keeps, for each way but the shelf. */
  readonly keeps: readonly HoldRow[];
  readonly householdOnly: boolean;
  readonly food: boolean;
  readonly reasons: readonly string[];
  readonly cautions: readonly string[];
}

const NEVER: Readonly<Partial<Record<Content, string>>> = {
  'ordinary starch': 'Thickened with flour or starch: no tested process. Thicken it when it is opened, or freeze it.',
  'dairy or egg': 'Dairy or egg in it: no tested process. Keep it in the fridge or freeze it.',
  gelatine: 'Set with gelatine: no tested process. Keep it in the fridge.',
  'only alcohol': 'Fruit kept by alcohol alone: no tested process. Keep it in the fridge.',
  oil: 'Fruit in oil: no tested process. Freeze it.',
  uncooked: 'Uncooked jam is never for the shelf. Freeze it, or keep it in the fridge.',
};

/** 1 cup of nuts (117 g) to 4-1/2 cups of grape pulp (1 680 g): HGB-56 grape conserve, grams from memory. */
const TESTED_NUTS_G_PER_KG = 70;

export function storageClass(q: StorageQuestion): StorageClass {
  const food = knownFruit(q.fruit);
  if (!food.ok) return refusal(q, food.reason);
  const stops = [...contentStops(q), ...fruitStops(q), ...methodStops(q)];
  const time = timeOf(q);
  if (!time.ok) stops.push(...time.reasons);
  const process = time.ok ? time.process : null;
  const acid = acidStanding({
    recipe: q.recipe,
    fruit: q.fruit,
    row: process?.row ?? null,
    followsPublished: followsPublished(q),
    acidDoseGiven: q.acidDoseGiven,
    reading: q.reading,
  });
  stops.push(...acid.stops);
  if (process) stops.push(...admissionStops(q, process));
  if (process && q.minutesKept !== undefined && !(q.minutesKept >= process.minutes)) {
    stops.push(
      `Kept ${q.minutesKept} of ${process.minutes} minutes: within 2 hours process it again in full, else fridge or freezer.`,
    );
  }
  const shelf = process !== null && stops.length === 0 && acid.needs.length === 0;
  const open = process !== null && stops.length === 0 ? acid.needs : [];
  const keeps = keepsOf(q.recipe, q.fruit);
  return {
    shelf,
    needs: open,
    process: stops.length === 0 ? process : null,
    ways: [...(shelf ? (['shelf'] as const) : []), ...waysOf(keeps)],
    keeps,
    householdOnly: !followsPublished(q) || q.recipe.householdOnly,
    food: true,
    reasons: [...new Set([...stops, ...acid.reasons])],
    cautions: acid.cautions,
  };
}

function knownFruit(fruit: readonly FruitUsed[]): FoodFitness {
  if (fruit.length === 0) return { ok: false, reason: 'No fruit was given.' };
  const unknown = fruit.find((f) => !FRUITS.some((known) => known.id === f.foodId));
  if (unknown)
    return { ok: false, reason: `"${unknown.foodId}" is not a fruit of the table: no process is known for it.` };
  if (fruit.some((f) => !(f.grams > 0))) return { ok: false, reason: 'A weight of fruit is missing.' };
  return fitForFood(fruit);
}

/** Scales and rounding: two parts in a hundred. */
const SHARE_SLACK = 0.02;

/** Published, kept to, and made of the fruit it names. */
function followsPublished({ recipe, fruit, asWritten }: StorageQuestion): boolean {
  if (recipe.origin.standing !== 'published' || !asWritten) return false;
  if (!fruit.every((f) => recipe.fruits.some((p) => p.foodIds.includes(f.foodId)))) return false;
  const shares = foodShares(fruit);
  return recipe.fruits.every(({ foodIds, share }) => {
    const used = foodIds.reduce((sum, id) => sum + (shares.get(id) ?? 0), 0);
    return used >= share.low - SHARE_SLACK && used <= share.high + SHARE_SLACK;
  });
}

const refusal = (q: StorageQuestion, reason: string): StorageClass => ({
  shelf: false,
  needs: [],
  process: null,
  ways: [],
  keeps: [],
  householdOnly: true,
  food: false,
  reasons: [reason],
  cautions: q.recipe.byProducts.length > 0 ? ['Its peel, cores and pomace are not kept either.'] : [],
});

function contentStops({ recipe }: StorageQuestion): string[] {
  const nuts = recipe.others.filter((d) => doseItem(d.item).nut).reduce((sum, d) => sum + d.gPerKg, 0);
  const tooMany =
    nuts > TESTED_NUTS_G_PER_KG ? ['More nuts than the tested conserve holds. Use fewer, or freeze it.'] : [];
  return [...recipe.contents.flatMap((c) => NEVER[c] ?? []), ...tooMany];
}

function methodStops({ method, jar }: StorageQuestion): string[] {
  const stops: string[] = [];
  if (method !== 'boiling-water' && method !== 'steam') {
    stops.push(`Sealing by ${method} is not a process. Use a boiling-water canner, or keep it cold.`);
  }
  if (!jar.madeForCanning)
    stops.push('Reused shop jars do not go on the shelf. Use a canning jar with a new lid, or the fridge.');
  return stops;
}

function fruitStops({ recipe, fruit }: StorageQuestion): string[] {
  const kinds = neverKindsOf(recipe);
  const rows = fruit.flatMap((f) => kinds.flatMap((kind) => neverShelfFor(f.foodId, kind)));
  return rows.map((row) => `Never for the shelf: ${row.what}. Freeze it.`);
}

/** Kinds of the never-shelf list a recipe falls under. Anything sieved or reduced counts as a puree. */
function neverKindsOf({ kind, origin }: Recipe): NeverShelfKind[] {
  if (kind === 'jam' || kind === 'jelly') return origin.standing === 'published' ? [] : ['ordinary jam'];
  if (kind === 'juice' || kind === 'syrup') return [kind];
  if (['butter', 'puree', 'sauce', 'paste', 'leather'].includes(kind)) return ['butter', 'puree'];
  if (kind === 'whole-fruit' || kind === 'frozen' || kind === 'dried') return [];
  return ['ordinary jam'];
}

type Timed = { ok: true; process: Extract<ProcessTime, { ok: true }> } | { ok: false; reasons: string[] };

function timeOf({ recipe, jar, altitudeFt, method }: StorageQuestion): Timed {
  const rule = recipe.process;
  if (!rule)
    return { ok: false, reasons: [`No tested process for ${recipe.kind.replace('-', ' ')}. ${wayOut(recipe)}`] };
  const tried = method === 'steam' ? 'steam' : 'boiling-water';
  const at = (size: JarSize) => processTime({ ...rule, jar: size, altitudeFt, method: tried });
  const found = at(jar.size);
  if (found.ok) return { ok: true, process: found };
  if (!found.nextSizeDown) return { ok: false, reasons: [`${sentence(found.reason)} ${wayOut(recipe)}`] };
  const smaller = at(found.nextSizeDown);
  const use = `${jarSizeOf(found.nextSizeDown).name}s${smaller.ok ? ` (${smaller.minutes} min here)` : ''}`;
  const noun = KIND_IS_A_NOUN.has(recipe.kind) ? recipe.kind : PROCESS_PRODUCTS[rule.product].name;
  return { ok: false, reasons: [`No tested time for ${jarSizeOf(jar.size).name}s of ${noun}. Use ${use} or freeze.`] };
}

/** Kinds that read as the thing itself: "quarts of jam". */
const KIND_IS_A_NOUN: ReadonlySet<string> = new Set(['jam', 'jelly', 'conserve', 'marmalade', 'syrup']);

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
const wayOut = (recipe: Recipe): string => {
  const ways = waysOf(keepsOf(recipe, []));
  if (ways.includes('dried')) return 'Keep it dry and airtight.';
  return ways.includes('freezer') ? 'Freeze it, or keep it in the fridge.' : 'Keep it in the fridge.';
};

function admissionStops({ fruit }: StorageQuestion, process: Extract<ProcessTime, { ok: true }>): string[] {
  return [...new Set(fruit.map((f) => f.foodId))].flatMap((foodId) => {
    const admitted = processAdmits(process.row, foodId);
    return admitted.ok ? [] : [`${sentence(admitted.reason)} Freeze it.`];
  });
}

/** White peach and nectarine are not even dried (extension names drying as for yellow flesh only). */
function keepsOf(recipe: Recipe, fruit: readonly FruitUsed[]): HoldRow[] {
  const onlyFrozen = fruit.some((f) => f.foodId === 'peach-white');
  const rows = HOLD_TIMES.filter((row) => recipe.keeps.includes(row.item));
  return onlyFrozen ? rows.filter((row) => row.store === 'freezer') : rows;
}

const waysOf = (rows: readonly HoldRow[]): Way[] => [
  ...new Set(rows.map((row): Way => (row.store === 'shelf' ? 'dried' : row.store))),
];
