/**
 * Grams of bought pectin that home powder and stock stood in for. Definition: powder g × grams of sugar a gram of it carries / 150,
 * the sugar a gram of bought pectin of grade 150 carries; stock as tested juice of its clot band. Lots of one household
 * share their error, so the bands add up end to end. Stock nobody tested is not counted.
 */
import { CLOT_TEST } from '#lib/reference/pectin-sources.ts';
import { STANDARD_GRADE } from '#lib/science/pectin-need.ts';
import { pectinSupply } from '#lib/science/pectin-supply.ts';
import { type Figure, figure, input } from './figure.ts';

export type PectinUsed = { readonly code: string; readonly grams: number } & (
  | {
      readonly kind: 'powder';
      readonly sugarPerG: { readonly low: number; readonly typ: number; readonly high: number };
    }
  | { readonly kind: 'stock'; readonly clot: 'high' | 'medium' | 'low' | null }
);

/** Of one lot; null for stock that was not tested. */
export function pectinReplaced(used: PectinUsed): Figure | null {
  if (used.kind === 'powder') {
    const { low, typ, high } = used.sugarPerG;
    const of = (perG: number) => (used.grams * perG) / STANDARD_GRADE;
    return figure({
      value: of(typ),
      unit: 'g',
      band: { low: of(low), high: of(high) },
      formula: 'powder × g of sugar a gram carries / grade 150',
      inputs: [
        input('powder', used.grams, 'g'),
        input('carries', typ, 'g/g'),
        input('band', `${one(low)} to ${one(high)}`),
      ],
      source: 'COMPUTED',
      status: 'estimate',
    });
  }
  const row = CLOT_TEST.find((r) => r.pectin === used.clot);
  if (!row) return null;
  const [low, high] = row.pectinPct;
  const typ = pectinSupply([{ kind: 'tested juice', grams: used.grams, clot: row.pectin }]).eq150G;
  const of = (pct: number) => (2 * typ * pct) / (low + high);
  return figure({
    value: typ,
    unit: 'g',
    band: { low: of(low), high: of(high) },
    formula: 'stock × pectin of its clot test, of the grade of fruit, / grade 150',
    inputs: [input('stock', used.grams, 'g'), input('pectin', `${low} to ${high}`, '%')],
    source: row.source,
    status: 'estimate',
  });
}

const one = (x: number): string => x.toFixed(1);

/** All lots together; null where none counts. */
export function allPectinReplaced(used: readonly PectinUsed[]): { typ: number; low: number; high: number } | null {
  const figures = used.flatMap((u) => pectinReplaced(u) ?? []);
  if (figures.length === 0) return null;
  const sum = (of: (f: Figure) => number) => figures.reduce((s, f) => s + of(f), 0);
  return {
    typ: sum((f) => f.value),
    low: sum((f) => f.band?.low ?? f.value),
    high: sum((f) => f.band?.high ?? f.value),
  };
}
