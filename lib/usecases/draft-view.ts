/** The draft as plain values for the sheet on screen, each figure with what it rests on. */
import type { Figure } from '#lib/batch/figure.ts';
import { frozenSheet } from '#lib/batch/freeze-sheet.ts';
import { labelledDose } from '#lib/batch/household.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { type CookPictures, cookPictures } from './cook-pictures.ts';
import type { Draft } from './draft-batch.ts';
import type { FrozenSheet } from './frozen-sheet.ts';
import { type LabelledFigure, type ShownFigure, shown, shownWith } from './shown-figure.ts';

export interface DraftView {
  title: string;
  standing: string;
  batches: number;
  splitReason: string | null;
  cupsEach: ShownFigure | null;
  unsplitCups: number | null;
  prepared: ShownFigure;
  doses: LabelledFigure[];
  mix: ShownFigure | null;
  final: ShownFigure | null;
  boilOff: ShownFigure | null;
  boilMin: ShownFigure | null;
  brix: ShownFigure | null;
  water: ShownFigure | null;
  stop: ShownFigure | null;
  jars: ShownFigure;
  jarsEach: number;
  partialEach: ShownFigure | null;
  jarLabel: string | null;
  lids: ShownFigure;
  process: ShownFigure | null;
  headspaceIn: ShownFigure | null;
  sterilise: ShownFigure | null;
  loads: ShownFigure | null;
  cannerMin: ShownFigure | null;
  shelf: boolean;
  needs: string[];
  ways: string[];
  reasons: string[];
  cautions: string[];
  warnings: string[];
  short: string[];
  set: {
    outlook: string;
    ratio: ShownFigure | null;
    carried: ShownFigure | null;
    reasons: string[];
    offers: string[];
    softSet: string | null;
  } | null;
  names: { allowed: string[]; ratio: ShownFigure | null; reasons: string[] } | null;
  household: boolean;
  steps: FrozenSheet['steps'];
  acidByJar: string[];
  pictures: CookPictures;
  /** Figures that come from this household's own batches. */
  learnt: string[];
  setAsides: { material: string; use: string; fresh: ShownFigure; dried: ShownFigure | null }[];
}

const maybe = (f: Figure | null | undefined): ShownFigure | null => (f ? shown(f) : null);

const NEEDS: Record<string, string> = {
  'ph-reading': 'a calibrated pH reading of the finished, cooled product',
  'acid-dose': 'the tested acid dose in every jar',
};

export function draftView(d: Draft): DraftView {
  const { sheet } = d;
  const pan = sheet.pans[0];
  const frozen = frozenSheet(d, 0);
  return {
    title: sheet.title,
    standing:
      d.recipe.origin.standing === 'published'
        ? `published: ${d.recipe.origin.sources.map((s) => SOURCES[s].title).join('; ')}`
        : `house recipe: ${d.recipe.origin.because}`,
    batches: Math.max(1, sheet.pans.length),
    splitReason: sheet.split?.reason ?? null,
    cupsEach: maybe(sheet.split?.cupsEach),
    unsplitCups: sheet.split?.unsplitCups ?? null,
    prepared: shown(sheet.preparedG),
    doses: pan?.doses.map((d) => shownWith(labelledDose(d))) ?? [],
    mix: maybe(pan?.balance.chargeG),
    final: maybe(pan?.balance.finalG),
    boilOff: maybe(pan?.balance.evaporateG),
    boilMin: maybe(pan?.boilMin),
    brix: maybe(pan?.balance.brix),
    water: maybe(sheet.temperature?.waterC),
    stop: maybe(sheet.temperature?.stopC),
    jars: shown(sheet.jars),
    jarsEach: frozen.jars,
    partialEach: pan ? shown(pan.fill.partialG) : sheet.packs?.ok ? shown(sheet.packs.leftG) : null,
    jarLabel: frozen.jarLabel,
    lids: shown(sheet.lids),
    process: maybe(sheet.process?.minutes),
    headspaceIn: maybe(sheet.process?.headspaceIn),
    sterilise: maybe(sheet.process?.steriliseMin),
    loads: maybe(sheet.clock?.loads),
    cannerMin: maybe(sheet.clock?.minutes),
    shelf: sheet.storage.shelf,
    needs: sheet.storage.needs.map((n) => NEEDS[n] ?? n),
    ways: [...sheet.storage.ways],
    reasons: [...sheet.storage.reasons],
    cautions: [...sheet.storage.cautions],
    warnings: [...d.weighIt.map((w) => `${w}.`), ...sheet.warnings],
    short: d.short,
    set: sheet.set
      ? {
          outlook: sheet.set.outlook,
          ratio: maybe(sheet.set.ratio),
          reasons: [...sheet.set.reasons],
          carried: maybe(sheet.set.sugarByPowder),
          offers: [...sheet.set.offers],
          softSet: sheet.set.softSet,
        }
      : null,
    names: sheet.names
      ? { allowed: [...sheet.names.allowed], ratio: maybe(sheet.names.ratio), reasons: [...sheet.names.reasons] }
      : null,
    household: sheet.householdOnly,
    steps: frozen.steps,
    pictures: cookPictures(sheet),
    learnt: [
      ...(d.learnt.pan ? ['how fast this pan boils off'] : []),
      ...(d.learnt.loss ? ['what sticks and is skimmed'] : []),
      ...(d.learnt.powder ? ['the strength of the apple powder'] : []),
    ],
    acidByJar: sheet.acidByJar.map((a) => a.text),
    setAsides: sheet.setAsides.map((a) => ({
      material: a.material.replaceAll('-', ' '),
      use: a.use,
      fresh: shown(a.freshG),
      dried: maybe(a.driedG),
    })),
  };
}
