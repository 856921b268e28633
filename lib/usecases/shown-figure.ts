/** A figure as plain values for the screen, with what it rests on. */
import type { Figure } from '#lib/batch/figure.ts';
import { householdOf } from '#lib/batch/household.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import { SOURCES } from '#lib/reference/sources.ts';

export interface ShownFigure {
  value: number;
  unit: string;
  band: { low: number; high: number } | null;
  formula: string;
  inputs: { label: string; value: string }[];
  source: string;
  status: string;
}

export interface LabelledFigure {
  label: string;
  figure: ShownFigure;
}

export const shown = (f: Figure): ShownFigure => ({
  value: f.value,
  unit: f.unit,
  band: f.band ? { low: f.band.low, high: f.band.high } : null,
  formula: f.formula,
  inputs: f.inputs.map((i) => ({
    label: i.name,
    value: `${typeof i.value === 'number' ? Math.round(i.value * 1000) / 1000 : i.value}${i.unit ? ` ${i.unit}` : ''}`,
  })),
  source: SOURCES[f.source].title,
  status: f.status,
});

/** What is added to a pan: its grams, and by cup or spoon where a weight is printed for one. */
export function shownDose(dose: { name: string; item: DoseItem; grams: Figure }): LabelledFigure {
  const figure = shown(dose.grams);
  const household = householdOf(dose.item, dose.grams.value);
  if (!household) return { label: dose.name, figure };
  const { text, gramsEach, measure, source } = household;
  return {
    label: `${dose.name}, ${text}`,
    figure: {
      ...figure,
      inputs: [
        ...figure.inputs,
        { label: `One ${measure}, where it is measured`, value: `${gramsEach} g, ${SOURCES[source].title}` },
      ],
    },
  };
}
