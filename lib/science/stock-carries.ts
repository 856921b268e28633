/**
 * Sugar a home pectin stock carries, g, with its band: stock × pectin of its alcohol test × grade 130. The per cent bands of the
 * test and the grade are estimates; a stock nobody tested is taken as several lumps, its band reaching from flakes to one lump.
 */
import { CLOT_TEST } from '#lib/reference/pectin-sources.ts';
import type { Clot } from './clot-test.ts';
import type { StrengthRange } from './learn-powder.ts';

/** Grams of sugar a gram of fruit pectin carries; estimate. */
export const FRUIT_GRADE = 130;

/** Pectin in a stock, per cent. */
export function stockPectinPct(clot: Clot | 'untested'): StrengthRange {
  const middle = (of: Clot): number => {
    const [low, high] = rowOf(of).pectinPct;
    return (low + high) / 2;
  };
  if (clot === 'untested') return { low: middle('low'), typ: middle('medium'), high: middle('high') };
  const [low, high] = rowOf(clot).pectinPct;
  return { low, typ: middle(clot), high };
}

export function stockCarries({ grams, clot }: { grams: number; clot: Clot | 'untested' }): StrengthRange {
  const pct = stockPectinPct(clot);
  const sugar = (share: number): number => (grams * share * FRUIT_GRADE) / 100;
  return { low: sugar(pct.low), typ: sugar(pct.typ), high: sugar(pct.high) };
}

function rowOf(clot: Clot) {
  const row = CLOT_TEST.find((r) => r.pectin === clot);
  if (!row) throw new RangeError(`"${clot}" is not a result of the alcohol test`);
  return row;
}
