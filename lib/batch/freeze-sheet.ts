/** From the sheet on the screen to the figures the batch keeps. */
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { BatchQuestion } from './batch-question.ts';
import type { BatchSheet } from './batch-sheet.ts';
import type { Figure, Labelled } from './figure.ts';
import type { FrozenSheet } from './frozen-sheet.ts';
import { labelledDose } from './household.ts';
import { instructions } from './instructions.ts';

/** Named in each batch, so that a corrected formula never rewrites a jar that stands. */
export const FORMULA_VERSION = '1';

export interface ToFreeze {
  recipe: Recipe;
  sheet: BatchSheet;
  question: BatchQuestion;
  jarKind: { code: string; label: string } | null;
  /** Grams as weighed from each lot. */
  lots: readonly { grams: number }[];
}

/** Batch `i` of a draft. Packs without a pan have their jars shared out over the one record. */
export function frozenSheet(draft: ToFreeze, i: number): FrozenSheet {
  const { sheet } = draft;
  const pan = sheet.pans[i];
  const n = Math.max(1, sheet.pans.length);
  const raw = draft.lots.reduce((g, l) => g + l.grams, 0);
  const prepared = sheet.preparedG.value;
  const packs = sheet.packs?.ok ? sheet.packs : null;
  return {
    rawG: Math.round(raw / n),
    preparedG: Math.round(pan ? pan.baseG : prepared),
    trimG: Math.round((raw - prepared) / n),
    doses: pan?.doses.map((d) => ({ name: d.name, grams: Math.round(d.grams.value) })) ?? [],
    mixG: Math.round(pan?.balance.chargeG.value ?? prepared),
    finalG: pan ? Math.round(pan.balance.finalG.value) : null,
    boilOffG: pan ? Math.round(pan.balance.evaporateG.value) : null,
    boilMin: pan?.boilMin ? Math.round(pan.boilMin.value) : null,
    brix: pan ? Math.round(pan.balance.brix.value * 10) / 10 : null,
    stopC: sheet.temperature?.stopC.value ?? null,
    waterC: sheet.temperature?.waterC.value ?? null,
    jars: pan ? pan.fill.jars.value : (packs?.packs.value ?? 0),
    jarG: pan ? Math.round(pan.fill.jarG.value) : null,
    partialG: Math.round(pan ? pan.fill.partialG.value : (packs?.leftG.value ?? 0)),
    jarKind: draft.jarKind?.code ?? null,
    jarLabel: draft.jarKind?.label ?? null,
    shelf: sheet.storage.shelf,
    needs: [...sheet.storage.needs],
    processMin: sheet.process?.minutes.value ?? null,
    sterile: sheet.process?.steriliseMin !== null && sheet.process !== null,
    headspaceIn: sheet.process?.headspaceIn.value ?? null,
    headspaceMm: sheet.process ? Math.round(sheet.process.headspaceMm.value) : null,
    reasons: [...sheet.storage.reasons],
    cautions: [...sheet.storage.cautions],
    ways: [...sheet.storage.ways],
    household: sheet.householdOnly,
    steps: instructions(sheet, draft.question).map((s) => ({ part: s.part, text: s.text, caution: s.caution ?? null })),
    source: draft.recipe.origin.standing === 'published' ? draft.recipe.origin.sources.join(', ') : 'house recipe',
    figures: figuresOf(draft, i),
  };
}

function figuresOf({ sheet, jarKind }: ToFreeze, i: number): Labelled[] {
  const pan = sheet.pans[i];
  const packs = sheet.packs?.ok ? sheet.packs : null;
  const some = (label: string, f: Figure | null | undefined) => (f ? [{ label, figure: f }] : []);
  return [
    ...some(sheet.pans.length > 1 ? `Prepared, for ${sheet.pans.length} pans` : 'Prepared', sheet.preparedG),
    ...(pan?.doses.map(labelledDose) ?? []),
    ...some('Mix', pan?.balance.chargeG),
    ...some('Pan weight to stop at', pan?.balance.finalG),
    ...some('Refractometer', pan?.balance.brix),
    ...some('Temperature, a guide', sheet.temperature?.stopC),
    ...some('Water boils at', sheet.temperature?.waterC),
    ...some('To boil off', pan?.balance.evaporateG),
    ...some('Clock, at full boil', pan?.boilMin),
    ...some(jarKind ? `Jars, ${jarKind.label}` : 'Packs', pan ? pan.fill.jars : packs?.packs),
    ...some('Partial jar, to the fridge', pan ? pan.fill.partialG : packs?.leftG),
    ...some('Process at a full boil', sheet.process?.minutes),
    ...some('Headspace', sheet.process?.headspaceIn),
    ...some('Boil the empty jars', sheet.process?.steriliseMin),
  ];
}
