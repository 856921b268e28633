/**
 * What an addition does to a pH that was measured: advice for taste and gel. It clears nothing, and a tested dose is never made
 * smaller by it. Acidity and acid shares are the fruit table's; only the start is the cook's own reading.
 */
import { fruitOf } from '#lib/reference/fruits.ts';
import { addAcid, fitAcidity, moleShares } from '#lib/science/acid-balance.ts';
import { type Figure, figure, input } from './figure.ts';

/** Additions in grams a kilogram of fruit. Null where the table's acidity cannot have that pH, or has no acid shares. */
export function phAfterAcid(q: {
  readonly foodId: string;
  readonly measuredPh: number;
  readonly citricG: number;
  readonly lemonJuiceG: number;
}): Figure | null {
  const fruit = fruitOf(q.foodId);
  if (Object.keys(fruit.ions.shares).length === 0) return null;
  try {
    const start = fitAcidity({
      taPct: fruit.acidPct.typ,
      as: fruit.acidAs,
      pH: q.measuredPh,
      shares: moleShares(fruit.ions.shares),
      waterPct: fruit.waterPct,
    });
    const { pH, sd } = addAcid(start, { citricG: q.citricG, lemonJuiceG: q.lemonJuiceG });
    return figure({
      value: pH,
      unit: 'pH',
      band: { low: pH - 1.28 * sd, high: pH + 1.28 * sd },
      formula: 'charge balance from the measured pH and the table’s acidity; for taste and gel, it opens no shelf',
      inputs: [
        input('measured', q.measuredPh),
        input('citric acid', q.citricG, 'g/kg'),
        input('lemon juice', q.lemonJuiceG, 'g/kg'),
      ],
      source: 'COMPUTED',
      status: 'estimate',
    });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
