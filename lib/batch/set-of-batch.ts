/**
 * What set to expect of one pan, with a band and the reasons, before it is cooked. Pectin figures are mostly from memory: take
 * it as ±40 %, the field set test decides, and it never unlocks a shelf. Null where a set is not the aim, or where a bought
 * pectin's own printed amounts decide.
 */

import { fruitOf } from '#lib/reference/fruits.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { pectinNeed } from '#lib/science/pectin-need.ts';
import { type PectinItem, pectinSupply } from '#lib/science/pectin-supply.ts';
import { powderCarries } from '#lib/science/powder-carries.ts';
import { type SetOutlook, setOutlook } from '#lib/science/set-outlook.ts';
import { type Figure, figure, input } from './figure.ts';
import type { MeasuredDose } from './measured-doses.ts';
import type { FruitLot } from './prepared-fruit.ts';

export interface SetOfBatch {
  /** `open`: the band reaches to both sides of enough. */
  readonly outlook: SetOutlook['outlook'] | 'open';
  /** Pectin at hand over pectin needed. */
  readonly ratio: Figure | null;
  readonly shares: { readonly soft: number; readonly good: number; readonly stiff: number };
  readonly sugarByPowder: Figure | null;
  readonly reasons: readonly string[];
  /** Ways out of a soft set. */
  readonly offers: readonly string[];
}

export interface SetQuestion {
  readonly recipe: Recipe;
  /** Lots with their grams in this pan. */
  readonly lots: readonly { readonly lot: FruitLot; readonly grams: number }[];
  readonly doses: readonly MeasuredDose[];
  readonly solidsG: number;
  readonly brix: number;
  readonly boilMin: number | null;
  readonly pH: number | null;
  /** g sugar a gram of this very powder carries, learnt from its batches. */
  readonly powderSugarPerG?: number | undefined;
}

const SETS = new Set(['jam', 'jelly', 'preserve', 'conserve', 'marmalade']);
export const USUAL_BOIL_MIN = 15;
const POWDER_ID = { 'apple-powder': 'apple-powder', 'citrus-powder': 'lemon-peel-powder' } as const;

export function setOfBatch(q: SetQuestion): SetOfBatch | null {
  if (!SETS.has(q.recipe.kind) || q.recipe.finish.by !== 'solids' || q.recipe.pectin?.from === 'bought') return null;
  const need = pectinNeed({
    sugarTotalG: q.solidsG,
    solidsPct: q.brix,
    pH: q.pH ?? gelPh(q.lots.map(({ lot, grams }) => ({ foodId: lot.foodId, grams }))),
    boiledMin: q.boilMin ?? USUAL_BOIL_MIN,
    kind: 'HM',
  });
  const supply = pectinSupply(itemsOf(q));
  const view = setOutlook(supply, need);
  const powder = powderOf(q);
  return {
    outlook: named(view),
    shares: { soft: view.soft, good: view.good, stiff: view.stiff },
    ratio: view.ratio
      ? figure({
          value: view.ratio.typ,
          unit: 'times the need',
          band: { low: view.ratio.low, high: view.ratio.high },
          formula: 'pectin at hand over pectin needed for this sugar, acidity and boil',
          inputs: [
            input('at hand, as grade 150', supply.eq150G, 'g'),
            input('needed', need.sets ? need.eq150G : '-', 'g'),
          ],
          source: 'ESTIMATE',
          status: 'estimate',
        })
      : null,
    sugarByPowder: powder,
    reasons: reasonsOf(q, view, powder),
    offers: view.outlook === 'soft' ? ['more powder', 'frozen pectin stock', 'call it a sauce'] : [],
  };
}

/** pH for the gel when nobody measured: the low end of the published range (estimate). For the set only; it clears nothing. */
export function gelPh(fruit: readonly { foodId: string; grams: number }[]): number {
  const total = fruit.reduce((sum, f) => sum + f.grams, 0);
  return fruit.reduce((sum, f) => sum + f.grams * fruitOf(f.foodId).pH.low, 0) / total;
}

function itemsOf({ recipe, lots, doses, powderSugarPerG }: SetQuestion): PectinItem[] {
  const route = recipe.extraction ? 'one extraction' : 'pulp stays in';
  const fruit = lots.map(
    ({ lot, grams }): PectinItem => ({
      kind: 'fruit',
      fruitId: lot.foodId,
      grams,
      ripeness: lot.grade === 'soft' ? 'ripe and soft' : 'just ripe',
      route,
    }),
  );
  const added = doses.flatMap((d): PectinItem[] => {
    if (d.item === 'pectin-stock') return [{ kind: 'tested juice', grams: d.grams.value, clot: 'medium' }];
    if (d.item !== 'apple-powder' && d.item !== 'citrus-powder') return [];
    const powder = { kind: 'powder', powderId: POWDER_ID[d.item], grams: d.grams.value } as const;
    return [powderSugarPerG === undefined ? powder : { ...powder, learntSugarPerG: powderSugarPerG }];
  });
  return [...fruit, ...added];
}

function powderOf({ doses, powderSugarPerG }: SetQuestion): Figure | null {
  const dose = doses.find((d) => d.item === 'apple-powder' || d.item === 'citrus-powder');
  if (!dose || (dose.item !== 'apple-powder' && dose.item !== 'citrus-powder')) return null;
  const grams = dose.grams.value;
  const byTable = powderCarries({ powderId: POWDER_ID[dose.item], grams });
  const learnt = powderSugarPerG === undefined ? null : grams * powderSugarPerG;
  return figure({
    value: learnt ?? byTable.typ,
    unit: 'g sugar',
    band: learnt === null ? { low: byTable.low, high: byTable.high } : null,
    formula:
      learnt === null
        ? 'powder times the table strength; this lot is untested'
        : 'powder times the strength its batches gave',
    inputs: [input(dose.name, grams, 'g')],
    source: 'ESTIMATE',
    status: 'estimate',
  });
}

/** A name is given only where the band (four cases of five) lies on one side; the rest is open and the plate decides. */
function named({ ratio, outlook }: SetOutlook): SetOfBatch['outlook'] {
  if (!ratio || ratio.high < 1) return 'soft';
  return ratio.low >= NEARLY_ENOUGH ? outlook : 'open';
}
const NEARLY_ENOUGH = 0.8;

/** Seen on the recipe book: apple, crabapple, blackberry and plum jelly made as printed come out below the need, quince above. */
const MODEL_RUNS_LOW =
  'These pectin figures run low: four of the five printed jellies without added pectin come out short by them. The cold plate decides.';

const kg = (g: number): string => (g / 1000).toFixed(2);

function reasonsOf({ lots }: SetQuestion, view: SetOutlook, powder: Figure | null): string[] {
  const reasons = view.reason ? [`${view.reason.charAt(0).toUpperCase()}${view.reason.slice(1)}.`] : [];
  for (const id of new Set(lots.map((l) => l.lot.foodId))) {
    const { name, setClass } = fruitOf(id);
    if (setClass.startsWith('L')) reasons.push(`${name} is a low-pectin fruit.`);
  }
  if (lots.some((l) => l.lot.grade === 'soft')) reasons.push('Soft fruit has lost part of its pectin.');
  reasons.push(MODEL_RUNS_LOW);
  if (powder?.band) {
    reasons.push(
      `${powder.inputs[0]?.value} g of untested powder carries about ${kg(powder.value)} kg (${kg(powder.band.low)}-${kg(powder.band.high)}) of the sugar.`,
    );
  }
  return reasons;
}
