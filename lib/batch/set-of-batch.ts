/**
 * What set to expect of one pan, with a band and the reasons, before it is cooked. Pectin figures are mostly from memory: take
 * it as ±40 %, the field set test decides, and it never unlocks a shelf. Null where a set is not the aim, or where a bought
 * pectin's own printed amounts decide.
 */

import { fruitOf } from '#lib/reference/fruits.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { pectinNeed } from '#lib/science/pectin-need.ts';
import { type PectinItem, pectinSupply } from '#lib/science/pectin-supply.ts';
import { type SetOutlook, setOutlook } from '#lib/science/set-outlook.ts';
import { type Figure, figure, input } from './figure.ts';
import { carriedFigure, type HomePectinLot, type HomePectinPart, homePectinParts } from './home-pectin.ts';
import type { MeasuredDose } from './measured-doses.ts';
import type { FruitLot } from './prepared-fruit.ts';

export interface SetOfBatch {
  /** `open`: the band reaches to both sides of enough. */
  readonly outlook: SetOutlook['outlook'] | 'open';
  /** Pectin at hand over pectin needed. */
  readonly ratio: Figure | null;
  readonly shares: { readonly soft: number; readonly good: number; readonly stiff: number };
  /** Sugar the home powder and stock in it carry. */
  readonly sugarByPowder: Figure | null;
  readonly parts: readonly HomePectinPart[];
  readonly reasons: readonly string[];
  /** Ways out of a soft set. */
  readonly offers: readonly string[];
  /** What the cook accepts before it is lit, where home powder or stock cannot carry it; null where nothing is asked. */
  readonly softSet: string | null;
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
  readonly homePectin?: readonly HomePectinLot[] | undefined;
}

const SETS = new Set(['jam', 'jelly', 'preserve', 'conserve', 'marmalade']);
export const meantToSet = ({ kind, finish }: Pick<Recipe, 'kind' | 'finish'>): boolean =>
  SETS.has(kind) && finish.by === 'solids';
export const USUAL_BOIL_MIN = 15;

export function setOfBatch(q: SetQuestion): SetOfBatch | null {
  if (!meantToSet(q.recipe) || q.recipe.pectin?.from === 'bought') return null;
  const need = pectinNeed({
    sugarTotalG: q.solidsG,
    solidsPct: q.brix,
    pH: q.pH ?? gelPh(q.lots.map(({ lot, grams }) => ({ foodId: lot.foodId, grams }))),
    boiledMin: q.boilMin ?? USUAL_BOIL_MIN,
    kind: 'HM',
  });
  const parts = homePectinParts(q.doses, q.homePectin);
  const supply = pectinSupply([...fruitItems(q), ...parts.map((p) => p.supply)]);
  const view = setOutlook(supply, need);
  const outlook = named(view);
  return {
    outlook,
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
    sugarByPowder: carriedFigure(parts),
    parts,
    reasons: reasonsOf(q, view, parts),
    offers: view.outlook === 'soft' ? offersOf(need.sets ? need.eq150G - supply.eq150G : 0) : [],
    softSet: outlook === 'soft' && parts.length > 0 ? softSetOf(q, parts) : null,
  };
}

/** pH for the gel when nobody measured: the low end of the published range (estimate). For the set only; it clears nothing. */
export function gelPh(fruit: readonly { foodId: string; grams: number }[]): number {
  const total = fruit.reduce((sum, f) => sum + f.grams, 0);
  return fruit.reduce((sum, f) => sum + f.grams * fruitOf(f.foodId).pH.low, 0) / total;
}

const fruitItems = ({ recipe, lots }: SetQuestion): PectinItem[] =>
  lots.map(
    ({ lot, grams }): PectinItem => ({
      kind: 'fruit',
      fruitId: lot.foodId,
      grams,
      ripeness: lot.grade === 'soft' ? 'ripe and soft' : 'just ripe',
      route: recipe.extraction ? 'one extraction' : 'pulp stays in',
    }),
  );

/** What would make up the rest by the same figures, untested: grams of powder, of stock; or another name. */
function offersOf(missingEq150G: number): string[] {
  const perKg = (eq150G: number): string => kg(missingEq150G / eq150G);
  if (missingEq150G <= 0) return ['more powder', 'frozen pectin stock', 'call it a sauce'];
  const powder = pectinSupply([{ kind: 'powder', powderId: 'apple-powder', grams: 1 }]).eq150G;
  const stock = pectinSupply([{ kind: 'tested juice', grams: 1, clot: 'untested' }]).eq150G;
  return [
    `more powder: about ${perKg(powder)} kg more, untested, would make up the rest`,
    `frozen pectin stock: about ${perKg(stock)} kg, untested, would`,
    'call it a sauce',
  ];
}

function softSetOf({ lots, solidsG }: SetQuestion, parts: readonly HomePectinPart[]): string {
  const fruit = lowPectin(lots).length > 0 ? 'the fruit is low in pectin: ' : '';
  return `${parts.map(carriesText).join(' ')} There is ${kg(solidsG)} kg of it, and ${fruit}expect a soft set.`;
}

const carriesText = (p: HomePectinPart): string =>
  `${Math.round(p.grams)} g of ${p.word} ${p.item === 'pectin-stock' ? 'stock' : 'powder'}${p.code ? ` ${p.code}` : ''} carries about ${kg(p.carries.typ)} kg (${kg(p.carries.low)}-${kg(p.carries.high)}) of the sugar.`;

const lowPectin = (lots: SetQuestion['lots']): string[] =>
  [...new Set(lots.map((l) => l.lot.foodId))]
    .map(fruitOf)
    .filter(({ setClass }) => setClass.startsWith('L'))
    .map(({ name }) => name);

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

function reasonsOf({ lots }: SetQuestion, view: SetOutlook, parts: readonly HomePectinPart[]): string[] {
  return [
    ...(view.reason ? [`${view.reason.charAt(0).toUpperCase()}${view.reason.slice(1)}.`] : []),
    ...lowPectin(lots).map((name) => `${name} is a low-pectin fruit.`),
    ...(lots.some((l) => l.lot.grade === 'soft') ? ['Soft fruit has lost part of its pectin.'] : []),
    MODEL_RUNS_LOW,
    ...parts.map(carriesText),
  ];
}
