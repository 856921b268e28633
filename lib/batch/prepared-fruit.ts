/**
 * Fruit from the scale to the pan: weight as weighed less what is trimmed off. A weighed trim or a prepared weight beats the
 * table; a refractometer reading beats the table's soluble solids. Grams; degrees Brix.
 */

import type { FruitGrade } from '#lib/reference/fruit-grades.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import { type Figure, figure, input } from './figure.ts';

export interface FruitLot {
  readonly foodId: string;
  /** Grams as weighed; of prepared fruit when `prepared` is true (pitted and frozen, for one). */
  readonly grams: number;
  readonly grade: FruitGrade;
  readonly groundFall?: boolean;
  readonly prepared?: boolean;
  /** Trim weighed off this lot, grams. */
  readonly trimG?: number;
  /** Refractometer reading of this fruit. */
  readonly brix?: number;
}

export interface PreparedLot {
  readonly lot: FruitLot;
  readonly preparedG: Figure;
  readonly brix: Figure;
  readonly insolublePct: number;
}

/** Fibre, protein and fat of fruit the table has no row for (per cent; estimate). */
const INSOLUBLE_PCT = 1.5;

/** `whole` keeps the weight as it is: fruit that is pressed, or boiled for its juice. RangeError for an unknown food. */
export function preparedFruit(lot: FruitLot, whole = false): PreparedLot {
  const fruit = fruitOf(lot.foodId);
  return {
    lot,
    preparedG: preparedWeight(lot, whole),
    brix:
      lot.brix === undefined
        ? figure({
            value: fruit.solublePct.typ,
            unit: '°Bx',
            band: { low: fruit.solublePct.low, high: fruit.solublePct.high },
            formula: `table figure for ${fruit.name}; your refractometer beats it`,
            inputs: [],
            source: fruit.status.soluble.source,
            status: fruit.status.soluble.status,
          })
        : figure({ value: lot.brix, unit: '°Bx', formula: 'your refractometer', inputs: [] }),
    insolublePct: fruit.insolublePct ?? INSOLUBLE_PCT,
  };
}

function preparedWeight(lot: FruitLot, whole: boolean): Figure {
  const weighed = input('as weighed', lot.grams, 'g');
  if (lot.prepared || whole) {
    return figure({ value: lot.grams, unit: 'g', formula: 'weight as it goes into the pan', inputs: [weighed] });
  }
  if (lot.trimG !== undefined) {
    const value = Math.max(0, lot.grams - lot.trimG);
    return figure({
      value,
      unit: 'g',
      formula: 'as weighed less the trim you weighed',
      inputs: [weighed, input('trim', lot.trimG, 'g')],
    });
  }
  const { wastePct, status, name } = fruitOf(lot.foodId);
  return figure({
    value: Math.round(lot.grams * (1 - wastePct / 100)),
    unit: 'g',
    formula: `as weighed less the table's trim for ${name}; weigh your own`,
    inputs: [weighed, input('trim', wastePct, '%')],
    source: status.waste.source,
    status: status.waste.status,
  });
}
