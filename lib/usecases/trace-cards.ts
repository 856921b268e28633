/** What the trace page shows, as plain text. */
import { bothMasses, counted } from '#lib/units/format.ts';
import { longDate } from '#lib/units/plain-date.ts';
import { receivedText, type TraceView } from './read-trace.ts';

export interface TraceCards {
  answer: string;
  sub: string;
  code: string;
  label: string;
  batchCode: string | null;
  facts: { what: string; value: string }[];
  parents: { id: string; code: string; label: string; kind: string; amount: string; from: string }[];
  trees: string[];
  receipts: { code: string; label: string; from: string }[];
  sisters: { code: string; where: string }[];
}

export function traceCards(t: TraceView): TraceCards {
  const { lot } = t;
  const facts: [string, string | null][] = [
    ['What', t.label],
    ['Lot', lot.code],
    ['Made or came in', longDate(lot.madeOn)],
    ['One step back', lot.code.startsWith('R-') ? receivedText(lot) : null],
    ['Note', lot.flags.length > 0 ? lot.flags.join('; ') : null],
    ['Best before', lot.bestBefore ? longDate(lot.bestBefore) : null],
    ['Where', t.piece?.state ?? lot.address],
    ['Process', lot.kind === 'jars' ? (lot.process ?? 'unknown') : null],
    ['Seal', lot.seal],
    ['On hold', lot.hold],
    ['For', lot.kind === 'jars' ? (lot.household ? 'household and gifts' : 'household, gifts and sale') : null],
    ['Left of the lot', lot.unit === 'g' ? bothMasses(lot.onHand) : counted(lot.onHand, lot.unit)],
  ];
  const trees =
    t.trees.length > 0
      ? `${counted(t.trees.length, 'tree or row', 'trees and rows')} behind it`
      : lot.code.startsWith('R-')
        ? 'it came from elsewhere'
        : 'no tree recorded behind it';
  return {
    answer: `${t.code}: ${t.label}`,
    sub: `${trees}, ${counted(t.receipts.length, 'receipt')}, ${counted(Math.max(0, t.sisters.length - (t.piece ? 1 : 0)), 'sister jar')}.`,
    code: t.code,
    label: t.label,
    batchCode: t.batch?.code ?? null,
    facts: facts.flatMap(([what, value]) => (value === null ? [] : [{ what, value }])),
    parents: t.parents.map((p) => ({
      id: p.id,
      code: p.code,
      label: p.label,
      kind: p.kind,
      from: p.from,
      amount: p.grams > 0 ? bothMasses(p.grams) : counted(p.unitQty, p.unit),
    })),
    trees: t.trees,
    receipts: t.receipts,
    sisters: t.sisters,
  };
}
