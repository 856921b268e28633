/** The sheet for what was actually weighed, and whether the stores hold what it asks for. Reads only. */

import type { BatchQuestion } from '#lib/batch/batch-question.ts';
import { type BatchSheet, batchSheet } from '#lib/batch/batch-sheet.ts';
import { inStockUnit, STOCK_OF_DOSE } from '#lib/batch/dose-stock.ts';
import { weightOf } from '#lib/batch/household.ts';
import { isByWeight } from '#lib/batch/measured-doses.ts';
import type { FruitLot } from '#lib/batch/prepared-fruit.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import { byWeightG, type HeldLot, isReady } from '#lib/ledger/lot.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { readingsOf } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { type JarKind, type Kitchen, mainKitchen, type Pan } from '#lib/store/place.ts';
import type { Measure } from '#lib/units/measure.ts';
import { splitWhole } from '#lib/units/split.ts';
import type { BatchAsk } from './batch-ask.ts';
import { benchQuestion, jarKindFor, panFor } from './bench-question.ts';
import type { Context } from './context.ts';
import { swapped } from './exchange-dose.ts';
import { type LearntFigures, learntFigures } from './learn-figures.ts';
import { recipeHere } from './recipes-here.ts';

export interface Draft {
  recipe: Recipe;
  sheet: BatchSheet;
  question: BatchQuestion;
  kitchen: Kitchen;
  pan: Pan | null;
  jarKind: JarKind | null;
  lots: { lot: HeldLot; grams: number }[];
  waterC: number | null;
  waterFrom: 'typed' | 'reading' | 'altitude';
  /** Amounts typed by the spoon that should be weighed. */
  weighIt: string[];
  /** Figures that own batches taught, by name. */
  learnt: { pan: boolean; loss: boolean; powder: boolean };
  /** What is short, with the numbers; empty when the batch can start. */
  short: string[];
}

export async function draftBatch(ctx: Context, typed: BatchAsk, tx: Db | Tx = ctx.db): Promise<Draft | Refusal> {
  const written = recipeHere(ctx.place, typed.recipeId);
  if (!written) return { refused: `"${typed.recipeId}" is not a recipe of this place` };
  const recipe = exchanged(written, typed);
  if ('refused' in recipe) return recipe;
  const weighed = inGrams(recipe, typed);
  if ('refused' in weighed) return weighed;
  const ask: BatchAsk = { ...typed, amounts: { ...typed.amounts, ...weighed.amounts } };
  const kitchen = ctx.place.kitchens.find((k) => k.id === ask.kitchenId) ?? mainKitchen(ctx.place);
  if (!kitchen) return { refused: 'there is no kitchen on record yet' };
  const drawn = await drawnLots(ctx, ask, tx);
  if ('refused' in drawn) return drawn;
  const reading = (await readingsOf(tx, ctx.place.id, { kind: 'water', day: ctx.today, kitchenId: kitchen.id })).at(-1);
  const waterC = ask.waterC ?? (reading ? reading.value / 100 : null);
  const pan = panFor(kitchen, ask.panCode);
  const jarKind = jarKindFor(ctx, recipe, ask.jarKind);
  const learnt = await learntFigures(ctx, kitchen, pan, tx);
  const question = questionOf(ctx, { ask, written, recipe, kitchen, pan, jarKind, waterC, learnt, lots: drawn.lots });
  const sheet = batchSheet(question);
  return {
    recipe,
    sheet,
    question,
    kitchen,
    pan,
    jarKind,
    lots: drawn.lots,
    waterC,
    weighIt: weighed.weighIt,
    learnt: {
      pan: learnt.evapGPerMin !== null,
      loss: learnt.lossG !== null,
      powder: sheet.set?.parts.some((p) => p.word === 'learnt') ?? false,
    },
    waterFrom: ask.waterC !== null ? 'typed' : reading ? 'reading' : 'altitude',
    short: await shortOf(ctx, tx, sheet, jarKind),
  };
}

/** With the pectin and the acid the cook exchanged; how much of them goes in is typed for each batch. */
function exchanged(written: Recipe, { exchange = {}, measures = {} }: BatchAsk): Recipe | Refusal {
  const { pectin, acid } = exchange;
  return swapped(written, {
    pectin: pectin ? { item: pectin, gPerKg: measures.pectin ? 0 : null } : null,
    acid: acid ? { item: acid, gPerKg: measures.acid ? 0 : null } : null,
  });
}

/** The amounts typed by scale, cup or spoon as grams of the recipe's own sugar, pectin and acid. */
function inGrams(
  recipe: Recipe,
  { measures = {} }: BatchAsk,
): { amounts: BatchAsk['amounts']; weighIt: string[] } | Refusal {
  const acid = recipe.acid && isByWeight(recipe.acid) ? recipe.acid : null;
  const items = { sugar: recipe.sugar?.item, pectin: recipe.pectin?.item, acid: acid?.item };
  const amounts: BatchAsk['amounts'] = {};
  const weighIt: string[] = [];
  for (const [role, measure] of Object.entries(measures) as [keyof typeof items, Measure][]) {
    const item = items[role];
    if (!item) return { refused: `this recipe has no ${role} of its own to set` };
    const told = weightOf(item, measure);
    if ('refused' in told) return told;
    amounts[item] = Math.round(told.grams);
    if (told.weighIt) weighIt.push(told.weighIt);
  }
  return { amounts, weighIt };
}

