/**
 * What can be cooked of a stopped freezer before it thaws: whole batches, what the shelf lacks most first, within the lids, jars,
 * sugar, free burners and the hours there are. Reckoned for the kitchen's first jam pan; hours are the book's estimates.
 */

import { batchSheet } from '#lib/batch/batch-sheet.ts';
import { inStockUnit, STOCK_OF_DOSE } from '#lib/batch/dose-stock.ts';
import { byWeightG, type HeldLot } from '#lib/ledger/lot.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe, RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { type Kitchen, mainKitchen } from '#lib/store/place.ts';
import { benchQuestion, jarKindFor, panFor } from './bench-question.ts';
import type { Context } from './context.ts';
import { recipesHere } from './recipes-here.ts';

export interface RescueFruit {
  line: string;
  foodId: string;
  grams: number;
  /** Recipes the household has jars of, or had in the last year. */
  made: ReadonlySet<string>;
}

export interface RescueBatch {
  line: string;
  recipeId: string;
  title: string;
  batches: number;
  /** Of how many, were there no limit. */
  of: number;
  fruitG: number;
  sugarG: number;
  jars: number;
  jarLabel: string;
  /** Hours from now at which the first of them is begun and the last is done. */
  fromH: number;
  untilH: number;
}

export interface Means {
  /** On hand by item: lids, sugar and other doses; empties by their jar kind. */
  stock: ReadonlyMap<string, number>;
  burners: { free: number; all: number };
  /** Until it has thawed; null where nobody knows. */
  hours: number | null;
}

export interface TonightPlan {
  batches: RescueBatch[];
  atOnce: number;
  hours: number;
  lids: { used: number; there: number };
  sugar: { usedG: number; thereG: number };
  /** What stops the next batch. */
  limit: string | null;
}

/** Boiled anyway, so fruit that was frozen does; what most households make first. Common practice. */
const KINDS: readonly RecipeKind[] = ['jam', 'jelly', 'conserve', 'preserve', 'butter', 'sauce', 'syrup'];
/** Learnt figures are left out: the evening is reckoned by the book. */
const NOTHING_LEARNT = { evapGPerMin: null, lossG: null, homePectin: [] };

/** Supplies by item, empties by jar kind, and the burners nothing stands on. */
export function meansOf(ctx: Context, held: readonly HeldLot[], busy: number, hours: number | null): Means {
  const stock = new Map<string, number>();
  for (const l of held.filter((x) => ['supply', 'lids', 'empties', 'set-aside'].includes(x.kind) && !x.hold && x.item))
    stock.set(l.item as string, (stock.get(l.item as string) ?? 0) + (byWeightG(l) ?? l.onHand));
  const all = mainKitchen(ctx.place)?.burners.length ?? 0;
  return { stock, burners: { free: Math.max(0, all - busy), all }, hours };
}

/**
 * The preserve each fruit would become here, whatever there is to make it with: what the household makes already, else the
 * book's first. Null when there is none for the shelf.
 */
export function preserveOf(ctx: Context, fruit: RescueFruit): { recipe: Recipe; sheet: Sheet } | null {
  const fits = recipesHere(ctx.place).filter(
    (r) =>
      KINDS.includes(r.kind) &&
      r.fruits[0]?.foodIds.includes(fruit.foodId) &&
      r.fruits.filter((p) => p.share.low > 0).length === 1 &&
      r.grades.includes('soft'),
  );
  const rank = (r: Recipe): number => (fruit.made.has(r.id) ? 0 : KINDS.length) + KINDS.indexOf(r.kind);
  for (const recipe of [...fits].sort((a, b) => rank(a) - rank(b))) {
    const sheet = sheetFor(ctx, recipe, fruit);
    if (sheet) return { recipe, sheet };
  }
  return null;
}

interface Sheet {
  batches: number;
  fruitG: number;
  jars: number;
  jarCode: string;
  jarLabel: string;
  doses: ReadonlyMap<string, number>;
  chargeG: number;
  hours: number;
}

