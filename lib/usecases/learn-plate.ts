/**
 * What the set of a batch with apple powder says, with the pectin of its fruit and the need as its sheet reckons them. The set reported of
 * the cold jars stands before the last cold plate. Where several lots were mixed, the one most was drawn from is learnt; the others and
 * any stock count with the table, untested.
 */
import { gelPh, USUAL_BOIL_MIN } from '#lib/batch/set-of-batch.ts';
import { type BatchRecord, JAR_SET, type ReadingRecord } from '#lib/ledger/batch-record.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { type DoseItem, doseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { PlateSeen } from '#lib/science/learn-powder.ts';
import { pectinNeed } from '#lib/science/pectin-need.ts';
import { type PectinItem, pectinSupply } from '#lib/science/pectin-supply.ts';
import type { FrozenSheet } from './frozen-sheet.ts';

export interface PowderIn {
  code: string;
  grams: number;
}
interface InPan {
  logged: readonly ReadingRecord[];
  lots: readonly HeldLot[];
  /** Lots of apple powder in the pan, the most first. */
  powders: readonly PowderIn[];
}

export function plateSeen(
  batch: BatchRecord,
  recipe: Pick<Recipe, 'extraction'>,
  sheet: FrozenSheet,
  { logged, lots, powders }: InPan,
): PlateSeen | null {
  const sets = logged.filter((r) => r.kind === 'set-test');
  const plate = sets.findLast((r) => r.instrument === JAR_SET) ?? sets.at(-1);
  const [most, ...others] = powders;
  const powderG = most?.grams ?? doseG(sheet, 'apple-powder');
  if (!plate || powderG <= 0 || !sheet.finalG || !sheet.brix) return null;
  const fruit = fruitIn(batch, sheet, lots);
  if (fruit.length === 0) return null;
  const read = logged.filter((r) => r.kind === 'ph').map((r) => r.value / 100);
  const need = pectinNeed({
    sugarTotalG: (sheet.finalG * sheet.brix) / 100,
    solidsPct: sheet.brix,
    pH:
      read.length > 0
        ? read.reduce((s, x) => s + x, 0) / read.length
        : gelPh(fruit.map((f) => ({ foodId: f.fruitId, grams: f.grams }))),
    boiledMin: sheet.boilMin ?? USUAL_BOIL_MIN,
    kind: 'HM',
  });
  if (!need.sets) return null;
  const route = recipe.extraction ? 'one extraction' : 'pulp stays in';
  const stockG = doseG(sheet, 'pectin-stock');
  const own = pectinSupply([
    ...fruit.map((f): PectinItem => ({ kind: 'fruit', ...f, route })),
    ...others.map(({ grams }): PectinItem => ({ kind: 'powder', powderId: 'apple-powder', grams })),
    { kind: 'tested juice', grams: stockG, clot: 'untested' },
  ]);
  return {
    plate: Math.max(0, Math.min(2, Math.round(plate.value / 100))) as 0 | 1 | 2,
    ownEq150G: own.eq150G,
    needEq150G: need.eq150G,
    powderG,
  };
}

const doseG = (sheet: FrozenSheet, item: DoseItem): number =>
  sheet.doses?.find((d) => d.name === doseItem(item).name)?.grams ?? 0;

type FruitIn = { fruitId: string; grams: number; ripeness: 'ripe and soft' | 'just ripe' };

/** Prepared fruit in this one pan: the lots' weights in proportion. */
function fruitIn(batch: BatchRecord, sheet: FrozenSheet, lots: readonly HeldLot[]): FruitIn[] {
  const drawn = Array.isArray(batch.inputs.lots) ? (batch.inputs.lots as { code: string; grams: number }[]) : [];
  const total = drawn.reduce((s, d) => s + d.grams, 0);
  return drawn.flatMap(({ code, grams }) => {
    const lot = lots.find((l) => l.code === code);
    if (!lot?.foodId || !FRUITS.some((f) => f.id === lot.foodId)) return [];
    const ripeness = lot.grade === 'soft' ? ('ripe and soft' as const) : ('just ripe' as const);
    return [{ fruitId: lot.foodId, grams: (sheet.preparedG * grams) / total, ripeness }];
  });
}
