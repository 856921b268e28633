/**
 * How strong each lot of home powder is, and which alcohol test a stock gave: from the tests on the lot and from the batches made with
 * it. Untested, weak or strong by its tests; learnt as soon as a batch showed its set.
 */
import type { HomePectinLot } from '#lib/batch/home-pectin.ts';
import { byWeightG, type HeldLot } from '#lib/ledger/lot.ts';
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import type { Clot } from '#lib/science/clot-test.ts';
import type { Learnt } from '#lib/science/learn-factor.ts';
import { type PlateSeen, powderStrengths, type StrengthRange } from '#lib/science/learn-powder.ts';
import { pectinNeed } from '#lib/science/pectin-need.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { BatchTaught } from './learn-records.ts';

/** Kept in the lot's details, never edited. */
export type StrengthTest = { day: PlainDate } & (
  | { how: 'clot'; result: Clot }
  | { how: 'cup'; powderG: number; sugarG: number; set: PlateSeen['plate'] }
);
export const testsOf = (lot: Pick<HeldLot, 'details'>): StrengthTest[] =>
  Array.isArray(lot.details.tests) ? (lot.details.tests as StrengthTest[]) : [];

export const POWDER_RANGE: StrengthRange = (
  POWDER_STRENGTH.find((p) => p.id === 'apple-powder') as (typeof POWDER_STRENGTH)[number]
).sugarPerG;

export type StrengthWord = 'untested' | 'weak' | 'strong' | 'learnt';
export interface LotStrength {
  word: StrengthWord;
  learnt: Learnt;
  /** Batches and tests of this very lot. */
  batches: string[];
  tests: StrengthTest[];
}

/** Code of a lot nobody has tried. */
export const UNTRIED = '';

/** Lots of apple powder with a batch or a test of their own, by code, and one nobody has tried, which starts from the others. */
export function powderStrengthsOf(
  batches: readonly BatchTaught[],
  lots: readonly HeldLot[],
): ReadonlyMap<string, LotStrength> {
  const cooked = batches.filter((b) => b.plate && b.powderLot);
  const tests = new Map(lots.filter((l) => l.item === 'apple-powder').map((l) => [l.code, testsOf(l)]));
  const tried = [...tests].filter(([, t]) => t.length > 0).map(([code]) => code);
  const codes = [...new Set([...cooked.map((b) => b.powderLot as string), ...tried])].sort();
  const of = (code: string) => cooked.filter((b) => b.powderLot === code);
  const testOf = (code: string) => tests.get(code) ?? [];
  const strengths = powderStrengths(
    POWDER_RANGE,
    [...codes.map((c) => [...of(c).flatMap((b) => b.plate ?? []), ...testOf(c).flatMap(cupSeen)]), []],
    [...codes.map((c) => testOf(c).flatMap((t) => (t.how === 'clot' ? [t.result] : []))), []],
  );
  return new Map(
    [...codes, UNTRIED].map((code, i) => {
      const own = of(code).map((b) => b.code);
      const learnt = { ...(strengths[i] as Learnt), n: own.length };
      return [
        code,
        { word: wordOf(own.length, testOf(code).length, learnt), learnt, batches: own, tests: testOf(code) },
      ];
    }),
  );
}

function wordOf(batches: number, tests: number, learnt: Learnt): StrengthWord {
  if (batches > 0) return 'learnt';
  if (tests === 0) return 'untested';
  return learnt.middle < POWDER_RANGE.typ ? 'weak' : 'strong';
}

/** A cup of water, lemon juice, sugar and powder boiled for 5 minutes to 65 °Bx at about pH 2.9 (estimates): no other pectin in it. */
function cupSeen(t: StrengthTest): PlateSeen[] {
  if (t.how !== 'cup') return [];
  const need = pectinNeed({ sugarTotalG: t.sugarG, solidsPct: 65, pH: 2.9, boiledMin: 5, kind: 'HM' });
  return need.sets ? [{ plate: t.set, ownEq150G: 0, needEq150G: need.eq150G, powderG: t.powderG }] : [];
}

/** The last alcohol test of a stock. */
export const clotOf = (lot: Pick<HeldLot, 'details'>): Clot | null =>
  testsOf(lot)
    .flatMap((t) => (t.how === 'clot' ? [t.result] : []))
    .at(-1) ?? null;

export const stockWord = (clot: Clot | null): StrengthWord =>
  clot === null ? 'untested' : clot === 'high' ? 'strong' : 'weak';

/** Powder and stock in line for a dose, oldest first: what is ready and has a weight. Citrus powder goes by the table. */
export function homePectinInLine(
  lots: readonly HeldLot[],
  strengths: ReadonlyMap<string, LotStrength>,
): HomePectinLot[] {
  const nothing = strengths.size === 1;
  return lots.flatMap((lot): HomePectinLot[] => {
    const common = { code: lot.code, grams: byWeightG(lot) ?? 0 };
    if (common.grams <= 0) return [];
    if (lot.item === 'pectin-stock')
      return [{ ...common, item: 'pectin-stock', word: stockWord(clotOf(lot)), sugarPerG: null, clot: clotOf(lot) }];
    if (lot.item === 'citrus-rind')
      return [{ ...common, item: 'citrus-powder', word: 'untested', sugarPerG: null, clot: null }];
    if (lot.item !== 'apple-powder') return [];
    const known = strengths.get(lot.code) ?? (strengths.get(UNTRIED) as LotStrength);
    return [
      {
        ...common,
        item: 'apple-powder',
        word: known.word,
        sugarPerG: nothing ? null : rangeOf(known.learnt),
        clot: null,
      },
    ];
  });
}

export const rangeOf = ({ low, middle, high }: Learnt): StrengthRange => ({ low, typ: middle, high });