/** One batch of the even split; null where nothing may go on the shelf or no jar is filled. */
function sheetFor(ctx: Context, recipe: Recipe, fruit: RescueFruit): Sheet | null {
  const kitchen = mainKitchen(ctx.place);
  const jarKind = jarKindFor(ctx, recipe, null);
  if (!kitchen || !jarKind) return null;
  const sheet = batchSheet(
    benchQuestion(ctx, {
      recipe,
      fruit: [{ foodId: fruit.foodId, grams: fruit.grams, grade: 'soft', prepared: true }],
      kitchen,
      pan: panFor(kitchen, null),
      jarKind,
      waterC: null,
      method: 'boiling-water',
      learnt: NOTHING_LEARNT,
      asked: {},
      asWritten: true,
    }),
  );
  const pan = sheet.pans[0];
  if (!pan || !sheet.storage.shelf || pan.fill.jars.value < 1) return null;
  const fruitG = fruit.grams / sheet.pans.length;
  const doses = new Map<string, number>();
  for (const d of pan.doses) {
    const item = STOCK_OF_DOSE[d.item as DoseItem];
    if (item) doses.set(item, (doses.get(item) ?? 0) + inStockUnit(d.item as DoseItem, d.grams.value));
  }
  return {
    batches: sheet.pans.length,
    fruitG,
    jars: pan.fill.jars.value,
    jarCode: jarKind.code,
    jarLabel: jarKind.label,
    doses,
    chargeG: pan.balance.chargeG.value,
    hours: recipe.work.activeFixedH + (recipe.work.activeHPerKg * fruitG) / 1000,
  };
}

/** Pans that take a charge of so many grams, a litre to the kilogram. */
const pansFor = (kitchen: Kitchen, chargeG: number): number =>
  kitchen.pans.filter((p) => p.maxFillPercent !== null && (p.ml * p.maxFillPercent) / 100 >= chargeG).length;

/** Batch after batch in the order given, until something runs out. */
export function planTonight(ctx: Context, fruits: readonly RescueFruit[], means: Means): TonightPlan {
  const stock = new Map(means.stock);
  const kitchen = mainKitchen(ctx.place);
  // One burner is the canner's.
  const burners = Math.max(0, means.burners.free - 1);
  const batches: RescueBatch[] = [];
  let limit: string | null = null;
  let atOnce = 0;
  let hours = 0;
  for (const fruit of fruits) {
    const found = preserveOf(ctx, fruit);
    if (!found || !kitchen) continue;
    const { recipe, sheet } = found;
    const together = Math.min(burners, pansFor(kitchen, sheet.chargeG));
    const needs = new Map([...sheet.doses, ['lid-regular', sheet.jars], [sheet.jarCode, sheet.jars]]);
    const fromH = hours;
    let n = 0;
    for (; n < sheet.batches; n++) {
      const short = [...needs].find(([item, qty]) => (stock.get(item) ?? 0) < qty)?.[0];
      const late = together === 0 || (means.hours !== null && hours + sheet.hours / together > means.hours);
      if (short || late) {
        limit ??= short ? nameOf(short, sheet) : together === 0 ? 'burners and pans' : 'hours';
        break;
      }
      for (const [item, qty] of needs) stock.set(item, (stock.get(item) ?? 0) - qty);
      hours += sheet.hours / together;
      atOnce = Math.max(atOnce, together);
    }
    if (n > 0)
      batches.push({
        line: fruit.line,
        recipeId: recipe.id,
        title: recipe.title,
        batches: n,
        of: sheet.batches,
        fruitG: n * sheet.fruitG,
        sugarG: n * (sheet.doses.get('sugar') ?? 0),
        jars: n * sheet.jars,
        jarLabel: sheet.jarLabel,
        fromH,
        untilH: hours,
      });
  }
  const there = (item: string) => means.stock.get(item) ?? 0;
  const used = (item: string) => there(item) - (stock.get(item) ?? 0);
  return {
    batches,
    atOnce,
    hours,
    lids: { used: used('lid-regular'), there: there('lid-regular') },
    sugar: { usedG: used('sugar'), thereG: there('sugar') },
    limit,
  };
}

const nameOf = (item: string, sheet: Sheet): string =>
  item === 'lid-regular' ? 'lids' : item === sheet.jarCode ? `empty ${sheet.jarLabel} jars` : item.replaceAll('-', ' ');
