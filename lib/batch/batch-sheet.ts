/**
 * The batch sheet: everything the cook needs for the fruit that was actually weighed, and for every figure where it comes
 * from. Spreads by mass balance, packs by printed weight, juice by volume, frozen and dried by weight. Pure; the only errors
 * thrown are RangeErrors for a food, size or reading that does not exist.
 */

import { acidDoses } from '#lib/reference/acid-doses.ts';
import { jarSizeOf } from '#lib/reference/jar-sizes.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { type BatchCost, batchCost } from './batch-cost.ts';
import type { BatchQuestion } from './batch-question.ts';
import type { BatchSplit } from './batch-split.ts';
import { type CannerClock, cannerClock } from './canner-clock.ts';
import { type DrawnJuice, drawnJuice } from './drawn-juice.ts';
import { type Figure, figure, input } from './figure.ts';
import { type FinishTemperature, finishTemperature } from './finish-temperature.ts';
import { type StorageClass, storageClass } from './gate.ts';
import type { JarKind } from './jar-fill.ts';
import { type LabelNames, labelNames } from './label-names.ts';
import { isByWeight, type MeasuredDose } from './measured-doses.ts';
import { packedLot } from './packed-lot.ts';
import { isPanFinish, type PanSheet, panSheets } from './pan-sheets.ts';
import { readingStanding } from './ph-reading.ts';
import { type PreparedLot, preparedFruit } from './prepared-fruit.ts';
import { type ProcessFigures, processFigures } from './process-figures.ts';
import { recipeAsCooked } from './recipe-as-cooked.ts';
import { type SetAside, setAsidesOf } from './set-asides-of.ts';
import { type SetOfBatch, setOfBatch } from './set-of-batch.ts';
import { type MeasuredSyrup, syrupFor } from './syrup-for.ts';
import type { WeightPacks } from './weight-packs.ts';

export type { BatchQuestion } from './batch-question.ts';
export type { PanSheet } from './pan-sheets.ts';

export interface JarDoseLine {
  readonly text: string;
  readonly perJar: string;
  readonly jars: number;
}

export interface BatchSheet {
  readonly recipeId: string;
  readonly title: string;
  readonly prepared: readonly PreparedLot[];
  readonly preparedG: Figure;
  readonly juice: DrawnJuice | null;
  readonly split: BatchSplit | null;
  readonly pans: readonly PanSheet[];
  /** Packs or jars filled by weight or volume, when there is no pan to balance. */
  readonly packs: WeightPacks | null;
  readonly driedG: Figure | null;
  readonly syrup: readonly MeasuredSyrup[];
  readonly acidByJar: readonly JarDoseLine[];
  /** Whole jars of all pans. */
  readonly jars: Figure;
  readonly jar: JarKind;
  /** One lid a whole jar; the partial jar takes a used one, it goes to the fridge. */
  readonly lids: Figure;
  readonly totals: Readonly<Partial<Record<DoseItem, number>>>;
  readonly storage: StorageClass;
  readonly process: ProcessFigures | null;
  readonly clock: CannerClock | null;
  readonly temperature: FinishTemperature | null;
  readonly names: LabelNames | null;
  readonly set: SetOfBatch | null;
  readonly setAsides: readonly SetAside[];
  readonly cost: BatchCost | null;
  readonly householdOnly: boolean;
  readonly warnings: readonly string[];
}

export function batchSheet(q: BatchQuestion): BatchSheet {
  const { recipe } = q;
  const prepared = q.fruit.map((lot) => preparedFruit(lot, recipe.extraction !== null));
  const preparedG = sumOf(
    'prepared fruit of all lots',
    prepared.map((p) => p.preparedG),
  );
  const juice = recipe.extraction ? drawnJuice(recipe.extraction, prepared, q.asked ?? {}) : null;
  const panned = isPanFinish(recipe.finish) ? panSheets(q, recipe.finish, prepared, juice) : null;
  const packed = panned ? null : packedLot(q, prepared, juice);
  const jars = panned
    ? sumOf(
        'whole jars of all pans',
        panned.pans.map((p) => p.fill.jars),
      )
    : (packed?.jars ?? nothing('jars'));
  const storage = gateOf(q, prepared, panned?.pans[0]?.baseG ?? 0);
  const process = processFigures(storage);
  const intoJars = recipe.jarSizes.length > 0;
  const lids = figure({
    value: intoJars ? jars.value : 0,
    unit: 'lids',
    formula: 'one new lid for each whole jar',
    inputs: [input('jars', jars.value)],
  });
  const doses = panned?.pans.flatMap((p) => p.doses) ?? [];
  return {
    recipeId: recipe.id,
    title: recipe.title,
    prepared,
    preparedG,
    juice,
    split: panned?.split ?? null,
    pans: panned?.pans ?? [],
    packs: packed?.packs ?? null,
    driedG: packed?.driedG ?? null,
    syrup: syrupFor(recipe.syrup, q.jar.size, jars.value),
    acidByJar: acidByJar(recipe, q.jar, jars.value),
    jars,
    jar: q.jar,
    lids,
    totals: totalsOf(doses),
    storage,
    process,
    clock: process ? cannerClock(jars.value, q.jar.size, process.minutes.value, q.canners) : null,
    temperature:
      recipe.finish.by === 'solids' && recipe.finish.brix >= 60 && recipe.finish.brix <= 68
        ? finishTemperature(q.kitchen)
        : null,
    names: panned ? namesOf(q, panned.pans, juice) : null,
    set: panned ? setOf(q, prepared, panned.pans) : null,
    setAsides: setAsidesOf(recipe, q.fruit),
    cost: q.prices ? batchCost(doses, lids.value, q.prices) : null,
    householdOnly: storage.householdOnly,
    warnings: [...(panned?.split.warnings ?? []), ...warningsOf(q, panned?.pans ?? [], packed?.packs ?? null)],
  };
}