/** Each lot drawn on, with no more than it holds. */
async function drawnLots(ctx: Context, ask: BatchAsk, tx: Db | Tx): Promise<{ lots: Draft['lots'] } | Refusal> {
  const held = await loadLots(tx, ctx.place.id, { ids: ask.draws.map((d) => d.lotId) });
  const lots: Draft['lots'] = [];
  for (const { lotId, grams } of ask.draws.filter((d) => d.grams > 0)) {
    const lot = held.find((l) => l.id === lotId);
    if (!lot) return { refused: 'one of the lots is used up' };
    const heldG = byWeightG(lot);
    if (heldG === null) return { refused: `what a pack of ${lot.code} weighs is not on record` };
    if (grams > heldG) return { refused: `${fruitLabel(lot)}: ${grams} g asked for, ${heldG} g left (${lot.code})` };
    if (lot.hold) return { refused: `${lot.code} is on hold: ${lot.hold}` };
    if (lot.lockedUntil && lot.lockedUntil > ctx.today)
      return { refused: `${lot.code} is locked until ${lot.lockedUntil} after a spray` };
    lots.push({ lot, grams });
  }
  if (lots.length === 0) return { refused: 'no fruit was weighed' };
  return { lots };
}

/** "Damson, soft"; packs whose grade nobody wrote down go by their name alone. */
export const fruitLabel = ({ label, grade }: Pick<HeldLot, 'label' | 'grade'>): string =>
  grade ? `${label}, ${grade}` : label;

interface Parts {
  ask: BatchAsk;
  /** The recipe before anything was exchanged in it. */
  written: Recipe;
  recipe: Recipe;
  kitchen: Kitchen;
  pan: Pan | null;
  jarKind: JarKind | null;
  waterC: number | null;
  learnt: LearntFigures;
  lots: Draft['lots'];
}

function questionOf(ctx: Context, parts: Parts): BatchQuestion {
  const { ask, lots } = parts;
  const trims =
    ask.trimG === null || lots.every((l) => isPrepared(l.lot))
      ? null
      : splitWhole(
          Math.round(ask.trimG),
          lots.map((l) => (isPrepared(l.lot) ? 0 : l.grams)),
        );
  const own = Object.keys(ask.amounts).length > 0 || parts.recipe !== parts.written;
  return benchQuestion(ctx, {
    ...parts,
    method: ask.method,
    fruit: lots.map(
      ({ lot, grams }, i): FruitLot => ({
        foodId: lot.foodId ?? '',
        grams,
        grade: lot.grade ?? 'perfect',
        groundFall: lot.groundFall,
        prepared: isPrepared(lot),
        ...(trims ? { trimG: trims[i] as number } : {}),
        ...(ask.brix !== null ? { brix: ask.brix } : {}),
      }),
    ),
    // The recipe's own amounts count as kept; amounts the cook set are theirs.
    asked: { ...(ask.batches !== null ? { batches: ask.batches } : {}), ...(own ? { amounts: ask.amounts } : {}) },
    asWritten: !own,
  });
}

/** Frozen fruit was trimmed before it was packed; so was what is marked so. */
const isPrepared = ({ kind, details }: Pick<HeldLot, 'kind' | 'details'>): boolean =>
  kind === 'frozen' || details.prepared === true;

async function shortOf(ctx: Context, tx: Db | Tx, sheet: BatchSheet, jarKind: JarKind | null): Promise<string[]> {
  const stock = await loadLots(tx, ctx.place.id, { kinds: ['supply', 'set-aside', 'lids', 'empties'] });
  const have = (item: string, kind?: string) =>
    stock
      .filter((l) => l.item === item && (!kind || l.kind === kind) && isReady(l))
      .reduce((n, l) => n + (byWeightG(l) ?? l.onHand), 0);
  const short: string[] = [];
  for (const [item, grams] of Object.entries(sheet.totals) as [DoseItem, number][]) {
    const stockItem = STOCK_OF_DOSE[item];
    if (!stockItem || grams <= 0) continue;
    const need = inStockUnit(item, grams);
    if (have(stockItem) < need) short.push(`${item.replaceAll('-', ' ')}: ${need} asked for, ${have(stockItem)} left`);
  }
  const jars = sheet.jars.value;
  if (sheet.storage.shelf && jarKind?.canning && jars > 0) {
    if (have('lid-regular', 'lids') < jars) short.push(`lids: ${jars} asked for, ${have('lid-regular', 'lids')} left`);
    if (have(jarKind.code, 'empties') < jars)
      short.push(`empty ${jarKind.label} jars: ${jars} asked for, ${have(jarKind.code, 'empties')} left`);
  }
  return short;
}
