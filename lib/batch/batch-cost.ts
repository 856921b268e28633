/** What a batch costs in bought goods, in the smallest unit of money. Own fruit and hours are not priced. */
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import { type Figure, figure, input } from './figure.ts';
import type { MeasuredDose } from './measured-doses.ts';

export interface Prices {
  /** Smallest unit of money per kilogram. */
  readonly perKg: Readonly<Partial<Record<DoseItem, number>>>;
  readonly perLid?: number;
}

export interface BatchCost {
  readonly total: Figure;
  /** What had no price and is not in the total. */
  readonly unpriced: readonly string[];
}

export function batchCost(doses: readonly MeasuredDose[], lids: number, prices: Prices): BatchCost {
  const bought = doses.filter((d) => d.item !== 'water');
  const priced = bought.filter((d) => prices.perKg[d.item] !== undefined);
  const goods = priced.reduce((sum, d) => sum + (d.grams.value * (prices.perKg[d.item] as number)) / 1000, 0);
  const lidCost = prices.perLid === undefined ? 0 : lids * prices.perLid;
  return {
    total: figure({
      value: Math.round(goods + lidCost),
      unit: 'smallest unit of money',
      formula: 'weight times price, and lids',
      inputs: [...priced.map((d) => input(d.name, d.grams.value, 'g')), input('lids', lids)],
    }),
    unpriced: [
      ...new Set([
        ...bought.filter((d) => prices.perKg[d.item] === undefined).map((d) => d.name),
        ...(prices.perLid === undefined && lids > 0 ? ['lids'] : []),
      ]),
    ],
  };
}
