/** The typed sheet as the question it asks: kilograms to grams, blanks to "not said". */
import type { BatchAskForm } from '#lib/forms/batch.ts';
import type { BatchAsk } from './batch-ask.ts';

export const batchAskOf = (f: BatchAskForm): BatchAsk => ({
  recipeId: f.recipe,
  draws: f.lot.map((lotId, i) => ({ lotId, grams: Math.round((f.kg[i] ?? 0) * 1000) })),
  kitchenId: f.kitchen || null,
  panCode: f.pan || null,
  jarKind: f.jar || null,
  method: 'boiling-water',
  trimG: f.trim === null ? null : Math.round(f.trim * 1000),
  brix: f.brix,
  waterC: f.water,
  batches: f.batches,
  amounts: {
    ...(f.addwater === null ? {} : { water: Math.round(f.addwater * 1000) }),
    ...(f.stock === null ? {} : { 'pectin-stock': f.stock }),
  },
  ...(f.pectinFrom || f.acidFrom
    ? { exchange: { ...(f.pectinFrom ? { pectin: f.pectinFrom } : {}), ...(f.acidFrom ? { acid: f.acidFrom } : {}) } }
    : {}),
  ...(f.softset ? { softSet: f.softset } : {}),
  measures: {
    ...(f.sugar === null ? {} : { sugar: f.sugar }),
    ...(f.pectin === null ? {} : { pectin: f.pectin }),
    ...(f.acid === null ? {} : { acid: f.acid }),
  },
});
