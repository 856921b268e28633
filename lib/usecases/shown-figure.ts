/** A figure as plain values for the screen, with what it rests on. */
import type { Figure, Labelled } from '#lib/batch/figure.ts';
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

export const shownWith = ({ label, figure }: Labelled): LabelledFigure => ({ label, figure: shown(figure) });
