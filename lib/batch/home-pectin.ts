/**
 * The home powder and pectin stock of a dose, by the lots it is drawn from, oldest first: what each is known to carry, and what they carry
 * together. The bands are added end to end, for lots of one household err together.
 */
import { type HomePectinItem, isHomePectin } from '#lib/reference/recipes/dose-items.ts';
import type { Clot } from '#lib/science/clot-test.ts';
import type { StrengthRange } from '#lib/science/learn-powder.ts';
import type { PectinItem } from '#lib/science/pectin-supply.ts';
import { powderCarries } from '#lib/science/powder-carries.ts';
import { stockCarries } from '#lib/science/stock-carries.ts';
import { type Figure, figure, input } from './figure.ts';
import type { MeasuredDose } from './measured-doses.ts';

/** A lot in line for the dose. `word` is its strength as it is said: untested, weak, strong, learnt. */
export interface HomePectinLot {
  readonly item: HomePectinItem;
  readonly code: string;
  readonly grams: number;
  readonly word: string;
  /** Of powder; null: the table's. */
  readonly sugarPerG: StrengthRange | null;
  /** Of stock. */
  readonly clot: Clot | null;
}

const POWDER_ID = { 'apple-powder': 'apple-powder', 'citrus-powder': 'lemon-peel-powder' } as const;

export interface HomePectinPart {
  readonly item: HomePectinItem;
  readonly name: string;
  /** Lot it is drawn from; null where none is on record. */
  readonly code: string | null;
  readonly word: string;
  readonly grams: number;
  readonly carries: StrengthRange;
  readonly supply: PectinItem;
}

export function homePectinParts(
  doses: readonly MeasuredDose[],
  inLine: readonly HomePectinLot[] = [],
): HomePectinPart[] {
  return doses.flatMap((dose) => {
    if (!isHomePectin(dose.item)) return [];
    const lots = inLine.filter((l) => l.item === dose.item);
    let left = dose.grams.value;
    const parts: HomePectinPart[] = [];
    for (const lot of lots) {
      const grams = Math.min(left, lot.grams);
      if (grams > 0) parts.push(partOf(dose.item, dose.name, grams, lot));
      left -= grams;
    }
    return left > 0 ? [...parts, partOf(dose.item, dose.name, left, null)] : parts;
  });
}

function partOf(item: HomePectinItem, name: string, grams: number, lot: HomePectinLot | null): HomePectinPart {
  const common = { item, name, grams, code: lot?.code ?? null, word: lot?.word ?? 'untested' };
  if (item === 'pectin-stock') {
    const clot = lot?.clot ?? 'untested';
    return { ...common, carries: stockCarries({ grams, clot }), supply: { kind: 'tested juice', grams, clot } };
  }
  const powder = { powderId: POWDER_ID[item], grams, ...(lot?.sugarPerG ? { sugarPerG: lot.sugarPerG } : {}) };
  return { ...common, carries: powderCarries(powder), supply: { kind: 'powder', ...powder } };
}

/** Sugar all of them carry; null where there is none. */
export function carriedFigure(parts: readonly HomePectinPart[]): Figure | null {
  if (parts.length === 0) return null;
  const sum = (of: keyof StrengthRange): number => parts.reduce((g, p) => g + p.carries[of], 0);
  return figure({
    value: sum('typ'),
    unit: 'g sugar',
    band: { low: sum('low'), high: sum('high') },
    formula: 'each lot’s grams times what a gram of it carries, added; the bands are added end to end',
    inputs: parts.map((p) => input(`${p.name}${p.code ? ` ${p.code}` : ''}, ${p.word}`, p.grams, 'g')),
    source: 'ESTIMATE',
    status: 'estimate',
  });
}