const nothing = (unit: string): Figure => figure({ value: 0, unit, formula: 'nothing to fill', inputs: [] });

function sumOf(formula: string, parts: readonly Figure[]): Figure {
  const total = (pick: (f: Figure) => number): number => parts.reduce((sum, f) => sum + pick(f), 0);
  const banded = parts.some((f) => f.band !== null);
  return figure({
    value: total((f) => f.value),
    unit: parts[0]?.unit ?? 'g',
    band: banded ? { low: total((f) => f.band?.low ?? f.value), high: total((f) => f.band?.high ?? f.value) } : null,
    formula,
    inputs: parts.map((f, i) => input(`${i + 1}`, f.value, f.unit)),
    ...(parts.length === 1 && parts[0] ? { source: parts[0].source, status: parts[0].status } : {}),
  });
}

function gateOf(q: BatchQuestion, prepared: readonly PreparedLot[], baseG: number): StorageClass {
  const cooked = recipeAsCooked(q.recipe, { baseG, amounts: q.asked?.amounts, targetBrix: q.settings.targetBrix });
  return storageClass({
    recipe: cooked.recipe,
    fruit: prepared.map(({ lot, preparedG }) => ({
      foodId: lot.foodId,
      grams: preparedG.value,
      grade: lot.grade,
      groundFall: lot.groundFall === true,
    })),
    jar: q.jar,
    altitudeFt: q.kitchen.altitudeFt,
    method: q.method,
    asWritten: (q.asWritten ?? true) && !cooked.changed,
    acidDoseGiven: q.acidDoseGiven ?? true,
    reading: q.reading,
  });
}

function acidByJar({ acid }: Recipe, jar: JarKind, jars: number): JarDoseLine[] {
  if (!acid || isByWeight(acid)) return [];
  const found = acidDoses(acid.perJarOf, jar.size);
  if (!found.ok) return [];
  const name = jarSizeOf(jar.size).name;
  return found.doses.map((d) => ({
    text: `${d.text} ${d.agent} in each ${name} jar, one of these and never less`,
    perJar: d.text,
    jars,
  }));
}

function totalsOf(doses: readonly MeasuredDose[]): Partial<Record<DoseItem, number>> {
  const totals: Partial<Record<DoseItem, number>> = {};
  for (const d of doses) totals[d.item] = (totals[d.item] ?? 0) + d.grams.value;
  return totals;
}

function namesOf(
  { recipe, fruit }: BatchQuestion,
  pans: readonly PanSheet[],
  juice: DrawnJuice | null,
): LabelNames | null {
  const first = pans[0];
  if (!first) return null;
  return labelNames({
    kind: recipe.kind,
    foodIds: [...new Set(fruit.map((f) => f.foodId))],
    fruitG: first.baseG,
    sweetenerG: first.doses.filter((d) => d.sweetener).reduce((sum, d) => sum + d.grams.value, 0),
    brix: first.balance.brix.value,
    juiceBrix: juice?.brix.value,
  });
}

function setOf(q: BatchQuestion, prepared: readonly PreparedLot[], pans: readonly PanSheet[]): SetOfBatch | null {
  const first = pans[0];
  if (!first) return null;
  const read = q.reading ? readingStanding(q.reading) : null;
  return setOfBatch({
    recipe: q.recipe,
    lots: prepared.map((p) => ({ lot: p.lot, grams: p.preparedG.value / pans.length })),
    doses: first.doses,
    solidsG: first.balance.solidsG.value,
    brix: first.balance.brix.value,
    boilMin: first.boilMin?.value ?? null,
    pH: read?.ok ? read.pH : null,
    homePectin: q.homePectin,
  });
}

function warningsOf(
  { recipe, fruit, pan }: BatchQuestion,
  pans: readonly PanSheet[],
  packs: WeightPacks | null,
): string[] {
  const warnings: string[] = [];
  const offGrade = [...new Set(fruit.map((f) => f.grade))].filter((g) => g !== 'cull' && !recipe.grades.includes(g));
  if (offGrade.length > 0) warnings.push(`This recipe is not made with ${offGrade.join(' or ')} fruit.`);
  if (recipe.finish.by === 'solids' && pan && pan.evapGPerMin === null)
    warnings.push('How fast this pan boils off is not known: weigh it, no minutes are shown.');
  if (packs && !packs.ok) warnings.push(`${packs.reason}.`);
  const first = pans[0];
  const sugar = first?.doses.filter((d) => d.sweetener).reduce((sum, d) => sum + d.grams.value, 0) ?? 0;
  const doubtful = recipe.kind !== 'marmalade' && recipe.kind !== 'freezer-jam' && recipe.kind !== 'syrup';
  if (first && doubtful && sugar > 1.6 * first.baseG)
    warnings.push('More sugar than 1.6 times the fruit: check the weights.');
  return warnings;
}
